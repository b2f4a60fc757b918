package scantling.construct;

import java.util.Map;
import scantling.measure.Dim;
import scantling.piece.Field;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * The inside of a case whose fittings share rows of holes.
 *
 * @param inside its air
 * @param panel path of the side that the rows are laid out on
 */
record SystemCase(Box inside, String panel) {
    static final String SYSTEM = "32 mm system";
    static final Field HOLES = Field.choice(
            "holes",
            "How holes for slides, hinges and pins are laid out in it: each where it is needed, or on shared rows.",
            "free",
            SYSTEM);

    /** Whether air lies in it, from side to side and from bottom to top. */
    boolean holds(Box air) {
        return holds(air, Axis.ACROSS) && holds(air, Axis.UP);
    }

    private boolean holds(Box air, Axis axis) {
        Dim near = inside.plane(Side.of(axis, false));
        Dim far = inside.plane(Side.of(axis, true));
        return near.compareTo(air.plane(Side.of(axis, false))) <= 0
                && far.compareTo(air.plane(Side.of(axis, true))) >= 0;
    }

    /** What a fitting in it is told. */
    Map<String, String> words() {
        return Map.of("holes", SYSTEM, "panel", panel);
    }
}
