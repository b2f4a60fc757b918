package scantling.hardware;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/**
 * What stands at one side of an opening: the wood that a slide, a plate or a pin is fixed to.
 *
 * @param side of the opening
 * @param plane of that side
 * @param parts that have a face there, or so little behind it that it is packed out
 */
record Wall(Workings workings, Side side, Dim plane, List<Part> parts) {
    /** The wall of an opening. @param without what the path of its own parts starts with */
    static Wall of(Workings workings, Box air, Side side, String without) {
        Length shim = workings.profiles().of("slide", "shim").value();
        Dim plane = air.plane(side);
        List<Part> parts = workings.assembly().parts().stream()
                .filter(part -> part.turn().isEmpty() && !part.path().startsWith(without))
                .filter(part -> isNear(part.box(), plane, side, shim) && faces(part.box(), air, side))
                .sorted(Comparator.comparing(
                        part -> distance(part.box(), plane, side).value()))
                .toList();
        return new Wall(workings, side, plane, parts);
    }

    private static boolean isNear(Box box, Dim plane, Side side, Length shim) {
        Length distance = distance(box, plane, side).value();
        return !distance.isNegative() && distance.compareTo(shim) <= 0;
    }

    /** How far behind the plane a part's face is. */
    private static Dim distance(Box box, Dim plane, Side side) {
        Dim face = box.plane(side.opposite());
        return side.isFar() ? face.minus(plane) : plane.minus(face);
    }

    private static boolean faces(Box box, Box air, Side side) {
        for (Axis axis : Axis.values()) {
            Side near = Side.of(axis, false);
            Side far = Side.of(axis, true);
            if (axis != side.axis()
                    && (box.plane(near).compareTo(air.plane(far)) >= 0
                            || air.plane(near).compareTo(box.plane(far)) >= 0)) {
                return false;
            }
        }
        return true;
    }

    /** How far behind the opening's side the face of a part lies. */
    Dim behind(Part part) {
        return distance(part.box(), plane, side);
    }

    /** The part that holds a hole with enough wood around it. */
    Optional<Part> holding(Spot at, Dim diameter) {
        Dim margin = diameter.half().plus(workings.profiles().of("hole", "least wood"));
        return parts.stream().filter(part -> holds(part, at, margin)).findFirst();
    }

    private boolean holds(Part part, Spot at, Dim margin) {
        for (Axis axis : Axis.values()) {
            if (axis != side.axis() && !inside(part.box(), axis, at.on(axis), margin)) {
                return false;
            }
        }
        return workings.assembly().joints().stream()
                .filter(joint -> joint.receiving().equals(part.path()))
                .noneMatch(joint -> takes(joint, at));
    }

    private static boolean inside(Box box, Axis axis, Dim at, Dim margin) {
        return at.minus(margin).compareTo(box.plane(Side.of(axis, false))) >= 0
                && at.plus(margin).compareTo(box.plane(Side.of(axis, true))) <= 0;
    }

    /** Whether a joint has taken away the face there: another part lies in it. */
    private boolean takes(Joint joint, Spot at) {
        return joint.overlap()
                .filter(box -> isNear(
                        box,
                        plane,
                        side,
                        workings.profiles().of("slide", "shim").value()))
                .filter(box -> Spots.covers(box, at, side.axis()))
                .isPresent();
    }
}
