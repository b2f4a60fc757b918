package scantling.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What is said to the maker of parts whose grain runs through: which they are, in which order, and how large together. */
public final class Matches {
    private Matches() {}

    /** Whether a part is cut next to others in an order. */
    public static boolean isMatched(CutPart part) {
        return !part.row().isEmpty() || !part.beside().isEmpty();
    }

    /** All parts of a job that a part is matched with, itself among them. */
    public static List<CutPart> with(CutJob job, CutPart part) {
        return job.parts().stream()
                .filter(other -> isMatched(part) && key(other).equals(key(part)))
                .toList();
    }

    /** What a part is cut from together with those that it is matched with, as one part. */
    public static CutPart whole(CutJob job, CutPart part) {
        Rows rows = Rows.endToEnd(job);
        return Rows.sideBySide(rows.merged()).whole(rows.whole(part));
    }

    private static String key(CutPart part) {
        return part.beside().isEmpty() ? "row " + part.row() : "beside " + part.beside();
    }

    /** A sentence for each set of matched parts on a piece of stock. @param called what a part is called where this is told */
    public static List<String> told(CutPiece piece, UnaryOperator<String> called) {
        Map<String, List<CutPart>> sets = piece.parts().stream()
                .map(PlacedPart::part)
                .filter(Matches::isMatched)
                .distinct()
                .collect(Collectors.groupingBy(Matches::key, LinkedHashMap::new, Collectors.toList()));
        return sets.values().stream()
                .map(set -> "%s: number them in this order before they are cut apart."
                        .formatted(
                                set.get(0).beside().isEmpty()
                                        ? "Matched end to end: " + names(set, called)
                                        : sides(set, called)))
                .toList();
    }

    private static String sides(List<CutPart> set, UnaryOperator<String> called) {
        Map<String, List<CutPart>> lines = new LinkedHashMap<>();
        for (CutPart part : set) {
            String line = part.row().isEmpty() ? "part " + part.name() : "row " + part.row();
            lines.computeIfAbsent(line, key -> new ArrayList<>()).add(part);
        }
        boolean rows = lines.size() < set.size();
        return "Matched side by side%s: %s"
                .formatted(
                        rows ? ", each row end to end" : "",
                        lines.values().stream()
                                .map(line -> names(line, called))
                                .collect(Collectors.joining(rows ? " | " : ", ")));
    }

    private static String names(List<CutPart> parts, UnaryOperator<String> called) {
        return parts.stream().map(part -> called.apply(part.name())).collect(Collectors.joining(", "));
    }
}
