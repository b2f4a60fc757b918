package scantling.space;

import java.util.Optional;

/**
 * A flat face in space, in millimetres.
 *
 * @param normal of length one, out of the wood
 * @param height how far along the normal it lies
 */
public record Plane(Point normal, double height) {
    /** The plane of one side of a box that is perhaps turned. */
    public static Plane of(Box box, Side side, Optional<Turn> turn) {
        Point out = new Point(0, 0, 0).with(side.axis(), side.isFar() ? 1 : -1);
        Point on = new Point(0, 0, 0).with(side.axis(), box.plane(side).value().toMillimetres());
        Point normal = turn.map(t -> t.swingAll(out)).orElse(out);
        return new Plane(normal, normal.dot(turn.map(t -> t.move(on)).orElse(on)));
    }

    /** Where a line along a direction meets it. @param place the line's other two coordinates */
    public double at(Axis along, Point place) {
        return (height - normal.dot(place.with(along, 0))) / normal.of(along);
    }

    /** How far that moves along one direction for every millimetre in another. */
    public double slope(Axis along, Axis over) {
        return -normal.of(over) / normal.of(along);
    }
}
