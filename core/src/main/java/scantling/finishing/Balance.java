package scantling.finishing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.feature.Surface;

/** Finds panels of which one side is coated and the other is not. */
final class Balance {
    private Balance() {}

    static List<Finding> findings(List<Face> faces, List<FinishGroup> groups) {
        Map<Face, Integer> coats = new IdentityHashMap<>();
        groups.forEach(group ->
                group.faces().forEach(face -> coats.merge(face, group.coatings().size(), Integer::sum)));
        List<Finding> findings = new ArrayList<>();
        for (Face face : faces) {
            if (face.surface() == Surface.FACE_SIDE && canCup(face.part())) {
                faces.stream()
                        .filter(other -> other.part() == face.part() && other.surface() == Surface.BACK_SIDE)
                        .forEach(back -> judge(face, back, coats, findings));
            }
        }
        return findings;
    }

    private static boolean canCup(Part part) {
        return !part.material().prefinished() && part.width().value().toMillimetres() >= Figures.of("panel width");
    }

    private static void judge(Face face, Face back, Map<Face, Integer> coats, List<Finding> findings) {
        int before = coats.getOrDefault(face, 0);
        int behind = coats.getOrDefault(back, 0);
        double least = Figures.of("balance difference");
        boolean bothOpen = reach(face) > least * face.whole() && reach(back) > least * back.whole();
        if (bothOpen && Math.min(before, behind) == 0 && Math.max(before, behind) > 0) {
            String coated = Math.max(before, behind) == 1 ? "a coat" : Math.max(before, behind) + " coats";
            findings.add(Rule.get("unbalanced")
                    .finding(face.part().path(), List.of(face.part().path(), coated), List.of()));
        }
    }

    private static double reach(Face face) {
        return face.open() + face.covered();
    }
}
