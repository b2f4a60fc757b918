package scantling.cutting;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** What no plan of a problem can cost less than, as far as it is known. */
final class Proof {
    private static final long STEPS_BEFORE = 16_000;
    /** Where nothing but money counts, searching finds more than proving for longer. */
    private static final long STEPS_BEFORE_FOR_MONEY = 120_000;

    private final Bounds bounds;
    private long cost;
    private boolean deep;
    private Optional<Layout> nearly = Optional.empty();

    Proof(Problem problem) {
        this.bounds = new Bounds(problem);
        this.cost = bounds.cost();
    }

    long cost() {
        return cost;
    }

    void raise(long to) {
        cost = Math.max(cost, to);
    }

    /** How long to search before what takes long is tried. @param easy whether the plan is also made easier to cut */
    static long stepsBefore(boolean easy) {
        return easy ? STEPS_BEFORE : STEPS_BEFORE_FOR_MONEY;
    }

    /** Whether all that takes long has been tried. */
    boolean isDeep() {
        return deep;
    }

    /** A cheaper plan met on the way, though some small parts may be out. */
    Optional<Layout> nearly() {
        return nearly;
    }

    /** Tries what takes long, once. @param best what the best plan costs @param pool sheets met on the way */
    void deepen(long best, BinPool pool, BooleanSupplier stop) {
        deep = true;
        List<Pattern> met = pool.patterns();
        raise(bounds.deeper(best, met, stop));
        if (cost < best) {
            bounds.sets(stop).ifPresent(sets -> {
                raise(bounds.bySets(sets, met));
                if (cost < best) {
                    wholeSets(sets, best, pool);
                }
            });
        }
    }

    private void wholeSets(SetPlans sets, long best, BinPool pool) {
        pool.add(sets.sheets());
        SetPlans.Answer answer = sets.within(best - 1);
        raise(answer.isImpossible() ? best : cost);
        nearly = answer.plan();
    }
}
