package scantling.space;

import java.util.Locale;

/** One of the six sides of a box, as one stands before the piece. */
public enum Side {
    /** To the left. */
    LEFT(Axis.ACROSS, false),
    /** To the right. */
    RIGHT(Axis.ACROSS, true),
    /** Toward the one who stands before it. */
    FRONT(Axis.DEEP, false),
    /** Away from the one who stands before it. */
    BACK(Axis.DEEP, true),
    /** Toward the floor. */
    BOTTOM(Axis.UP, false),
    /** Toward the ceiling. */
    TOP(Axis.UP, true);

    private final Axis axis;
    private final boolean far;

    Side(Axis axis, boolean far) {
        this.axis = axis;
        this.far = far;
    }

    /** The direction this side is looked at along. */
    public Axis axis() {
        return axis;
    }

    /** Whether it is the far one of the two: right, back, top. */
    public boolean isFar() {
        return far;
    }

    /** The side across. */
    public Side opposite() {
        return of(axis, !far);
    }

    /** The near or far side of a direction. */
    public static Side of(Axis axis, boolean far) {
        return switch (axis) {
            case ACROSS -> far ? RIGHT : LEFT;
            case DEEP -> far ? BACK : FRONT;
            case UP -> far ? TOP : BOTTOM;
        };
    }

    /** As a maker writes it: left, right, front, back, bottom, top. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
