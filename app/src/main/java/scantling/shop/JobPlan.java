package scantling.shop;

import java.util.List;
import scantling.piece.BenchLog;
import scantling.piece.Problem;
import scantling.plan.Plan;

/** What became of planning a job. */
public sealed interface JobPlan {
    /** The job as it was. */
    Job job();

    /** The text it was planned from. */
    Revision revision();

    /**
     * A plan; it may hold problems of its own when the piece cannot be built as written.
     *
     * @param bench what the bench has measured and cut
     * @param plan everything that follows
     * @param benchProblems what the bench says of numbers and parts that this text does not have
     */
    record Planned(Job job, Revision revision, BenchLog bench, Plan plan, List<Problem> benchProblems)
            implements JobPlan {
        /** Takes its own copy. */
        public Planned {
            benchProblems = List.copyOf(benchProblems);
        }
    }

    /** The text does not read, which only happens with a text that an older Scantling could read. */
    record Unreadable(Job job, Revision revision, List<Problem> problems) implements JobPlan {
        /** Takes its own copy. */
        public Unreadable {
            problems = List.copyOf(problems);
        }
    }
}
