package scantling.checks.lasting;

import java.util.Locale;
import scantling.timber.Table;

/** How a beam is loaded and held, and where it is looked at: the rows of Wood Handbook Table 9-1. */
public enum Loading {
    /** Load spread evenly, ends free to turn, looked at midway. */
    UNIFORM_SUPPORTED("uniform, simply supported, midspan"),
    /** Load spread evenly, ends held fast, looked at midway. */
    UNIFORM_CLAMPED("uniform, clamped, midspan"),
    /** One load midway, ends free to turn. */
    POINT_SUPPORTED("point at midspan, simply supported, midspan"),
    /** One load midway, ends held fast. */
    POINT_CLAMPED("point at midspan, clamped, midspan"),
    /** Half the load at each quarter point, ends free to turn, looked at midway. */
    TWO_POINTS_MIDSPAN("two points at quarter points, simply supported, midspan"),
    /** Half the load at each quarter point, ends free to turn, looked at under a load. */
    TWO_POINTS_UNDER_LOAD("two points at quarter points, simply supported, load point"),
    /** Load spread evenly on a beam held fast at one end, looked at the free end. */
    UNIFORM_CANTILEVER("uniform, cantilever, free end"),
    /** One load at the free end of a beam held fast at the other. */
    POINT_CANTILEVER("point at free end, cantilever, free end");

    private final String row;
    private final double bending;
    private final double shear;

    Loading(String row) {
        this.row = row;
        this.bending = Rows.ratio(row, "kb");
        this.shear = Rows.ratio(row, "ks");
    }

    /** Apart, because an enum makes its constants before its own statics. */
    private static final class Rows {
        private static final Table TABLE = Table.read("checks/beams.csv");

        static double ratio(String row, String factor) {
            Table.Row found = TABLE.getRow("loading", row);
            return found.number(factor + "_top") / found.number(factor + "_under");
        }
    }

    /** k_b of Eq. 9-1. */
    public double bending() {
        return bending;
    }

    /** k_s of Eq. 9-1. */
    public double shear() {
        return shear;
    }

    /** In words. */
    public String words() {
        return row.toLowerCase(Locale.ROOT);
    }
}
