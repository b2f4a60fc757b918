package scantling.web;

import java.lang.ref.WeakReference;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.LongConsumer;
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;
import scantling.plan.CutGroup;
import scantling.plan.Plan;

/**
 * Looks for better saw plans beside everything else: each round takes four times the steps of the one before, every better
 * plan is told as soon as its material is tried, and it ends when all are proven best, the rounds are used up, or somebody says stop. It rests
 * while nobody looks at the job, and goes on where it was. The same round gives the same plan whenever it is looked for.
 */
public final class SawSearch implements AutoCloseable {
    private static final long FIRST_STEPS = 8_000;
    private static final int GROWTH = 4;
    static final int ROUNDS = 6;
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
            eldest.getValue().resting |= size() > KEPT;
            return size() > KEPT;
        }
    };

    /** One search. */
    private static final class Run {
        /** Kept by whoever may still ask, not by the search. */
        private final WeakReference<Plan> from;

        private volatile List<CutGroup> best;
        private volatile boolean stopped;
        private volatile boolean resting;
        private volatile boolean running = true;
        private volatile int round = 1;
        private volatile int share;
        /** Materials that are done with in this round. */
        private final Set<CutJob> tried = ConcurrentHashMap.newKeySet();

        Run(Plan from, List<CutGroup> best) {
            this.from = new WeakReference<>(from);
            this.best = best;
        }

        /** The same from where it was. */
        Run goingOn(Plan plan) {
            Run next = new Run(plan, best);
            next.round = round;
            next.share = share;
            next.tried.addAll(tried);
            return next;
        }

        boolean isEnded() {
            return stopped || resting;
        }
    }

    /** Who hears of a search. */
    interface Ear {
        /** How it stands, at every hundredth of it and when it ends. */
        void stands(State state);

        /** There is a better plan. */
        void better();
    }

    /**
     * How a search stands.
     *
     * @param running whether it goes on
     * @param proven whether every saw plan is known to be best, or cannot hold all its parts
     * @param whole whether all parts are in the plans
     * @param used pieces of stock that the best plans take
     * @param gap how much cheaper the best possible may be at most, in percent
     * @param round which of its rounds it is in, from 1
     * @param share how far it is, in percent; every round counts alike, though each takes longer than the one before
     * @param stopped whether somebody ended it before its time
     */
    public record State(
            boolean running, boolean proven, boolean whole, int used, int gap, int round, int share, boolean stopped) {}

    /** The best saw plans found for a plan so far: the very same list until there are better ones. */
    synchronized List<CutGroup> best(Plan plan) {
        return run(plan).map(run -> run.best).orElseGet(plan::cuts);
    }

    private Optional<Run> run(Plan plan) {
        return runs.values().stream().filter(run -> run.from.refersTo(plan)).findFirst();
    }

    /** How it stands with a plan. */
    synchronized State state(Plan plan) {
        return run(plan).map(SawSearch::state).orElseGet(() -> state(plan.cuts(), false, 1, 0, false));
    }

    private static State state(Run run) {
        return state(run.best, run.running, Math.min(run.round, ROUNDS), run.share, run.stopped);
    }

    private static State state(List<CutGroup> best, boolean running, int round, int share, boolean stopped) {
        int used = best.stream().mapToInt(group -> group.plan().used().size()).sum();
        int gap = (int) Math.ceil(100
                * best.stream().mapToDouble(group -> group.plan().gap()).max().orElse(0));
        boolean whole = best.stream().allMatch(group -> group.plan().leftOut().isEmpty());
        return new State(running, isProven(best), whole, used, gap, round, share, stopped);
    }

    private static boolean isProven(List<CutGroup> cuts) {
        return cuts.stream().allMatch(group -> group.plan().status() != CutPlan.Status.SOUND);
    }

    /** Begins to look, once for each plan of a job, or goes on after a rest; a search for an earlier plan of the job ends. */
    synchronized void begin(String job, Plan plan, Ear ear) {
        Optional<Run> known = run(plan);
        if (known.isEmpty() && !isProven(plan.cuts())) {
            begin(job, new Run(plan, plan.cuts()), ear);
        }
        known.filter(run -> run.resting && !run.stopped && !isProven(run.best))
                .ifPresent(run -> begin(job, run.goingOn(plan), ear));
    }

    /** Nobody looks at a job any more: its search rests until it is begun again. */
    synchronized void rest(String job) {
        Run run = runs.get(job);
        if (run != null && run.running) {
            run.resting = true;
        }
    }

    /** Looks on after a stop, from the best that was found. */
    synchronized void again(String job, Plan plan, Ear ear) {
        run(plan)
                .filter(run -> run.stopped && !isProven(run.best))
                .ifPresent(run -> begin(job, new Run(plan, run.best), ear));
    }

    private void begin(String job, Run run, Ear ear) {
        stop(job);
        runs.put(job, run);
        worker.execute(() -> look(run, ear));
    }

    private void look(Run run, Ear ear) {
        while (!run.isEnded() && run.round <= ROUNDS && !isProven(run.best)) {
            ear.stands(state(run));
            look(run, Round.of(run.round - 1), ear);
            if (!run.isEnded()) {
                run.tried.clear();
                run.round++;
            }
        }
        run.running = false;
        if (!run.resting) {
            ear.stands(state(run));
        }
    }

    /** One round. @param steps for each material */
    private record Round(int number, long steps) {
        static Round of(int number) {
            return new Round(number, FIRST_STEPS * Math.round(Math.pow(GROWTH, number)));
        }

        /** How far a search is, in percent, when so many materials and a share of one more are tried: each round counts alike. */
        int share(double materials, int ofAll) {
            return (int) (100 * (number + materials / ofAll) / ROUNDS);
        }
    }

    private void look(Run run, Round round, Ear ear) {
        List<CutGroup> open = run.best.stream()
                .filter(group -> group.plan().status() == CutPlan.Status.SOUND)
                .toList();
        for (int i = 0; i < open.size() && !run.isEnded(); i++) {
            CutGroup group = open.get(i);
            int before = i;
            if (run.tried.contains(group.job())) {
                continue;
            }
            CutGroup next = better(group, round.steps(), run, tried -> {
                int share = round.share(before + Math.min(1, tried / (double) round.steps()), open.size());
                if (share > run.share) {
                    run.share = share;
                    ear.stands(state(run));
                }
            });
            if (!run.isEnded()) {
                run.tried.add(group.job());
            }
            if (next != group) {
                run.best = run.best.stream()
                        .map(each -> each == group ? next : each)
                        .toList();
                ear.stands(state(run));
                ear.better();
            }
        }
    }

    /** While somebody waits for a page, both processors are theirs. */
    private void waitForTurn(Run run) {
        while (awaited.get() > 0 && !run.isEnded()) {
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

    private CutGroup better(CutGroup group, long steps, Run run, LongConsumer tried) {
        AtomicLong asked = new AtomicLong();
        CutPlan plan = SawPlans.plan(group.job(), new Effort(steps, 1), () -> {
            waitForTurn(run);
            tried.accept(asked.incrementAndGet());
            return run.isEnded();
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
