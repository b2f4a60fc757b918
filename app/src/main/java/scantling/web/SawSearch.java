package scantling.web;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;
import scantling.plan.CutGroup;
import scantling.plan.Plan;

/**
 * Looks for better saw plans beside everything else: each round takes four times the steps of the one before, every better
 * plan is told at once, and it ends when all are proven best, the rounds are used up, or somebody says stop. The same
 * round gives the same plan whenever it is looked for.
 */
public final class SawSearch implements AutoCloseable {
    private static final long FIRST_STEPS = 8_000;
    private static final int GROWTH = 4;
    private static final int ROUNDS = 6;
    private static final int KEPT = 32;
    private static final long TURN_NANOS = 2_000_000;

    private final AtomicInteger awaited = new AtomicInteger();

    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "saw plans");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });
    private final Map<String, Run> runs = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Run> eldest) {
            return size() > KEPT;
        }
    };

    /** One search. */
    private static final class Run {
        /** Kept by whoever may still ask, not by the search. */
        private final WeakReference<Plan> from;

        private volatile List<CutGroup> best;
        private volatile boolean stopped;
        private volatile boolean running = true;

        Run(Plan from) {
            this.from = new WeakReference<>(from);
            this.best = from.cuts();
        }
    }

    /**
     * How a search stands.
     *
     * @param running whether it goes on
     * @param proven whether every saw plan is known to be best
     * @param used pieces of stock that the best plans take
     * @param gap how much cheaper the best possible may be at most, in percent
     */
    public record State(boolean running, boolean proven, int used, int gap) {}

    /** The best saw plans found for a plan so far: the very same list until there are better ones. */
    synchronized List<CutGroup> best(Plan plan) {
        return run(plan).map(run -> run.best).orElseGet(plan::cuts);
    }

    private Optional<Run> run(Plan plan) {
        return runs.values().stream().filter(run -> run.from.refersTo(plan)).findFirst();
    }

    /** How it stands with a plan. */
    synchronized State state(Plan plan) {
        return state(best(plan), run(plan).filter(run -> run.running).isPresent());
    }

    private static State state(List<CutGroup> best, boolean running) {
        int used = best.stream().mapToInt(group -> group.plan().used().size()).sum();
        int gap = (int) Math.ceil(100
                * best.stream().mapToDouble(group -> group.plan().gap()).max().orElse(0));
        return new State(running, isProven(best), used, gap);
    }

    private static boolean isProven(List<CutGroup> cuts) {
        return cuts.stream().allMatch(group -> group.plan().status() != CutPlan.Status.SOUND);
    }

    /** Begins to look, once for each plan of a job; a search for an earlier plan of the job ends. @param told of every step */
    synchronized void begin(String job, Plan plan, Consumer<State> told) {
        if (run(plan).isPresent() || isProven(plan.cuts())) {
            return;
        }
        stop(job);
        Run run = new Run(plan);
        runs.put(job, run);
        worker.execute(() -> look(run, told));
    }

    private void look(Run run, Consumer<State> told) {
        long steps = FIRST_STEPS;
        for (int round = 0; round < ROUNDS && !run.stopped && !isProven(run.best); round++) {
            run.best = better(run, steps);
            steps *= GROWTH;
            told.accept(state(run.best, true));
        }
        run.running = false;
        told.accept(state(run.best, false));
    }

    private List<CutGroup> better(Run run, long steps) {
        List<CutGroup> groups = new ArrayList<>();
        boolean changed = false;
        for (CutGroup group : run.best) {
            CutGroup next = group.plan().status() == CutPlan.Status.SOUND ? better(group, steps, run) : group;
            changed |= !next.equals(group);
            groups.add(next);
        }
        return changed ? List.copyOf(groups) : run.best;
    }

    /** While somebody waits for a page, both processors are theirs. */
    private void waitForTurn(Run run) {
        while (awaited.get() > 0 && !run.stopped) {
            LockSupport.parkNanos(TURN_NANOS);
        }
    }

    /** Somebody waits for something: no search goes on until as many have {@link #awaitedNoMore come} as were awaited. */
    void awaited() {
        awaited.incrementAndGet();
    }

    /** What somebody waited for is there. */
    void awaitedNoMore() {
        awaited.decrementAndGet();
    }

    private CutGroup better(CutGroup group, long steps, Run run) {
        CutPlan plan = SawPlans.plan(group.job(), new Effort(steps, 1), () -> {
            waitForTurn(run);
            return run.stopped;
        });
        boolean better = SawPlans.isBetter(group.job(), plan, group.plan());
        return better ? group.with(plan) : group;
    }

    /** Ends the search of a job; the best that was found stays. */
    synchronized void stop(String job) {
        Run run = runs.get(job);
        if (run != null) {
            run.stopped = true;
        }
    }

    @Override
    public synchronized void close() {
        runs.values().forEach(run -> run.stopped = true);
        worker.shutdownNow();
    }
}
