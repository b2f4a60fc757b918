package scantling.shop;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Construction;
import scantling.cutting.CutJob;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.measure.Unit;
import scantling.piece.BenchLog;
import scantling.piece.Language;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.piece.Woods;
import scantling.plan.Cutter;
import scantling.plan.DesignChange;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.StandardWoods;
import scantling.route.Step;
import scantling.stock.Rack;

/**
 * The plans of the shop's jobs, worked out when asked for and kept while nothing they follow from has changed. Safe for
 * many threads.
 */
public final class JobBook {
    /** Named numbers of the plans that are kept, at most: some forty bedside chests, or three kitchens, of about 20 MB each. */
    private static final long ROOM = 9_000;
    /** Saw plans that are kept: those of a few dozen pieces. */
    private static final long CUTS = 300;

    private static final int JOBS = 200;
    /** As it stands, as it was, and as it would be. */
    private static final int PLANS_OF_A_JOB = 3;

    private static final Language LANGUAGE = Construction.language();
    private static final Woods WOODS = StandardWoods.standard();

    private final ShopStore store;
    private final Kept<Inputs, Outcome> known = new Kept<>(ROOM, Outcome::weight);
    private final Kept<Cutting, CutPlan> cuts = new Kept<>(CUTS, plan -> 1);
    private final Map<String, Deque<Inputs>> lately = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Inputs>> eldest) {
            return size() > JOBS;
        }
    };
    private final Map<String, Read> read = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Read> eldest) {
            return size() > JOBS;
        }
    };

    /** What a job's plan follows from, as it was when the journal held so many acts. */
    record Read(long version, Optional<JobInputs> inputs) {}

    /** What a saw plan follows from. */
    private record Cutting(CutJob job, Effort effort) {}

    /** All that a plan follows from. */
    private record Inputs(String text, BenchLog bench, ShopSettings settings, Rack rack) {}

    /** What follows: a plan, or why the text does not read. */
    private record Outcome(ReadResult read, Optional<Planner.Outcome> planned) {
        long weight() {
            return planned.map(found -> 1L + found.plan().assembly().names().size())
                    .orElse(1L);
        }
    }

    JobBook(ShopStore store) {
        this.store = store;
    }

    /** Reads a text in the language and woods of today. */
    static ReadResult read(String text) {
        return PieceReader.read(text, LANGUAGE, WOODS);
    }

    /** The plan of a job as it stands; empty for a job that is not there. */
    public Optional<JobPlan> planOf(String job) {
        return inputs(job).map(this::plan);
    }

    /** The plan of a job as it stands, all its sentences in a unit that need not be the piece's own. */
    public Optional<Plan> planIn(String job, Unit told) {
        return inputs(job)
                .flatMap(now -> read(now.revision().text())
                        .piece()
                        .map(piece -> Planner.plan(piece.told(told), now.bench(), now.shop(), this::cut)
                                .plan()));
    }

    /** The plan as it would be with another text, nothing written. */
    public Optional<JobPlan> tryOut(String job, String text) {
        return inputs(job)
                .map(now -> plan(new JobInputs(
                        now.job(),
                        new Revision(
                                job,
                                now.revision().number(),
                                text,
                                now.revision().at(),
                                now.revision().device(),
                                ""),
                        now.entries(),
                        now.settings(),
                        now.rack())));
    }

    /** The plan of an earlier text with the bench and the shop as they are. */
    public Optional<JobPlan> planOf(String job, int revision) {
        return store.revision(job, revision).flatMap(old -> tryOut(job, old.text()));
    }

    /**
     * What another text would cost the job as far as it is built: parts, money and bench time, before anybody accepts it.
     *
     * @return empty for a job that is not there, and for texts that do not read
     */
    public Optional<DesignChange.Cost> costOf(String job, String text) {
        return inputs(job)
                .flatMap(now -> read(now.revision().text())
                        .piece()
                        .flatMap(before -> read(text)
                                .piece()
                                .map(after -> DesignChange.cost(
                                        before, after, now.bench(), now.shop(), part -> minutes(now, part)))));
    }

    /** Bench minutes in a part: as logged, else as the route reckons what is done to it until it is cut and marked. */
    private Optional<Integer> minutes(JobInputs now, String part) {
        return new MinutesSpent(now.entries())
                .on(part)
                .or(() -> plan(now) instanceof JobPlan.Planned planned
                        ? Optional.of((int) Math.round(planned.plan().route().of(part).stream()
                                .filter(operation -> operation.step().compareTo(Step.MARK) <= 0)
                                .mapToDouble(operation -> operation.hands().likely()
                                        / operation.parts().size())
                                .sum()))
                        : Optional.empty());
    }

    private JobPlan plan(JobInputs inputs) {
        BenchLog bench = inputs.bench();
        Outcome outcome = outcome(
                inputs.job().id(), new Inputs(inputs.revision().text(), bench, inputs.settings(), inputs.rack()));
        return outcome.planned()
                .<JobPlan>map(planned -> new JobPlan.Planned(
                        inputs.job(), inputs.revision(), bench, planned.plan(), planned.benchProblems()))
                .orElseGet(() -> new JobPlan.Unreadable(
                        inputs.job(), inputs.revision(), outcome.read().problems()));
    }

    /** Read anew only after the journal has grown. */
    private Optional<JobInputs> inputs(String job) {
        Optional<Read> before;
        synchronized (read) {
            before = Optional.ofNullable(read.get(job));
        }
        Read now = store.inputs(job, before);
        synchronized (read) {
            read.put(job, now);
        }
        return now.inputs();
    }

    private Outcome outcome(String job, Inputs inputs) {
        superseded(job, inputs).ifPresent(known::forget);
        return known.get(inputs, () -> {
            ReadResult read = read(inputs.text());
            return new Outcome(
                    read,
                    read.piece()
                            .map(piece -> Planner.plan(
                                    piece, inputs.bench(), inputs.settings().shop(inputs.rack()), this::cut)));
        });
    }

    /** The plan of a job that nobody has asked for while others of that job were: it gives room at once. */
    private Optional<Inputs> superseded(String job, Inputs asked) {
        synchronized (lately) {
            Deque<Inputs> ofJob = lately.computeIfAbsent(job, unused -> new ArrayDeque<>());
            ofJob.remove(asked);
            ofJob.addFirst(asked);
            return ofJob.size() > PLANS_OF_A_JOB ? Optional.of(ofJob.removeLast()) : Optional.empty();
        }
    }

    /** Most changes leave most saw plans as they were. */
    private CutPlan cut(CutJob job, Effort effort) {
        return cuts.get(new Cutting(job, effort), () -> Cutter.SEARCH.plan(job, effort));
    }

    /** Forgets every plan, so that the next is worked out anew. */
    void forget() {
        known.forget();
        cuts.forget();
    }
}
