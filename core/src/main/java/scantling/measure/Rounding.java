package scantling.measure;

/** Which way a number is rounded to a step. */
public enum Rounding {
    /** To the nearest step, halves away from zero. */
    NEAREST,
    /** To the next step above. */
    UP,
    /** To the next step below. */
    DOWN;

    /** The rounded length. */
    public Length apply(Length exact, Length step) {
        return switch (this) {
            case NEAREST -> exact.roundedTo(step);
            case UP -> exact.roundedUpTo(step);
            case DOWN -> exact.roundedDownTo(step);
        };
    }
}
