package scantling.hardware;

import scantling.measure.Dim;
import scantling.piece.Material;
import scantling.timber.SpeciesTable;
import scantling.timber.Table;

/**
 * Holes for wood screws by gauge and wood: the table of a boatbuilding plan book, which agrees with the rule of 90 % of
 * the root for hardwood and 70 % for softwood to the next drill.
 */
public final class Screws {
    private static final Table TABLE = Table.read("hardware/screws.csv");

    private Screws() {}

    /** The pilot hole for the thread. @param gauge of the screw @throws IllegalStateException for a gauge that no table gives */
    public static Dim pilot(int gauge, Material in) {
        return size(gauge, isHard(in) ? "hardwood" : "softwood");
    }

    /** The clearance hole for the shank. @throws IllegalStateException for a gauge that no table gives */
    public static Dim clearance(int gauge) {
        return size(gauge, "clearance");
    }

    /** The diameter of the shank. @throws IllegalStateException for a gauge that no table gives */
    public static Dim shank(int gauge) {
        return size(gauge, "shank");
    }

    private static Dim size(int gauge, String column) {
        return TABLE.getRow("gauge", Integer.toString(gauge)).dim(column, "No. " + gauge + ", " + column);
    }

    /** Sheets are drilled like hardwood (common practice): they split between their layers before they give way. */
    private static boolean isHard(Material material) {
        return material.kind() == Material.Kind.SHEET
                || SpeciesTable.standard()
                        .find(material.of())
                        .map(species -> !species.group().endsWith("softwood"))
                        .orElse(true);
    }
}
