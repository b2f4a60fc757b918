package scantling.space;

import java.util.List;
import scantling.measure.Dim;

/**
 * A box of air or wood: six planes, each a Dim measured from the left front corner on the floor. It may be empty (a
 * plane past its opposite) while a piece is wrong; {@link #isEmpty} says so.
 */
public record Box(Dim left, Dim right, Dim front, Dim back, Dim bottom, Dim top) {
    /** The box that stands in the corner that the piece is measured from. */
    public static Box standing(Dim width, Dim depth, Dim height) {
        return new Box(Dim.ZERO, width, Dim.ZERO, depth, Dim.ZERO, height);
    }

    /** The plane of a side. */
    public Dim plane(Side side) {
        return switch (side) {
            case LEFT -> left;
            case RIGHT -> right;
            case FRONT -> front;
            case BACK -> back;
            case BOTTOM -> bottom;
            case TOP -> top;
        };
    }

    /** The same box with one plane elsewhere. */
    public Box with(Side side, Dim plane) {
        return new Box(
                side == Side.LEFT ? plane : left,
                side == Side.RIGHT ? plane : right,
                side == Side.FRONT ? plane : front,
                side == Side.BACK ? plane : back,
                side == Side.BOTTOM ? plane : bottom,
                side == Side.TOP ? plane : top);
    }

    /** The same box with one plane moved inward; a negative distance moves it outward. */
    public Box inset(Side side, Dim distance) {
        return with(
                side, side.isFar() ? plane(side).minus(distance) : plane(side).plus(distance));
    }

    /** The slab of a thickness that lies inside against one side. */
    public Box slab(Side side, Dim thickness) {
        return with(
                side.opposite(),
                side.isFar() ? plane(side).minus(thickness) : plane(side).plus(thickness));
    }

    /** How far it reaches in a direction. */
    public Dim extent(Axis axis) {
        return plane(Side.of(axis, true)).minus(plane(Side.of(axis, false)));
    }

    /** Whether it holds nothing: some plane is not short of its opposite. */
    public boolean isEmpty() {
        return List.of(Axis.values()).stream()
                .anyMatch(axis -> !extent(axis).value().isPositive());
    }

    /** What both hold; may be empty. */
    public Box meet(Box other) {
        return new Box(
                Dim.largerOf(left, other.left),
                Dim.smallerOf(right, other.right),
                Dim.largerOf(front, other.front),
                Dim.smallerOf(back, other.back),
                Dim.largerOf(bottom, other.bottom),
                Dim.smallerOf(top, other.top));
    }
}
