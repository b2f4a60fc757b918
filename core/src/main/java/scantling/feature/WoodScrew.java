package scantling.feature;

import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.piece.Material;
import scantling.timber.SpeciesTable;
import scantling.timber.Table;

/**
 * A gauge of wood screw and its holes by wood: the table of a boatbuilding plan book, which agrees with the rule of 90 % of
 * the root for hardwood and 70 % for softwood to the next drill.
 *
 * @param gauge its number
 * @param shank its diameter
 * @param clearance the hole it passes through
 * @param hard the pilot hole in hardwood
 * @param soft the pilot hole in softwood
 * @param leastBoard the thinnest board that it goes through; none where it is not driven through boards
 * @param lengths that it is sold in, shortest first; may be empty
 * @param source who says so
 */
public record WoodScrew(
        int gauge,
        Dim shank,
        Dim clearance,
        Dim hard,
        Dim soft,
        Optional<Dim> leastBoard,
        List<Dim> lengths,
        String source) {
    private static final String TABLE = "feature/screws.csv";

    private static final class Standard {
        static final List<WoodScrew> ALL =
                Table.read(TABLE).rows().stream().map(WoodScrew::read).toList();
    }

    /** Takes its own copy. */
    public WoodScrew {
        lengths = List.copyOf(lengths);
    }

    /** All gauges of the table, from the thinnest up. */
    public static List<WoodScrew> all() {
        return Standard.ALL;
    }

    /** A gauge. @throws IllegalStateException for one that the table does not have, which is a fault of the code */
    public static WoodScrew of(int gauge) {
        return Standard.ALL.stream()
                .filter(screw -> screw.gauge == gauge)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No screw of gauge (%d) is known.".formatted(gauge)));
    }

    /** The pilot hole for its thread. Sheets are drilled like hardwood (common practice): they split between their layers. */
    public Dim pilot(Material in) {
        return isSoft(in) ? soft : hard;
    }

    /** Whether it is solid softwood. */
    public static boolean isSoft(Material material) {
        return material.kind() == Material.Kind.SOLID
                && SpeciesTable.standard()
                        .find(material.of())
                        .filter(species -> species.group().endsWith("softwood"))
                        .isPresent();
    }

    private static WoodScrew read(Table.Row row) {
        String key = "No. " + row.text("gauge");
        return new WoodScrew(
                Integer.parseInt(row.text("gauge")),
                row.dim("shank", key + ", shank"),
                row.dim("clearance", key + ", clearance"),
                row.dim("hardwood", key + ", hardwood"),
                row.dim("softwood", key + ", softwood"),
                row.findLength("least_board").map(board -> known(board, key, row)),
                row.list("lengths").stream()
                        .map(text -> known(LengthReader.read(text, Unit.MM).orElseThrow(), key, row))
                        .toList(),
                row.source());
    }

    private static Dim known(Length length, String key, Table.Row row) {
        return Dim.lookedUp(length, TABLE, key, row.source());
    }
}
