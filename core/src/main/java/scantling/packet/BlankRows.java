package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import scantling.milling.Blank;
import scantling.piece.Material;

/** The milling list: one row for each mark. */
final class BlankRows {
    private BlankRows() {}

    static List<BlankRow> of(List<Blank> blanks, List<PartGroup> groups) {
        Map<String, Blank> byPart = blanks.stream()
                .collect(Collectors.toMap(Blank::part, Function.identity(), (a, b) -> a, LinkedHashMap::new));
        List<BlankRow> rows = new ArrayList<>();
        for (PartGroup group : groups) {
            List<Blank> uncut = group.paths().stream()
                    .filter(byPart::containsKey)
                    .map(path -> byPart.getOrDefault(path, blanks.get(0)))
                    .filter(blank -> !blank.alreadyCut())
                    .toList();
            if (!uncut.isEmpty()) {
                rows.add(row(group, uncut.get(0), uncut.size()));
            }
        }
        return rows;
    }

    private static BlankRow row(PartGroup group, Blank blank, int count) {
        return new BlankRow(
                group.mark(),
                count,
                blank.rough().length(),
                blank.rough().width(),
                blank.rough().thickness(),
                kind(blank),
                String.join(" ", blank.notes()));
    }

    private static String kind(Blank blank) {
        String stock = blank.roughClass()
                .map(rough -> rough.name() + " board")
                .orElse(blank.material().kind() == Material.Kind.SHEET ? "sheet" : "stick");
        String strips = blank.strips() > 1 ? ", glued up of " + blank.strips() : "";
        String layers = blank.layers() > 1 ? ", laminated of " + blank.layers() : "";
        return stock + strips + layers;
    }
}
