package scantling.checks.frame;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import scantling.construct.Joint;
import scantling.timber.Table;

/** What kinds of joints give and bear, from {@code checks/frame-joints.csv}. */
final class Joinings {
    private static final Map<String, Row> ROWS = Table.read("checks/frame-joints.csv").rows().stream()
            .map(row -> new Row(
                    row.text("kind"),
                    row.number("held_share"),
                    row.number("brace_share"),
                    Strength.valueOf(row.text("strength")),
                    row.source()))
            .collect(Collectors.toUnmodifiableMap(Row::kind, Function.identity()));
    private static final String OTHER = "other";

    private Joinings() {}

    /** How the bending strength of a joint is worked out. */
    enum Strength {
        /** Tested tenon, scaled. */
        TENON,
        /** Withdrawal of two dowels. */
        DOWEL,
        /** Withdrawal of two screws. */
        SCREW,
        /** No published basis was found. */
        NONE
    }

    /**
     * One kind.
     *
     * @param held share of the stiffness that the wood behind the whole meeting face has
     * @param brace share of a sheet's stiffness that this edge passes on
     */
    record Row(String kind, double held, double brace, Strength strength, String source) {}

    /** The row of a kind; of any other kind when the table has none. */
    static Row of(Joint.Kind kind) {
        Row other = ROWS.get(OTHER);
        if (other == null) {
            throw new IllegalStateException("The table of joints has no row (%s).".formatted(OTHER));
        }
        return ROWS.getOrDefault(kind.words(), other);
    }
}
