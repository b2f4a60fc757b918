package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Solid panels in grooves and rabbets: room to grow in the damp month, enough left in the groove in the dry one. */
final class HeldPanels {
    /** Which size of a joint says how far the panel could go in. */
    private static final Map<Joint.Kind, String> REACH =
            Map.of(Joint.Kind.GROOVE, "depth", Joint.Kind.RABBET, "width", Joint.Kind.TONGUE, "depth");

    private final Assembly assembly;
    private final Movements movements;
    private final Say say;

    HeldPanels(Assembly assembly, Movements movements) {
        this.assembly = assembly;
        this.movements = movements;
        this.say = Say.of(assembly);
    }

    /** @param room from the panel's edge to the wall behind it @param inside how far the panel is in */
    private record Hold(Dim room, Dim inside) {}

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Part part : assembly.parts()) {
            List<Hold> holds = holds(part);
            Optional<Moving> moving = holds.isEmpty() ? Optional.empty() : movements.find(part);
            moving.flatMap(change -> judge(change, holds))
                    .filter(finding -> told.add(Parts.likeness(part)))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    private List<Hold> holds(Part panel) {
        return assembly.joints().stream()
                .filter(joint -> joint.entering().equals(panel.path()))
                .filter(joint -> joint.sizes().containsKey(REACH.getOrDefault(joint.kind(), "")))
                .flatMap(joint -> hold(panel, joint).stream())
                .toList();
    }

    private Optional<Hold> hold(Part panel, Joint joint) {
        Axis across = panel.lie().width();
        Dim reach = joint.sizes().getOrDefault(REACH.getOrDefault(joint.kind(), ""), Dim.ZERO);
        return Parts.find(assembly, joint.receiving())
                .map(frame -> joint.overlap().orElseGet(() -> panel.box().meet(frame.box())))
                .filter(overlap -> isAtEdge(panel.box(), overlap, across))
                .map(overlap -> overlap.extent(across))
                .map(inside -> new Hold(reach.minus(inside), inside));
    }

    private static boolean isAtEdge(Box panel, Box overlap, Axis across) {
        boolean near = overlap.plane(Side.of(across, false)).equals(panel.plane(Side.of(across, false)));
        boolean far = overlap.plane(Side.of(across, true)).equals(panel.plane(Side.of(across, true)));
        return near != far && !overlap.isEmpty();
    }

    private Optional<Finding> judge(Moving moving, List<Hold> holds) {
        Dim room = holds.stream().map(Hold::room).min(Dim::compareTo).orElseThrow();
        Dim inside = holds.stream().map(Hold::inside).min(Dim::compareTo).orElseThrow();
        if (moving.growth().half().compareTo(room) > 0) {
            return Optional.of(tight(moving, room));
        }
        return moving.shrinkage().half().compareTo(inside) >= 0 ? Optional.of(loose(moving, inside)) : Optional.empty();
    }

    private Finding tight(Moving moving, Dim room) {
        Dim lack = moving.growth().half().minus(room);
        return finding(
                moving,
                room,
                "%s grows %s in the damp month and has %s of room at each edge: it will push its frame apart."
                        .formatted(
                                moving.part().path(), say.near(moving.growth().value()), say.near(room.value())),
                "Cut it %s narrower, make the grooves %s deeper, or use a sheet or a veneered panel, which may be glued in."
                        .formatted(say.atLeast(2 * Parts.mm(lack)), say.atLeast(Parts.mm(lack))));
    }

    private Finding loose(Moving moving, Dim inside) {
        return finding(
                moving,
                inside,
                "%s shrinks %s in the dry month and is %s in at each edge: it will show a gap."
                        .formatted(
                                moving.part().path(),
                                say.near(moving.shrinkage().value()),
                                say.near(inside.value())),
                "Let it in deeper, or pin it at its middle so that both edges share the change.");
    }

    private Finding finding(Moving moving, Dim against, String sentence, String remedy) {
        return new Finding(
                        Finding.Severity.CAUTION,
                        moving.part().path(),
                        sentence,
                        List.of(moving.growth(), moving.shrinkage(), against),
                        MovementCheck.source(moving, movements),
                        remedy)
                .by("panel room");
    }
}
