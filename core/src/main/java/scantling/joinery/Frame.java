package scantling.joinery;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import scantling.construct.Part;
import scantling.feature.Aim;
import scantling.feature.Range;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Point;
import scantling.space.Side;

/**
 * A part seen from its marks, turned or not: where a place of the piece is along, across and through it.
 *
 * @param part it
 */
record Frame(Part part) {
    /** From the marks to a place of the piece, in millimetres. */
    Aim.Way marks(Point place) {
        Point own = part.turn().map(turn -> turn.back(place)).orElse(place);
        return new Aim.Way(
                from(part.lie().nearEnd(), own),
                from(part.lie().faceEdge(), own),
                from(part.lie().faceSide(), own));
    }

    private double from(Side mark, Point own) {
        double plane = part.box().plane(mark).value().toMillimetres();
        return mark.isFar() ? plane - own.of(mark.axis()) : own.of(mark.axis()) - plane;
    }

    /** A direction of the piece, growing away from the marks. */
    Aim.Way way(Point direction) {
        Point own = part.turn().map(turn -> turn.swingBack(direction)).orElse(direction);
        return new Aim.Way(
                share(part.lie().nearEnd(), own),
                share(part.lie().faceEdge(), own),
                share(part.lie().faceSide(), own));
    }

    private static double share(Side mark, Point own) {
        return mark.isFar() ? -own.of(mark.axis()) : own.of(mark.axis());
    }

    /** A tool that goes in at a place of the piece. @param way that it goes @param side the way of the longer side */
    Aim aim(Point mouth, Point way, Point side, Dim depth, Dim length, Dim width) {
        Aim.Way at = marks(mouth);
        return new Aim(
                placed(at.along(), part.length()),
                placed(at.across(), part.width()),
                placed(at.through(), part.thickness()),
                way(way).unit(),
                way(side).unit(),
                depth,
                length,
                width);
    }

    /** A place worked out from the planes of two parts, as a number that moves with the size it is measured along. */
    static Dim placed(double millimetres, Dim size) {
        double rounded = Math.round(millimetres * 1e6) / 1e6;
        return Dim.worked(
                Length.ofMillimetres(rounded),
                "where the leaning face is met",
                new Making.Input(rounded / Row.mm(size), size));
    }

    /** The box around what a tool makes, within the part. */
    Range around(Aim aim, Surface surface, ToDoubleFunction<Aim.Way> share, Dim size) {
        Aim.Way down = aim.way().times(Row.mm(aim.depth()));
        Aim.Way middle = new Aim.Way(Row.mm(aim.along()), Row.mm(aim.across()), Row.mm(aim.through()));
        double[] all = Arrays.stream(aim.corners(surface))
                .flatMap(corner -> Arrays.stream(new Aim.Way[] {corner, corner.plus(down)}))
                .mapToDouble(corner -> share.applyAsDouble(middle.plus(corner)))
                .map(place -> Math.max(0, Math.min(Row.mm(size), place)))
                .sorted()
                .toArray();
        return new Range(placed(all[0], size), placed(all[all.length - 1], size));
    }
}
