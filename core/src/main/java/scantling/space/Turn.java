package scantling.space;

import java.util.Optional;
import scantling.measure.Dim;

/**
 * A part turned out of its box: splayed, raked, run round a corner. The box says where it would be before turning.
 *
 * @param about the direction of the line it turns about
 * @param degrees how far; positive turns ACROSS toward DEEP, DEEP toward UP, UP toward ACROSS
 * @param first where the line crosses the next direction (in the cycle ACROSS, DEEP, UP) behind {@code about}
 * @param second where it crosses the one behind that
 * @param then a second turn after this one, for what leans two ways
 */
public record Turn(Axis about, double degrees, Dim first, Dim second, Optional<Turn> then) {
    /** A single turn. */
    public Turn(Axis about, double degrees, Dim first, Dim second) {
        this(about, degrees, first, second, Optional.empty());
    }

    /** Where a point comes to lie. */
    public Point move(Point point) {
        Point around = new Point(0, 0, 0)
                .with(about.next(), first.value().toMillimetres())
                .with(about.next().next(), second.value().toMillimetres())
                .with(about, 0);
        Point moved = swing(point.minus(around), degrees).plus(around);
        return then.map(turn -> turn.move(moved)).orElse(moved);
    }

    /** Where a point was before it was turned. */
    public Point back(Point point) {
        Point before = then.map(turn -> turn.back(point)).orElse(point);
        Point around = new Point(0, 0, 0)
                .with(about.next(), first.value().toMillimetres())
                .with(about.next().next(), second.value().toMillimetres());
        return swing(before.minus(around), -degrees).plus(around);
    }

    /** Where a direction pointed before it was turned. */
    public Point swingBack(Point direction) {
        return swing(then.map(turn -> turn.swingBack(direction)).orElse(direction), -degrees);
    }

    /** Where a direction comes to point. */
    public Point swingAll(Point direction) {
        Point swung = swing(direction, degrees);
        return then.map(turn -> turn.swingAll(swung)).orElse(swung);
    }

    private Point swing(Point direction, double by) {
        double angle = Math.toRadians(by);
        double x = direction.of(about.next());
        double y = direction.of(about.next().next());
        return direction
                .with(about.next(), x * Math.cos(angle) - y * Math.sin(angle))
                .with(about.next().next(), x * Math.sin(angle) + y * Math.cos(angle));
    }
}
