package scantling.plan;

import java.util.Map;
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.piece.Material;
import scantling.stock.Grade;

/**
 * One saw plan of a piece.
 *
 * @param title what is cut, for people: {@code cherry, 5/4 boards}
 * @param material of what
 * @param job what was asked
 * @param plan what to cut
 * @param grades of its boards, where known, by their name in the job
 */
public record CutGroup(String title, Material material, CutJob job, CutPlan plan, Map<String, Grade> grades) {
    /** Takes its own copy. */
    public CutGroup {
        grades = Map.copyOf(grades);
    }

    /** The same job planned otherwise. */
    public CutGroup with(CutPlan other) {
        return new CutGroup(title, material, job, other, grades);
    }
}
