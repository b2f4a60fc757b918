package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Assembly;
import scantling.measure.Ledger;

/**
 * The numbers of one element.
 *
 * @param heading the element
 * @param sums its numbers
 */
public record SumChapter(String heading, List<SumRow> sums) {
    /** How one number came about. @param id its anchor @param path its name @param figure markup @param text its sum */
    public record SumRow(String id, String path, String figure, String text) {}

    /** Takes its own copy. */
    public SumChapter {
        sums = List.copyOf(sums);
    }

    static List<SumChapter> all(Assembly assembly, Figures figures, SumText text) {
        Map<String, List<SumRow>> chapters = new LinkedHashMap<>();
        assembly.names()
                .forEach((path, dim) -> chapters.computeIfAbsent(
                                Ledger.names(path).get(0), key -> new ArrayList<>())
                        .add(new SumRow(figures.id(path), path, figures.of(dim), text.of(dim))));
        return chapters.entrySet().stream()
                .map(entry -> new SumChapter(entry.getKey(), entry.getValue()))
                .toList();
    }
}
