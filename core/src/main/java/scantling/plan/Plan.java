package scantling.plan;

import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.feature.Features;
import scantling.finishing.FinishPlan;
import scantling.milling.Blank;
import scantling.piece.Problem;
import scantling.route.Route;

/**
 * Everything that follows from a piece, the bench and the shop.
 *
 * @param assembly what it consists of, with every named number
 * @param features every slot, mortise and hole, and why it is as it is
 * @param finish what goes on the wood
 * @param blanks what is milled for the parts that are not yet cut
 * @param cuts saw plans, one for each material and thickness to be cut
 * @param route everything done to it, in order
 * @param findings what a careful master would say
 * @param problems why it cannot be built as written; then the rest is what could be worked out all the same
 */
public record Plan(
        Assembly assembly,
        Features features,
        FinishPlan finish,
        List<Blank> blanks,
        List<CutGroup> cuts,
        Route route,
        List<Finding> findings,
        List<Problem> problems) {
    /** Takes its own copies. */
    public Plan {
        blanks = List.copyOf(blanks);
        cuts = List.copyOf(cuts);
        findings = List.copyOf(findings);
        problems = List.copyOf(problems);
    }

    /** The same with other saw plans. */
    public Plan withCuts(List<CutGroup> others) {
        return new Plan(assembly, features, finish, blanks, others, route, findings, problems);
    }

    /** Whether some finding says not to cut. */
    public boolean hasStop() {
        return findings.stream().anyMatch(finding -> finding.severity() == Finding.Severity.STOP);
    }
}
