package scantling.drawing;

import java.util.List;

/**
 * How much smaller than life a drawing is.
 *
 * @param tenths one to this many tenths: 80 for 1 : 8
 */
public record Scale(int tenths) {
    /** Drawing units to a millimetre of paper. */
    public static final double UNITS_PER_MM = 4;

    private static final List<Integer> USUAL =
            List.of(10, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 200, 250, 300, 400, 500);
    private static final double TENTHS = 10;

    /** The largest usual scale at which so much of life fits on so much paper, both in millimetres. */
    public static Scale fitting(double life, double paper) {
        return USUAL.stream()
                .filter(tenths -> life * TENTHS / tenths <= paper)
                .findFirst()
                .map(Scale::new)
                .orElseGet(() -> new Scale((int) Math.ceil(life * TENTHS / paper)));
    }

    /** The next smaller usual one. */
    Scale smaller() {
        return USUAL.stream()
                .filter(other -> other > tenths)
                .findFirst()
                .map(Scale::new)
                .orElse(this);
    }

    /** The smaller drawing of the two. */
    public Scale and(Scale other) {
        return tenths >= other.tenths ? this : other;
    }

    /** Drawing units to a millimetre of the thing drawn. */
    double unitsPerMm() {
        return UNITS_PER_MM * TENTHS / tenths;
    }

    /** As written under a drawing: {@code 1 : 2.5}. */
    public String words() {
        return "1 : " + SvgWriter.number(tenths / TENTHS);
    }
}
