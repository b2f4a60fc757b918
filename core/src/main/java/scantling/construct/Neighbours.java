package scantling.construct;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import scantling.measure.Length;
import scantling.piece.Material;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Finds what stands next to what: touching without going in, or sharing wood. {@link Holders} finds both at once. */
final class Neighbours {
    private Neighbours() {}

    /** The parts whose wood lies against a side of a box, from outside it. */
    static List<Part> at(List<Part> parts, Box box, Side side) {
        return parts.stream().filter(part -> bounds(part.box(), box, side)).toList();
    }

    /** Fastens a part to every one of the others that it touches and does not enter. */
    static void fasten(Site site, Part part, List<Part> others, Joint.Kind kind) {
        others.stream()
                .filter(other -> touches(part.box(), other.box()))
                .forEach(other -> site.joint(kind, part, other, Map.of()));
    }

    /**
     * Fastens a part with screws to every one of the others that it touches and does not enter. Where they would go through
     * it into end grain, which does not hold them, what suits there is left to the rules of joinery.
     */
    static void screw(Site site, Part part, List<Part> others) {
        others.stream()
                .filter(other -> touches(part.box(), other.box()))
                .forEach(other -> site.joint(
                        goesIntoEndGrain(part, other) ? Joint.Kind.AUTO : Joint.Kind.SCREW, part, other, Map.of()));
    }

    private static boolean goesIntoEndGrain(Part part, Part other) {
        return other.material().kind() == Material.Kind.SOLID
                && other.lie().length() == part.lie().thickness()
                && Arrays.stream(Side.values())
                        .anyMatch(
                                side -> side.axis() == part.lie().thickness() && bounds(other.box(), part.box(), side));
    }

    /** Whether two boxes have a face in common and no wood. */
    static boolean touches(Box a, Box b) {
        return Arrays.stream(Side.values()).anyMatch(side -> bounds(b, a, side));
    }

    /** Whether two boxes share volume. */
    static boolean overlaps(Box a, Box b) {
        return Arrays.stream(Axis.values()).allMatch(axis -> overlap(a, b, axis));
    }

    private static boolean bounds(Box wood, Box box, Side side) {
        return value(wood, side.opposite()).equals(value(box, side))
                && Arrays.stream(Axis.values())
                        .filter(axis -> axis != side.axis())
                        .allMatch(axis -> overlap(wood, box, axis));
    }

    /** Whether two boxes have a stretch of one direction in common. */
    static boolean overlap(Box a, Box b, Axis axis) {
        Side near = Side.of(axis, false);
        Side far = Side.of(axis, true);
        return value(a, near).compareTo(value(b, far)) < 0 && value(b, near).compareTo(value(a, far)) < 0;
    }

    private static Length value(Box box, Side side) {
        return box.plane(side).value();
    }
}
