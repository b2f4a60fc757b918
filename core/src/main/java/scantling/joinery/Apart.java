package scantling.joinery;

import java.util.List;
import java.util.Map;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** A joint between parts that do not touch. */
final class Apart {
    private Apart() {}

    /** Tells how far apart they are and what would bring them together; what is carried loose may be apart. */
    static void tell(Joint joint, Map<String, Part> parts, Bench bench) {
        Part one = parts.get(joint.entering());
        Part two = parts.get(joint.receiving());
        if (joint.kind() == Joint.Kind.CARRIED || one == null || two == null || isShaped(one) || isShaped(two)) {
            return;
        }
        for (Axis axis : Axis.values()) {
            Dim gap = gap(one.box(), two.box(), axis);
            if (gap.value().isPositive()) {
                bench.find(finding(joint, gap, axis, bench));
                return;
            }
        }
    }

    private static Finding finding(Joint joint, Dim gap, Axis axis, Bench bench) {
        return new Finding(
                Finding.Severity.STOP,
                joint.path(),
                "The %s joins %s and %s, which do not touch: %s are between them, %s."
                        .formatted(
                                joint.kind().words(),
                                joint.entering(),
                                joint.receiving(),
                                bench.sayUnit(gap),
                                words(axis)),
                List.of(gap),
                "the planes of the parts",
                "Move one of them by %s, make one longer by as much, or take the joint away."
                        .formatted(bench.sayUnit(gap)));
    }

    private static boolean isShaped(Part part) {
        return part.turn().isPresent() || part.outline().isPresent();
    }

    private static Dim gap(Box one, Box two, Axis axis) {
        Side near = Side.of(axis, false);
        Side far = near.opposite();
        Dim after = two.plane(near).minus(one.plane(far));
        Dim before = one.plane(near).minus(two.plane(far));
        return after.compareTo(before) >= 0 ? after : before;
    }

    private static String words(Axis axis) {
        return switch (axis) {
            case ACROSS -> "from left to right";
            case DEEP -> "from front to back";
            case UP -> "from below to above";
        };
    }
}
