package scantling.joinery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import scantling.feature.WoodScrew;
import scantling.measure.Dim;

/**
 * Rows of the tables of biscuits, dowels, screws and pocket screws as the shop has them: sizes in place of those of a row,
 * or a row of its own. Each stands under a heading that names the row: {@code biscuit 20}, {@code dowel 8 mm}, {@code screw
 * no. 8}, {@code pocket screw for 18 mm}.
 */
public final class OwnRows {
    /** None at all. */
    public static final OwnRows NONE = new OwnRows(Map.of());

    private static final String OWN = "the shop's own";
    private static final Map<String, List<String>> TABLES = Map.of(
            "biscuit ", List.of("length", "width", "thickness", "slot", "least stock"),
            "dowel ", List.of("lengths"),
            "pocket screw for ", List.of("screw", "gauge"),
            "screw no. ", List.of("shank", "clearance", "hardwood", "softwood", "least board", "lengths"));

    private final Map<String, OwnRow> rows;

    private OwnRows(Map<String, OwnRow> rows) {
        this.rows = rows;
    }

    /**
     * What the shop writes.
     *
     * @param said sizes in words by their names, under the heading of each row
     * @throws IllegalArgumentException for a heading that names no row, a size that its table does not have, or no size
     */
    public static OwnRows of(Map<String, Map<String, String>> said) {
        Map<String, OwnRow> rows = new LinkedHashMap<>();
        said.forEach((heading, sizes) -> rows.put(heading, row(heading, sizes)));
        return new OwnRows(rows);
    }

    /** How the headings of rows begin, each with the names of its sizes. */
    public static Map<String, List<String>> tables() {
        return new TreeMap<>(TABLES);
    }

    private static OwnRow row(String heading, Map<String, String> sizes) {
        String table = TABLES.keySet().stream()
                .filter(heading::startsWith)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "(%s) names no row: write biscuit 20, dowel 8 mm, screw no. 8 or pocket screw for 18 mm."
                                .formatted(heading)));
        List<String> known = TABLES.getOrDefault(table, List.of());
        for (String name : sizes.keySet()) {
            if (!known.contains(name)) {
                throw new IllegalArgumentException(
                        "%s has no (%s); it has %s.".formatted(heading, name, String.join(", ", known)));
            }
        }
        OwnRow row = new OwnRow(heading, heading.substring(table.length()).strip(), sizes);
        row.check();
        return row;
    }

    private List<OwnRow> under(String table) {
        return rows.values().stream()
                .filter(row -> row.heading().startsWith(table))
                .toList();
    }

    /** The rows of a table with those of the shop in their places, its new ones behind them. */
    private <T> List<T> replaced(
            String table,
            List<T> usual,
            BiFunction<T, OwnRow, Boolean> same,
            BiFunction<Optional<T>, OwnRow, T> made,
            Comparator<T> order) {
        List<T> all = new ArrayList<>(usual);
        for (OwnRow row : under(table)) {
            Predicate<T> is = each -> same.apply(each, row);
            List<T> before = all.stream().filter(is).toList();
            all.removeIf(is);
            all.add(made.apply(before.stream().findFirst(), row));
        }
        return under(table).isEmpty() ? usual : all.stream().sorted(order).toList();
    }

    List<JointRules.Biscuit> biscuits(List<JointRules.Biscuit> usual) {
        return replaced(
                "biscuit ",
                usual,
                (each, row) -> each.name().equals(row.name()) || each.name().equals("#" + row.name()),
                OwnRows::biscuit,
                Comparator.comparing(JointRules.Biscuit::length));
    }

    private static JointRules.Biscuit biscuit(Optional<JointRules.Biscuit> before, OwnRow row) {
        return new JointRules.Biscuit(
                before.map(JointRules.Biscuit::name).orElse(row.name()),
                row.size("length", before.map(JointRules.Biscuit::length)),
                row.size("width", before.map(JointRules.Biscuit::width)),
                row.size("thickness", before.map(JointRules.Biscuit::thickness)),
                row.size("slot", before.map(JointRules.Biscuit::slot)),
                row.size("least stock", before.map(JointRules.Biscuit::leastStock)),
                OWN);
    }

    /** Lengths for a diameter, for pieces in either unit; a diameter of its own is added for both. */
    List<JointRules.Dowel> dowels(List<JointRules.Dowel> usual) {
        List<JointRules.Dowel> all = new ArrayList<>(usual);
        for (OwnRow row : under("dowel ")) {
            Dim diameter = row.nameAsSize();
            List<Dim> lengths = row.sizes("lengths", Optional.empty());
            Predicate<JointRules.Dowel> is = each -> each.diameter().value().equals(diameter.value());
            List<Boolean> units = all.stream()
                    .filter(is)
                    .map(JointRules.Dowel::inch)
                    .distinct()
                    .toList();
            all.removeIf(is);
            (units.isEmpty() ? List.of(false, true) : units)
                    .forEach(inch -> all.add(new JointRules.Dowel(inch, diameter, lengths, OWN)));
        }
        return all.stream()
                .sorted(Comparator.comparing(JointRules.Dowel::diameter))
                .toList();
    }

    List<WoodScrew> screws(List<WoodScrew> usual) {
        return replaced(
                "screw no. ",
                usual,
                (each, row) -> each.gauge() == row.number(row.name()),
                OwnRows::screw,
                Comparator.comparing(WoodScrew::gauge));
    }

    private static WoodScrew screw(Optional<WoodScrew> before, OwnRow row) {
        Optional<Dim> board = before.flatMap(WoodScrew::leastBoard);
        return new WoodScrew(
                row.number(row.name()),
                row.size("shank", before.map(WoodScrew::shank)),
                row.size("clearance", before.map(WoodScrew::clearance)),
                row.size("hardwood", before.map(WoodScrew::hard)),
                row.size("softwood", before.map(WoodScrew::soft)),
                row.says("least board") ? Optional.of(row.size("least board", board)) : board,
                row.sizes("lengths", before.map(WoodScrew::lengths)),
                OWN);
    }

    List<JointRules.Pocket> pockets(List<JointRules.Pocket> usual) {
        return replaced(
                "pocket screw for ",
                usual,
                (each, row) -> each.thickness().value().equals(row.nameAsSize().value()),
                OwnRows::pocket,
                Comparator.comparing(JointRules.Pocket::thickness));
    }

    private static JointRules.Pocket pocket(Optional<JointRules.Pocket> before, OwnRow row) {
        int gauge = row.says("gauge")
                ? row.number(row.text("gauge"))
                : before.map(JointRules.Pocket::gauge).orElseThrow(() -> row.missing("gauge"));
        return new JointRules.Pocket(
                row.nameAsSize(), row.size("screw", before.map(JointRules.Pocket::screw)), gauge, OWN);
    }
}
