package scantling.packet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.construct.Opening;
import scantling.construct.Part;

/**
 * Findings that say the same of many parts: alike in all but the names of what they concern, numbers, source and remedy
 * included. Three or more of them are told once.
 */
final class AlikeFindings {
    private static final int MANY = 3;
    private static final Pattern BETWEEN = Pattern.compile("[\\s/,;:.()]+(?=\\s|$)|\\s+");
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private final PacketContent content;
    private final Set<String> names = new HashSet<>();

    private AlikeFindings(PacketContent content) {
        this.content = content;
        Assembly assembly = content.assembly();
        Stream.of(
                        assembly.parts().stream().map(Part::path),
                        assembly.joints().stream().map(Joint::path),
                        assembly.fittings().stream().map(Fitting::path),
                        assembly.openings().stream().map(Opening::path),
                        content.findings().stream().map(Finding::subject))
                .flatMap(paths -> paths)
                .flatMap(path -> Arrays.stream(words(path)))
                .filter(word -> !NUMBER.matcher(word).matches())
                .forEach(names::add);
    }

    /** Every finding, those alike together, in the order of the first of each. */
    static List<List<Finding>> of(PacketContent content) {
        if (content.findings().size() < MANY) {
            return content.findings().stream().map(List::of).toList();
        }
        AlikeFindings alike = new AlikeFindings(content);
        Map<String, List<Finding>> by = new LinkedHashMap<>();
        content.findings()
                .forEach(finding -> by.computeIfAbsent(alike.key(finding), key -> new ArrayList<>())
                        .add(finding));
        Map<Finding, List<Finding>> told = new LinkedHashMap<>();
        for (List<Finding> same : by.values()) {
            if (same.size() >= MANY) {
                told.put(same.get(0), same);
            } else {
                same.forEach(each -> told.put(each, List.of(each)));
            }
        }
        return content.findings().stream()
                .distinct()
                .filter(told::containsKey)
                .map(told::get)
                .toList();
    }

    private String key(Finding finding) {
        return String.join(
                "|",
                finding.severity().name(),
                MarginNote.section(content, finding.subject()),
                finding.rule(),
                finding.source(),
                nameless(finding.sentence()),
                nameless(finding.remedy()),
                finding.numbers().stream().map(dim -> dim.value().toString()).collect(Collectors.joining(" ")));
    }

    /** Words without those that names are made of, and without the numbers behind these. */
    private String nameless(String sentence) {
        StringBuilder left = new StringBuilder();
        boolean named = false;
        for (String word : words(sentence)) {
            named = names.contains(word) || named && NUMBER.matcher(word).matches();
            if (!named) {
                left.append(word).append(' ');
            }
        }
        return left.toString();
    }

    private static String[] words(String text) {
        return BETWEEN.split(text.toLowerCase(Locale.ROOT));
    }
}
