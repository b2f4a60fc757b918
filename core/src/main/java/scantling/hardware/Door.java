package scantling.hardware;

import java.util.List;
import java.util.Optional;
import scantling.construct.Fitting;
import scantling.construct.Opening;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;
import scantling.stock.HardwareProfiles;

/**
 * One hung door.
 *
 * @param fitting its hinges
 * @param leaf its stile, or its one board, that the hinges are in
 * @param parts all of it
 * @param face all of it, as a box
 * @param opening the air it closes
 * @param hung the side it turns about
 * @param wall what its plates are screwed to
 * @param profiles of the shop
 */
record Door(
        Fitting fitting,
        Part leaf,
        List<Part> parts,
        Box face,
        Opening opening,
        Side hung,
        Wall wall,
        HardwareProfiles profiles) {
    /** The door that a fitting hangs; nothing when its parts could not be made. */
    static Optional<Door> of(Workings workings, Fitting fitting) {
        Optional<Part> leaf = fitting.on().stream().findFirst().flatMap(workings::find);
        Optional<Opening> opening = leaf.flatMap(workings::openingOf);
        if (leaf.isEmpty() || opening.isEmpty()) {
            return Optional.empty();
        }
        String path = Workings.parent(fitting.path());
        List<Part> parts = opening.get().fills().stream()
                .filter(part -> part.startsWith(path))
                .flatMap(part -> workings.find(part).stream())
                .toList();
        Side hung = fitting.is("hung", Side.RIGHT.word()) ? Side.RIGHT : Side.LEFT;
        Wall wall = Wall.of(workings, opening.get().box(), hung, path);
        return Optional.of(
                new Door(fitting, leaf.get(), parts, around(parts), opening.get(), hung, wall, workings.profiles()));
    }

    private static Box around(List<Part> parts) {
        Box all = parts.get(0).box();
        for (Part part : parts) {
            for (Side side : Side.values()) {
                Dim plane = part.box().plane(side);
                boolean out =
                        side.isFar() ? plane.compareTo(all.plane(side)) > 0 : plane.compareTo(all.plane(side)) < 0;
                all = out ? all.with(side, plane) : all;
            }
        }
        return all;
    }

    boolean isInset() {
        return fitting.is("set", "inset");
    }

    /** How far it laps over what it hangs on; negative inside the opening. */
    Dim overlay() {
        Dim edge = face.plane(hung);
        Dim plane = opening.box().plane(hung);
        return hung.isFar() ? edge.minus(plane) : plane.minus(edge);
    }

    /** Where something so far from its hinge edge is, from left to right. */
    Dim in(Dim fromEdge) {
        Dim edge = face.plane(hung);
        return hung.isFar() ? edge.minus(fromEdge) : edge.plus(fromEdge);
    }

    /** Where the row of plate holes is, from the front: behind an inset door by its thickness more. */
    Dim plateRow() {
        Dim row = profiles.of(HardwareProfiles.CUP_HINGE, "plate row");
        if (!isInset()) {
            return opening.box().front().plus(row);
        }
        Dim behind = face.back().plus(row);
        return fitting.words().containsKey("panel")
                ? behind
                : behind.plus(profiles.of(HardwareProfiles.CUP_HINGE, "inset set back"));
    }

    Dim height() {
        return face.extent(Axis.UP);
    }
}
