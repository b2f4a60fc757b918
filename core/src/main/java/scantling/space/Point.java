package scantling.space;

/** A point or a direction, in millimetres: only inside numerical methods. Exact places are planes of a {@link Box}. */
public record Point(double across, double deep, double up) {
    /** The coordinate in a direction. */
    public double of(Axis axis) {
        return switch (axis) {
            case ACROSS -> across;
            case DEEP -> deep;
            case UP -> up;
        };
    }

    /** The same point with one coordinate elsewhere. */
    public Point with(Axis axis, double value) {
        return new Point(
                axis == Axis.ACROSS ? value : across, axis == Axis.DEEP ? value : deep, axis == Axis.UP ? value : up);
    }

    /** The sum. */
    public Point plus(Point other) {
        return new Point(across + other.across, deep + other.deep, up + other.up);
    }

    /** The way from the other to this. */
    public Point minus(Point other) {
        return new Point(across - other.across, deep - other.deep, up - other.up);
    }

    /** As many times as far. */
    public Point times(double factor) {
        return new Point(across * factor, deep * factor, up * factor);
    }

    /** The scalar product. */
    public double dot(Point other) {
        return across * other.across + deep * other.deep + up * other.up;
    }

    /** The vector product. */
    public Point cross(Point other) {
        return new Point(
                deep * other.up - up * other.deep,
                up * other.across - across * other.up,
                across * other.deep - deep * other.across);
    }

    /** Its length. */
    public double length() {
        return Math.sqrt(dot(this));
    }
}
