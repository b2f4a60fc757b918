package scantling.hardware;

import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** A point of the piece: the middle of a hole where it enters the wood. */
record Spot(Dim across, Dim deep, Dim up) {
    /** How far it is from the piece's corner in one direction. */
    Dim on(Axis axis) {
        return switch (axis) {
            case ACROSS -> across;
            case DEEP -> deep;
            case UP -> up;
        };
    }

    /** The same point moved to elsewhere in one direction. */
    Spot with(Axis axis, Dim at) {
        return new Spot(axis == Axis.ACROSS ? at : across, axis == Axis.DEEP ? at : deep, axis == Axis.UP ? at : up);
    }

    /** The box that a round hole from here takes up, drilled from a side of the wood. */
    Box hole(Side from, Dim diameter, Dim depth) {
        Box box = around(diameter);
        Dim mouth = on(from.axis());
        Dim end = from.isFar() ? mouth.minus(depth) : mouth.plus(depth);
        return box.with(from, mouth).with(from.opposite(), end);
    }

    private Box around(Dim size) {
        Dim half = size.half();
        return new Box(
                across.minus(half),
                across.plus(half),
                deep.minus(half),
                deep.plus(half),
                up.minus(half),
                up.plus(half));
    }
}
