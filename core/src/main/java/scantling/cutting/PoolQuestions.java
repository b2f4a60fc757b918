package scantling.cutting;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Whether pieces filled so far make a cheaper plan, asked again whenever the search has become twice as long. The answer is worked
 * out beside the search, which goes on meanwhile, and is taken after a set number of steps, so that the same steps give the same
 * plan.
 */
final class PoolQuestions {
    private static final long STEPS_BEFORE = 120_000;
    private static final long STEPS_FOR_AN_ANSWER = 100_000;

    private final BinPool pool;
    private final BooleanSupplier stop;
    private Optional<BinPool.Question> open = Optional.empty();
    private long next = STEPS_BEFORE;
    private long answerAt;

    PoolQuestions(BinPool pool, BooleanSupplier stop) {
        this.pool = pool;
        this.stop = stop;
    }

    /** Asks if it is time and nothing is being asked. @param best the plan that another has to be cheaper than */
    void ask(Layout best, long step) {
        if (open.isEmpty() && step >= next) {
            open = pool.ask(best, best.cost - 1, stop);
            answerAt = step + STEPS_FOR_AN_ANSWER;
            next = 2 * step;
        }
    }

    /** The plan found, if it is time for it. */
    Optional<Layout> answer(long step) {
        return step < answerAt ? Optional.empty() : lastAnswer();
    }

    /** The plan found, whether it is time for it or not. */
    Optional<Layout> lastAnswer() {
        Optional<Layout> plan = open.flatMap(question -> question.plan(stop));
        open = Optional.empty();
        return plan;
    }
}
