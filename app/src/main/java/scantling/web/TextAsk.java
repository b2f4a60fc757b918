package scantling.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.construct.Construction;
import scantling.piece.PieceEditor;

/** Writes new items into lists of a text and leaves every other character as it is. */
public final class TextAsk {
    private static final Pattern ROW = Pattern.compile("(.*/ )?rows / \\d+");
    private static final Pattern BUILD = Pattern.compile("(?m)^( *)(?:- )?(?:build|each):[ \\t]*(?:#.*)?$");

    private TextAsk() {}

    /** A list of elements that one can be added to. @param at where it begins in the text @param words what it is */
    public record Place(int at, String words) {}

    /** The banks of drawers, by the path of their rows. */
    static List<String> banks(List<PieceEditor.Given> givens) {
        return givens.stream()
                .map(PieceEditor.Given::path)
                .filter(path -> ROW.matcher(path).matches())
                .map(path -> path.substring(0, path.lastIndexOf(" / ")))
                .distinct()
                .toList();
    }

    /** The maker's names of materials. */
    static List<String> materials(List<PieceEditor.Given> givens) {
        return givens.stream()
                .map(PieceEditor.Given::path)
                .filter(path -> path.startsWith("materials / "))
                .map(path -> path.split(" / ")[1])
                .distinct()
                .toList();
    }

    /** One more drawer at the top of a bank. */
    static Optional<String> withDrawer(String text, String bank, String height) {
        return PieceEditor.findSpan(text, Construction.language(), bank + " / 1")
                .map(first -> {
                    int start = first.start();
                    int line = text.lastIndexOf('\n', Math.max(0, start - 1)) + 1;
                    String before = text.substring(line, start);
                    String more = before.strip().equals("-") ? height + "\n" + before : height + ", ";
                    return text.substring(0, start) + more + text.substring(start);
                });
    }

    /** The lists of elements, in the order of the text. */
    static List<Place> places(String text) {
        List<Place> places = new ArrayList<>();
        Matcher build = BUILD.matcher(text);
        while (build.find()) {
            String name = build.group(1).isEmpty() ? "the whole piece" : nameBefore(text, build.start());
            places.add(new Place(build.start(), name));
        }
        return places;
    }

    /** What the space is called whose list begins there. */
    private static String nameBefore(String text, int at) {
        Matcher name = Pattern.compile("(?m)^ *- name: *([^#\\n]*)").matcher(text.substring(0, at));
        String found = "a space";
        while (name.find()) {
            found = name.group(1).strip();
        }
        return found;
    }

    /** Shelves at the end of a list of elements, which split the opening that is left there. */
    static Optional<String> withShelves(String text, int place, String of, int count) {
        Matcher build = BUILD.matcher(text);
        if (place > text.length() || !build.find(place) || build.start() != place) {
            return Optional.empty();
        }
        List<String> lines = text.substring(build.end()).lines().toList();
        int indent = build.group(1).length() + (build.group().contains("- ") ? 2 : 0);
        int end = build.end() + 1;
        int item = -1;
        int at = end;
        for (String line : lines.subList(Math.min(1, lines.size()), lines.size())) {
            at += line.length() + 1;
            String clean = line.strip();
            int here = line.length() - line.stripLeading().length();
            if (!clean.isEmpty()
                    && !clean.startsWith("#")
                    && here <= indent
                    && !(here == indent && clean.startsWith("- "))) {
                break;
            }
            if (!clean.isEmpty()) {
                item = item < 0 && clean.startsWith("- ") ? here : item;
                end = Math.min(at, text.length());
            }
        }
        String air = end > 0 && text.charAt(end - 1) == '\n' ? "" : "\n";
        String step =
                " ".repeat(Math.max(item, 0)) + "- shelves: {of: %s, count: %d, held: pins}\n".formatted(of, count);
        return item < 0 ? Optional.empty() : Optional.of(text.substring(0, end) + air + step + text.substring(end));
    }
}
