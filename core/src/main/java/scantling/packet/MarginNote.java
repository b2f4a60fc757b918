package scantling.packet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.measure.Ledger;

/**
 * A finding as it is written in the margin.
 *
 * @param letter that ties it to what it concerns
 * @param style stop, caution or note
 * @param word the same, for people
 * @param section it stands beside
 * @param subject path of what it concerns
 * @param sentence what is so
 * @param numbers behind it, as markup
 * @param remedy what to do
 * @param source who says so
 * @param also what else just the same is said of
 */
public record MarginNote(
        String letter,
        String style,
        String word,
        String section,
        String subject,
        String sentence,
        String numbers,
        String remedy,
        String source,
        List<String> also) {
    private static final int MOST_LETTERS = 3;

    /** Whether the maker takes it as it is; then the remedy says why. */
    public boolean isAccepted() {
        return remedy.startsWith(Finding.ACCEPTED);
    }

    /** Takes its own copy. */
    public MarginNote {
        also = List.copyOf(also);
    }

    static List<MarginNote> of(PacketContent content, Figures figures) {
        List<MarginNote> notes = new ArrayList<>();
        for (List<Finding> same : AlikeFindings.of(content)) {
            Finding finding = same.get(0);
            String word = finding.severity().name();
            notes.add(new MarginNote(
                    PartGroups.letter(notes.size()).toLowerCase(Locale.ROOT),
                    word.toLowerCase(Locale.ROOT),
                    word.charAt(0) + word.substring(1).toLowerCase(Locale.ROOT),
                    section(content, finding.subject()),
                    finding.subject(),
                    finding.sentence(),
                    finding.numbers().stream().map(figures::of).collect(Collectors.joining(", ")),
                    finding.remedy(),
                    finding.source(),
                    same.stream()
                            .skip(1)
                            .map(Finding::subject)
                            .distinct()
                            .filter(subject -> !subject.equals(finding.subject()))
                            .toList()));
        }
        return List.copyOf(notes);
    }

    /** What it concerns besides; empty when nothing. */
    public String sameOf() {
        return also.isEmpty() ? "" : "The same goes for " + String.join("; ", also) + ".";
    }

    private boolean concerns(String path) {
        return concerns(subject, path) || also.stream().anyMatch(other -> concerns(other, path));
    }

    static String section(PacketContent content, String subject) {
        if (concerns(subject, "finish") && !content.finish().groups().isEmpty()) {
            return "finish";
        }
        Assembly assembly = content.assembly();
        if (assembly.joints().stream().anyMatch(joint -> concerns(subject, joint.path()))) {
            return "joints";
        }
        if (assembly.fittings().stream().anyMatch(fitting -> concerns(subject, fitting.path()))) {
            return "hardware";
        }
        return assembly.parts().stream().anyMatch(part -> concerns(subject, part.path())) ? "parts" : "drawing";
    }

    /** Whether a subject is what stands under a path or belongs to it. */
    static boolean concerns(String subject, String path) {
        return subject.equals(path) || subject.startsWith(path + Ledger.SEPARATOR);
    }

    /** How many there are of each kind, with their letters; nothing when there are none. */
    static String tally(List<MarginNote> notes) {
        Map<String, List<String>> by = new LinkedHashMap<>();
        for (Finding.Severity severity : Finding.Severity.values()) {
            by.put(severity.name().toLowerCase(Locale.ROOT), new ArrayList<>());
        }
        notes.forEach(note ->
                by.computeIfAbsent(note.style(), key -> new ArrayList<>()).add(note.letter()));
        return by.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> entry.getValue().size() + " " + entry.getKey()
                        + (entry.getValue().size() == 1 ? " " : "s ") + String.join(" ", entry.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** Letters of notes. @param first as many as a narrow column holds @param more how many are not among them */
    public record Letters(List<String> first, int more) {}

    /** Letters of the notes that concern some parts. */
    static Letters letters(List<MarginNote> notes, Collection<String> paths) {
        List<String> all = notes.stream()
                .filter(note -> paths.stream().anyMatch(note::concerns))
                .map(MarginNote::letter)
                .toList();
        int shown = Math.min(all.size(), MOST_LETTERS);
        return new Letters(all.subList(0, shown), all.size() - shown);
    }
}
