package scantling.plan;

import java.util.List;
import scantling.construct.Finding;
import scantling.cutting.CutPlan;

/** Parts that no stock holds, as findings. */
final class LeftOut {
    private LeftOut() {}

    static List<Finding> findings(List<CutGroup> cuts) {
        return cuts.stream()
                .flatMap(group -> group.plan().leftOut().stream().map(left -> finding(group, left)))
                .toList();
    }

    private static Finding finding(CutGroup group, CutPlan.LeftOut left) {
        return new Finding(
                Finding.Severity.STOP,
                left.part().name(),
                left.reason(),
                List.of(),
                "saw plan of %s".formatted(group.title()),
                "Say a larger sheet under \"materials\" (sheet size), turn the part, or join it from two.");
    }
}
