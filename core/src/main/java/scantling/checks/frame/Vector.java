package scantling.checks.frame;

import scantling.space.Axis;

/** A place or a direction in the piece, in millimetres, inside the numerical method only. */
public record Vector(double across, double deep, double up) {
    static final Vector ZERO = new Vector(0, 0, 0);

    static Vector along(Axis axis, double length) {
        return ZERO.with(axis, length);
    }

    /** Its share in one direction. */
    public double of(Axis axis) {
        return switch (axis) {
            case ACROSS -> across;
            case DEEP -> deep;
            case UP -> up;
        };
    }

    Vector with(Axis axis, double value) {
        return new Vector(
                axis == Axis.ACROSS ? value : across, axis == Axis.DEEP ? value : deep, axis == Axis.UP ? value : up);
    }

    /** The sum of both. */
    public Vector plus(Vector other) {
        return new Vector(across + other.across, deep + other.deep, up + other.up);
    }

    /** From the other to this. */
    public Vector minus(Vector other) {
        return new Vector(across - other.across, deep - other.deep, up - other.up);
    }

    /** So many times as long. */
    public Vector times(double factor) {
        return new Vector(across * factor, deep * factor, up * factor);
    }

    double dot(Vector other) {
        return across * other.across + deep * other.deep + up * other.up;
    }

    Vector cross(Vector other) {
        return new Vector(
                deep * other.up - up * other.deep,
                up * other.across - across * other.up,
                across * other.deep - deep * other.across);
    }

    /** How long it is. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    Vector unit() {
        return times(1 / length());
    }
}
