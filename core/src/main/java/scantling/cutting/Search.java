package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import scantling.measure.Once;

/**
 * Goal-driven ruin and recreate (Gardeyn and Wauters, EJOR 2022): as soon as every item is placed, the allowed cost is set
 * one below what that took, and the search goes on among layouts that keep to it but leave items out, until none is out
 * again. Worse layouts are accepted late.
 */
final class Search {
    /** After so many steps without a better layout the search begins elsewhere. */
    private static final long PATIENCE = 6_000;

    private static final long FIRST_ROUND = 4_000;
    private static final long STEPS_FROM_NEARLY = 6_000;

    private static final int SHEET_PASSES = 2;

    private final Problem problem;
    private final Proof proof;
    private final Effort effort;
    private final BooleanSupplier stop;
    private final SplittableRandom random;
    private final Tuning tuning;
    private final Ruin ruin;
    private final Recreate recreate;
    private final Fewer fewer;
    private final double scale;
    private final Optional<Easing> easing;

    private final List<Integer> items;
    private final Tail tail;
    private final LateAcceptance late;
    private final BinPool pool;
    private final Once<Optional<SheetDive>> dives;
    private final PoolQuestions questions;
    /** Whether a sheet or two of many are searched at a time. */
    private boolean many;

    private Layout best;
    private Optional<Layout> byMoney = Optional.empty();
    private double bestOut;
    private long step;
    /** A step at which this kind of searching leaves off, to go on with another. */
    private long pause = Long.MAX_VALUE;

    Search(Problem problem, Effort effort, BooleanSupplier stop, Tuning tuning) {
        this.problem = problem;
        this.proof = new Proof(problem);
        this.pool = new BinPool(problem);
        this.questions = new PoolQuestions(pool, stop);
        this.dives = Once.of(() -> SheetDive.of(problem, effort.seed(), stop));
        this.effort = effort;
        this.stop = stop;
        this.tuning = tuning;
        this.random = new SplittableRandom(effort.seed());
        this.ruin = new Ruin(random, tuning);
        this.late = new LateAcceptance(tuning.memory());
        this.recreate = new Recreate(problem, random, tuning.blink());
        this.fewer = new Fewer(problem, random, recreate);
        this.scale = problem.largestStock();
        this.items = IntStream.of(problem.fitting()).boxed().toList();
        this.tail = new Tail(problem, random);
        this.best = new Layout(problem, items);
        this.bestOut = best.areaOut();
        this.easing = problem.job.wishes().any()
                ? Optional.of(new Easing(problem, tuning, effort.seed(), stop))
                : Optional.empty();
    }

    /** The best layout found. */
    Layout run() {
        first();
        if (!done() && bestOut == 0) {
            sheetBySheet();
            sheetDives();
            sticks();
        }
        long round = Math.min(FIRST_ROUND, effort.steps() / 2);
        while (!spent() && !(isCheapest() && isEasy())) {
            pause = easing.isPresent()
                    ? step + Math.max(1, round)
                    : proof.isDeep() ? Long.MAX_VALUE : Math.max(step + 1, Proof.stepsBefore(easing.isPresent()));
            while (!done()) {
                improve(best);
            }
            pause = Long.MAX_VALUE;
            easing.ifPresent(this::ease);
            round *= 2;
            deepen();
        }
        deepen();
        if (!isCheapest()) {
            questions.lastAnswer().ifPresent(this::keep);
        }
        return best;
    }

    /** Looks for a better bound once, when the search has had its share or is over. */
    private void deepen() {
        long taken = step + easing.map(Easing::steps).orElse(0L);
        boolean due = taken >= Proof.stepsBefore(easing.isPresent()) || taken >= effort.steps() && taken >= FIRST_ROUND;
        if (due && !proof.isDeep() && bestOut == 0 && !isCheapest() && !stop.getAsBoolean()) {
            dives.get().ifPresent(mixture -> pool.add(mixture.sheets().bins()));
            proof.deepen(best.cost, pool, stop);
            proof.nearly().ifPresent(nearly -> searchUntil(step + STEPS_FROM_NEARLY, nearly));
        }
    }

    private boolean isEasy() {
        return best.bins.isEmpty() || easing.map(Easing::isIdle).orElse(true);
    }

    /** As many steps as have been spent on money, but no more than are left. Layouts with parts left out are eased too. */
    private void ease(Easing easier) {
        long steps = Math.min(effort.steps() - easier.steps() - step, Math.max(step - easier.steps(), FIRST_ROUND));
        if (byMoney.isEmpty() || best.cost < byMoney.get().cost) {
            byMoney = Optional.of(best);
        }
        best = easier.run(best, steps);
    }

    /** The first layout of its cost, as it was before it was made easier to cut. */
    Optional<Layout> byMoney() {
        return byMoney;
    }

    /** The bound as it is known at the end: sticks find a better one on the way. */
    long bound() {
        return proof.cost();
    }

    /** Begins with an older plan's cuts for some of the stock; to be said before {@link #run}. */
    void begin(List<Rest.Begun> begun) {
        Layout start = LayoutReader.read(problem, begun, new Recreate(problem, random, 0), step);
        step++;
        keep(start);
    }

