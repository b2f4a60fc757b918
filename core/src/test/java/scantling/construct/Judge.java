package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Judges an assembly by its boxes alone: no two share wood unless a joint says so, and every part touches another. */
final class Judge {
    private Judge() {}

    static void sound(Assembly assembly) {
        assertEquals(List.of(), assembly.problems());
        assertEquals(List.of(), clashes(assembly));
        for (Part part : assembly.parts()) {
            assertTrue(assembly.parts().size() == 1 || isHeld(assembly, part), () -> part.path() + " touches nothing");
        }
    }

    private static List<String> clashes(Assembly assembly) {
        List<String> clashes = new ArrayList<>();
        List<Part> parts = assembly.parts();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                if (flat(parts.get(i).box(), parts.get(j).box()) == 0
                        && !isJoined(assembly, parts.get(i), parts.get(j))) {
                    clashes.add(parts.get(i).path() + " and " + parts.get(j).path());
                }
            }
        }
        return clashes;
    }

    private static boolean isHeld(Assembly assembly, Part part) {
        return assembly.parts().stream()
                .filter(other -> other != part)
                .anyMatch(other -> isJoined(assembly, part, other) || meets(part.box(), other.box()));
    }

    private static boolean meets(Box a, Box b) {
        return flat(a, b) == 0 || flat(a, b) == 1;
    }

    /** In how many directions two boxes only touch; minus one when they are apart. */
    private static int flat(Box a, Box b) {
        int flat = 0;
        for (Axis axis : Axis.values()) {
            Side near = Side.of(axis, false);
            Length from = a.plane(near).value().max(b.plane(near).value());
            Length to = a.plane(near.opposite())
                    .value()
                    .min(b.plane(near.opposite()).value());
            if (to.compareTo(from) < 0) {
                return -1;
            }
            flat += to.equals(from) ? 1 : 0;
        }
        return flat;
    }

    private static boolean isJoined(Assembly assembly, Part a, Part b) {
        return assembly.joints().stream().anyMatch(joint -> joins(joint, a, b) || joins(joint, b, a));
    }

    private static boolean joins(Joint joint, Part entering, Part receiving) {
        return joint.entering().equals(entering.path()) && joint.receiving().equals(receiving.path());
    }
}
