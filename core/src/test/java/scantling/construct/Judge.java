package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Length;
import scantling.space.Axis;
import scantling.space.Box;

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
                Box shared = parts.get(i).box().meet(parts.get(j).box());
                if (!shared.isEmpty() && !isJoined(assembly, parts.get(i), parts.get(j))) {
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
        int flat = 0;
        for (Axis axis : Axis.values()) {
            Length shared = a.meet(b).extent(axis).value();
            if (shared.isNegative()) {
                return false;
            }
            flat += shared.isZero() ? 1 : 0;
        }
        return flat <= 1;
    }

    private static boolean isJoined(Assembly assembly, Part a, Part b) {
        return assembly.joints().stream().anyMatch(joint -> joins(joint, a, b) || joins(joint, b, a));
    }

    private static boolean joins(Joint joint, Part entering, Part receiving) {
        return joint.entering().equals(entering.path()) && joint.receiving().equals(receiving.path());
    }
}