    private void first() {
        for (Comparator<Integer> order : Orders.first(problem)) {
            Layout first = new Layout(problem, items);
            List<Integer> sorted = new ArrayList<>(items);
            sorted.sort(order);
            new Recreate(problem, random, 0).fill(first, sorted, Long.MAX_VALUE, step);
            step++;
            keep(first);
        }
    }

    /** Where there are many parts a sheet can be filled from, better plans are sooner had that way. */
    private void sheetBySheet() {
        SheetBySheet.of(problem, stop).ifPresent(sheets -> {
            many = true;
            long steps = sheets.steps();
            for (int pass = 0; pass < SHEET_PASSES && !done() && steps <= effort.steps() - step; pass++) {
                sheets.next(step).ifPresent(this::keep);
                step += steps;
            }
        });
    }

    /** Where many parts are alike, plans come from the mixture of patterns; each is searched from for a while. */
    private void sheetDives() {
        Optional<SheetDive> dive = SheetDive.pays(effort.steps(), easing.isPresent()) ? dives.get() : Optional.empty();
        if (dive.isPresent()) {
            searchUntil(step + SheetDive.STEPS_AFTER, best);
            dive.get().offer(best);
            for (int k = 0; k < SheetDive.TIMES && !done(); k++) {
                Optional<Layout> found = dive.get().next();
                step += SheetDive.STEPS;
                found.ifPresent(this::keep);
                found.ifPresent(layout -> searchUntil(step + SheetDive.STEPS_AFTER, layout));
            }
        }
    }

    private void searchUntil(long end, Layout from) {
        pause = end;
        if (!done()) {
            improve(from);
        }
        while (!done()) {
            improve(best);
        }
        pause = Long.MAX_VALUE;
    }

    /** A short search first, so that something good is there should the linear program take long; then dives. */
    private void sticks() {
        StickDive.of(problem, effort.seed(), stop).ifPresent(dive -> {
            searchUntil(StickDive.STEPS_BEFORE, best);
            proof.raise(dive.bound());
            int first = StickDive.timesFirst(problem);
            dive(dive, first);
            prove(dive);
            dive(dive, StickDive.TIMES - first);
        });
    }

    private void dive(StickDive dive, int most) {
        for (int k = 0; k < most && !done(); k++) {
            dive.dive().ifPresent(this::keep);
            step += StickDive.STEPS;
        }
    }

    /** Asks for a plan at the bound, and for one above it when there is none. */
    private void prove(StickDive dive) {
        boolean open = true;
        while (open && !done()) {
            StickDive.Answer answer = dive.within(proof.cost());
            step += StickDive.STEPS_A_PROOF;
            answer.plan().ifPresent(this::keep);
            proof.raise(proof.cost() + (answer.isImpossible() ? dive.unit() : 0));
            open = answer.isImpossible();
        }
    }

    private boolean done() {
        return step >= pause || isCheapest() || spent();
    }

    private boolean isCheapest() {
        return bestOut == 0 && best.cost <= proof.cost();
    }

    private boolean spent() {
        long eased = easing.map(Easing::steps).orElse(0L);
        return step >= effort.steps() - eased || stop.getAsBoolean();
    }

    private boolean keep(Layout layout) {
        double out = layout.areaOut();
        if (out < bestOut || (out == bestOut && layout.cost < best.cost)) {
            best = layout.copy();
            bestOut = out;
            return true;
        }
        return false;
    }

    /** Searches under one goal, from a layout, until it is reached or the effort is spent. */
    private void improve(Layout from) {
        boolean complete = bestOut == 0;
        tail.choose(from, complete && many);
        Layout now = tail.of(from);
        if (complete) {
            fewer.lower(now, limit(true), step++);
        }
        late.begin(value(now), step);
        while (!done()) {
            if (complete && late.idle(step) > PATIENCE) {
                tail.choose(best, many);
                now = fewer.shaken(tail.of(best), limit(true), step++);
                late.begin(value(now), step);
            }
            Layout next = now.copy();
            ruin.apply(next, step);
            recreate.fill(next, Orders.shuffled(problem, random, next.out), limit(complete), step);
            double value = value(next);
            boolean better = value <= late.value();
            if (late.takes(value, step)) {
                now = next;
                pool.note(now, step);
            }
            step++;
            if (complete && answered() || better && reached(next, complete)) {
                return;
            }
        }
    }

    /** What the part that is searched may cost. */
    private long limit(boolean complete) {
        return complete ? best.cost - 1 - tail.restCost() : Long.MAX_VALUE;
    }

    /** Whether a cheaper plan has been put together from all that was filled so far. */
    private boolean answered() {
        questions.ask(best, step);
        return questions.answer(step).filter(this::keep).isPresent();
    }

    private boolean reached(Layout part, boolean complete) {
        return !(complete && !part.out.isEmpty()) && keep(tail.whole(part)) && part.out.isEmpty();
    }

    private double value(Layout layout) {
        return layout.areaOut() / scale - tuning.weight() * layout.concentration();
    }
}
