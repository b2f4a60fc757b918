package scantling.space;

/**
 * How one end of a part is cut when it is not square: how much farther from the near end the cut runs for every
 * millimetre away from the marks.
 *
 * @param overWidth for every millimetre from the face edge
 * @param overThickness for every millimetre from the face side
 */
public record EndCut(double overWidth, double overThickness) {
    /** A square end. */
    public static final EndCut SQUARE = new EndCut(0, 0);

    /** Less than this over a metre is square. */
    private static final double NOTHING = 1e-6;

    /** Whether it is square. */
    public boolean isSquare() {
        return Math.abs(overWidth) < NOTHING && Math.abs(overThickness) < NOTHING;
    }

    /** The angle on the face side, off square: what a mitre gauge is set to. The part lies on its back side. */
    public double mitreDegrees() {
        return Math.toDegrees(Math.atan(overWidth));
    }

    /** The angle through the thickness, off upright: what the blade is tilted to, measured along the slanted cut. */
    public double tiltDegrees() {
        return Math.toDegrees(Math.atan(overThickness / Math.hypot(1, overWidth)));
    }
}
