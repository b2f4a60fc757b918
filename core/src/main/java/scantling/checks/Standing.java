package scantling.checks;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.space.Box;
import scantling.space.Side;

/**
 * That nothing hangs in the air: every part touches another or the floor or a wall plane of the piece, or hardware or a
 * carrying joint holds it; every group of parts that touch one another stands on the floor, is on a wall, or is held
 * so. That what a joint joins meets is for joinery to tell.
 */
final class Standing {
    /** Where a floor or a wall may be. */
    private static final List<Side> BACKED = List.of(Side.BOTTOM, Side.BACK, Side.LEFT, Side.RIGHT);

    private final Assembly assembly;
    private final Box whole;
    private final List<PlacedPart> parts;
    private final List<List<Integer>> touching = new ArrayList<>();
    private final Map<String, Integer> indices = new HashMap<>();

    Standing(Assembly assembly, Box whole, List<PlacedPart> parts) {
        this.assembly = assembly;
        this.whole = whole;
        this.parts = parts;
        for (int i = 0; i < parts.size(); i++) {
            touching.add(new ArrayList<>());
            indices.putIfAbsent(parts.get(i).path(), i);
        }
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                if (parts.get(i).touches(parts.get(j))) {
                    touching.get(i).add(j);
                    touching.get(j).add(i);
                }
            }
        }
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<String> held = held();
        for (List<PlacedPart> group : groups()) {
            boolean stands = group.stream()
                    .anyMatch(part ->
                            held.contains(part.path()) || BACKED.stream().anyMatch(side -> part.reaches(whole, side)));
            if (!stands) {
                findings.add(floating(group));
            }
        }
        return findings;
    }

    /** Parts with hardware on them, or in a joint that carries. */
    private Set<String> held() {
        Set<String> held = new HashSet<>();
        assembly.fittings().stream().map(Fitting::on).forEach(held::addAll);
        assembly.joints().stream()
                .filter(joint -> joint.kind() == Joint.Kind.CARRIED)
                .forEach(joint -> held.addAll(List.of(joint.entering(), joint.receiving())));
        return held;
    }

    private List<List<PlacedPart>> groups() {
        List<List<PlacedPart>> groups = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (int i = 0; i < parts.size(); i++) {
            if (seen.add(i)) {
                groups.add(group(i, seen));
            }
        }
        return groups;
    }

    private List<PlacedPart> group(int first, Set<Integer> seen) {
        List<PlacedPart> group = new ArrayList<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(first));
        while (!open.isEmpty()) {
            int next = open.remove();
            group.add(parts.get(next));
            touching.get(next).stream().filter(seen::add).forEach(open::add);
        }
        return group;
    }

    private static Finding floating(List<PlacedPart> group) {
        String first = group.get(0).path();
        String remedy = "Give it a place to meet its neighbour, or say what carries it.";
        if (group.size() == 1) {
            return Words.stop(first, first + " touches no other part, no floor and no wall.", List.of(), remedy);
        }
        String all = group.stream().map(PlacedPart::path).collect(Collectors.joining(", "));
        return Words.caution(
                first, "Nothing that stands holds these parts together: %s.".formatted(all), List.of(), remedy);
    }
}
