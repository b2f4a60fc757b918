package scantling.construct;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.EndCut;
import scantling.space.Lie;
import scantling.space.Plane;
import scantling.space.Point;
import scantling.space.Side;

/** One end of a straight part where it meets the leaning face of a leg. */
final class LeaningEnd {
    private final Box lane;
    private final Lie lie;
    private final Side end;
    private final LegMaker.Leaning leg;
    private final Plane face;

    /** @param lane where the part runs; its planes at the ends do not count */
    LeaningEnd(Box lane, Lie lie, Side end, LegMaker.Leaning leg) {
        this.lane = lane;
        this.lie = lie;
        this.end = end;
        this.leg = leg;
        face = Plane.of(leg.part().box(), end.opposite(), leg.part().turn());
    }

    /** Which end. */
    Side side() {
        return end;
    }

    /** What it meets. */
    Part leg() {
        return leg.part();
    }

    /** Where the corner of the shoulder is that stands out most. */
    Dim longest() {
        return meeting(end.isFar());
    }

    /** Where the corner of the shoulder is that stands back most. */
    Dim shortest() {
        return meeting(!end.isFar());
    }

    /** How the shoulder, and with it the end, is cut. */
    EndCut cut() {
        Axis along = lie.length();
        double sense = sign(lie.nearEnd());
        return new EndCut(
                sense * sign(lie.faceEdge()) * face.slope(along, lie.width()),
                sense * sign(lie.faceSide()) * face.slope(along, lie.thickness()));
    }

    private Dim meeting(boolean farthest) {
        Axis along = lie.length();
        Comparator<Point> by = Comparator.comparingDouble(corner -> face.at(along, corner));
        Point corner = corners().max(farthest ? by : by.reversed()).orElseThrow();
        double up = corner.of(Axis.UP) / leg.splay().turned().height().value().toMillimetres();
        return Dim.worked(
                Length.ofMillimetres(face.at(along, corner)),
                "meeting with the leaning face",
                new Making.Input(1, leg.part().box().plane(end.opposite())),
                new Making.Input(end.isFar() ? -up : up, leg.splay().out(along)));
    }

    private Stream<Point> corners() {
        return Stream.of(false, true)
                .flatMap(wide -> Stream.of(false, true)
                        .map(thick -> new Point(0, 0, 0)
                                .with(lie.width(), plane(lie.width(), wide))
                                .with(lie.thickness(), plane(lie.thickness(), thick))));
    }

    private double plane(Axis axis, boolean far) {
        return lane.plane(Side.of(axis, far)).value().toMillimetres();
    }

    private static int sign(Side mark) {
        return mark.isFar() ? -1 : 1;
    }

    /** Both ends of a part, near and far. */
    static List<Side> ends(Axis along) {
        return List.of(Side.of(along, false), Side.of(along, true));
    }
}
