package scantling.finishing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Surface;

/** Finds panels of which one side is coated and the other is not. */
final class Balance {
    private Balance() {}

    /** One finding for all panels that have the same fault. */
    static List<Finding> findings(List<Face> faces, List<FinishGroup> groups) {
        Map<Face, Integer> coats = new IdentityHashMap<>();
        groups.forEach(group ->
                group.faces().forEach(face -> coats.merge(face, group.coatings().size(), Integer::sum)));
        Map<String, List<String>> panels = new LinkedHashMap<>();
        for (Face face : faces) {
            if (face.surface() == Surface.FACE_SIDE && canCup(face.part())) {
                faces.stream()
                        .filter(other -> other.part() == face.part() && other.surface() == Surface.BACK_SIDE)
                        .forEach(back -> judge(face, back, coats)
                                .ifPresent(coated -> panels.computeIfAbsent(coated, key -> new ArrayList<>())
                                        .add(face.part().path())));
            }
        }
        List<Finding> findings = new ArrayList<>();
        panels.forEach((coated, paths) -> findings.add(finding(coated, paths)));
        return findings;
    }

    private static Finding finding(String coated, List<String> paths) {
        if (paths.size() == 1) {
            return Rule.get("unbalanced").finding(paths.get(0), List.of(paths.get(0), coated), List.of());
        }
        return Rule.get("unbalanced many")
                .finding("finish", List.of(String.valueOf(paths.size()), coated, String.join("; ", paths)), List.of());
    }

    private static boolean canCup(Part part) {
        return !part.material().prefinished() && part.width().value().toMillimetres() >= Figures.of("panel width");
    }

    /** What one side gets while the other gets nothing. */
    private static Optional<String> judge(Face face, Face back, Map<Face, Integer> coats) {
        int before = coats.getOrDefault(face, 0);
        int behind = coats.getOrDefault(back, 0);
        double least = Figures.of("balance difference");
        boolean bothOpen = reach(face) > least * face.whole() && reach(back) > least * back.whole();
        if (!bothOpen || Math.min(before, behind) > 0 || Math.max(before, behind) == 0) {
            return Optional.empty();
        }
        return Optional.of(Math.max(before, behind) == 1 ? "a coat" : Math.max(before, behind) + " coats");
    }

    private static double reach(Face face) {
        return face.open() + face.covered();
    }
}
