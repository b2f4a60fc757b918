package scantling.construct;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Finds the parts that stand at a side of a box: lying against it, or holding its end. */
final class Holders {
    private Holders() {}

    /** The parts at that side, in the order they were built. */
    static List<Part> at(Site site, Box box, Side side) {
        return site.parts().stream()
                .filter(part -> stands(part.box(), box, side))
                .toList();
    }

    /** Joins a part to whatever stands at one of its sides. @return what it was joined to */
    static List<Part> join(Site site, Part part, Side side, Joint.Kind kind, Map<String, Dim> sizes) {
        List<Part> there = at(site, part.box(), side).stream()
                .filter(other -> !other.path().equals(part.path()))
                .toList();
        there.forEach(other -> site.joint(kind, part, other, sizes));
        return there;
    }

    private static boolean stands(Box other, Box box, Side side) {
        Dim plane = box.plane(side);
        boolean reached = other.plane(Side.of(side.axis(), false)).compareTo(plane) <= 0
                && other.plane(Side.of(side.axis(), true)).compareTo(plane) >= 0;
        boolean beyond = side.isFar()
                ? other.plane(side).compareTo(plane) > 0
                : other.plane(side).compareTo(plane) < 0;
        return reached
                && beyond
                && Arrays.stream(Axis.values())
                        .allMatch(axis -> axis == side.axis() || Neighbours.overlap(other, box, axis));
    }
}
