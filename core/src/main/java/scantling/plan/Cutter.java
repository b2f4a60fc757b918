package scantling.plan;

import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;

/**
 * Who makes saw plans for a planner: a search, or somebody who remembers what a search found for the same job. Must answer
 * the same for the same question, and may be asked by several threads at once.
 */
@FunctionalInterface
public interface Cutter {
    /** Searches each time. */
    Cutter SEARCH = (job, effort) -> SawPlans.plan(job, effort, () -> false);

    /** The saw plan of a job. */
    CutPlan plan(CutJob job, Effort effort);
}
