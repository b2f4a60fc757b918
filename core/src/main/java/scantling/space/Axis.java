package scantling.space;

/** The three directions of a piece as it stands: from the left, from the front, from the floor. */
public enum Axis {
    /** From left to right: width. */
    ACROSS,
    /** From front to back: depth. */
    DEEP,
    /** From the floor up: height. */
    UP;

    /** The one behind this in the cycle ACROSS, DEEP, UP. */
    public Axis next() {
        return switch (this) {
            case ACROSS -> DEEP;
            case DEEP -> UP;
            case UP -> ACROSS;
        };
    }

    /** The direction that is neither this nor the other. */
    public Axis third(Axis other) {
        if (this == other) {
            throw new IllegalArgumentException(
                    "Two directions are needed to name the third, not (%s) twice.".formatted(this));
        }
        return next() == other ? other.next() : next();
    }
}
