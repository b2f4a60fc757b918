package scantling.space;

/**
 * How far something reaches in every direction, in millimetres out of a numerical method. Exact boxes are
 * {@link Box}es.
 */
public record Extent(double left, double right, double front, double back, double bottom, double top) {
    /** How far a box reaches, as it stands before any turning. */
    public static Extent of(Box box) {
        return new Extent(
                box.left().value().toMillimetres(),
                box.right().value().toMillimetres(),
                box.front().value().toMillimetres(),
                box.back().value().toMillimetres(),
                box.bottom().value().toMillimetres(),
                box.top().value().toMillimetres());
    }

    static Extent of(Iterable<Point> points) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Point point : points) {
            for (Axis axis : Axis.values()) {
                low[axis.ordinal()] = Math.min(low[axis.ordinal()], point.of(axis));
                high[axis.ordinal()] = Math.max(high[axis.ordinal()], point.of(axis));
            }
        }
        return new Extent(low[0], high[0], low[1], high[1], low[2], high[2]);
    }

    /** The plane of a side. */
    public double plane(Side side) {
        return switch (side) {
            case LEFT -> left;
            case RIGHT -> right;
            case FRONT -> front;
            case BACK -> back;
            case BOTTOM -> bottom;
            case TOP -> top;
        };
    }

    /** How far it reaches outward past another on one side; negative when it stays inside. */
    public double past(Extent other, Side side) {
        double further = plane(side) - other.plane(side);
        return side.isFar() ? further : -further;
    }

    /** Whether it stays inside another on every side, but for a tolerance. */
    public boolean isWithin(Extent other, double tolerance) {
        for (Side side : Side.values()) {
            if (past(other, side) > tolerance) {
                return false;
            }
        }
        return true;
    }

    /** Whether the two are apart by more than a tolerance in some direction. */
    boolean isClearOf(Extent other, double tolerance) {
        for (Axis axis : Axis.values()) {
            Side near = Side.of(axis, false);
            Side far = Side.of(axis, true);
            if (plane(near) - other.plane(far) > tolerance || other.plane(near) - plane(far) > tolerance) {
                return true;
            }
        }
        return false;
    }
}
