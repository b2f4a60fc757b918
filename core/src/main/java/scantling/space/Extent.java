package scantling.space;

import java.util.Collection;

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

    static Extent of(Collection<Point> points) {
        return new Extent(
                least(points, Axis.ACROSS),
                most(points, Axis.ACROSS),
                least(points, Axis.DEEP),
                most(points, Axis.DEEP),
                least(points, Axis.UP),
                most(points, Axis.UP));
    }

    private static double least(Collection<Point> points, Axis axis) {
        double least = Double.POSITIVE_INFINITY;
        for (Point point : points) {
            least = Math.min(least, point.of(axis));
        }
        return least;
    }

    private static double most(Collection<Point> points, Axis axis) {
        double most = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            most = Math.max(most, point.of(axis));
        }
        return most;
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

    /** The least distance along a direction of the piece that would part the two; negative when they are apart. */
    double depthIn(Extent other) {
        double least = Double.POSITIVE_INFINITY;
        for (Axis axis : Axis.values()) {
            Side near = Side.of(axis, false);
            Side far = Side.of(axis, true);
            least = Math.min(least, plane(far) - other.plane(near));
            least = Math.min(least, other.plane(far) - plane(near));
        }
        return least;
    }

    /** Whether the two are apart by more than a tolerance in some direction. */
    boolean isClearOf(Extent other, double tolerance) {
        return depthIn(other) < -tolerance;
    }
}
