package scantling.route.days;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Finding;
import scantling.piece.Workshop;
import scantling.route.Operation;
import scantling.route.schedule.Effort;
import scantling.route.schedule.Goal;
import scantling.route.schedule.Network;
import scantling.route.schedule.Scheduler;
import scantling.route.schedule.Score;
import scantling.route.schedule.Timetable;

/** Works out agendas: the same jobs, shop, moment and effort give the same one. */
public final class Agendas {
    private static final Timetable EMPTY = new Timetable(
            List.of(), new Score(0, 0, 0), new Score(0, 0, 0), Timetable.Status.BEST, "Nothing is left to do.");

    private final List<JobInHand> jobs;
    private final Laying laying;
    private final Instant now;
    private final Workshop workshop;

    private Agendas(Workshop workshop, List<JobInHand> jobs, Instant now) {
        this.workshop = workshop;
        this.jobs = jobs;
        this.now = now;
        laying = new Laying(workshop, jobs, now);
    }

    /**
     * Plans everything that is left to do.
     *
     * @param now the moment before which nothing more can be begun
     * @param runs how many times the jobs are gone through for the odds of their dates; 0 leaves the odds out
     * @throws IllegalArgumentException if the shop hardly ever works
     */
    public static Agenda plan(Workshop workshop, List<JobInHand> jobs, Instant now, Effort effort, int runs) {
        return new Agendas(workshop, jobs, now).planned(effort, runs);
    }

    private Agenda planned(Effort effort, int runs) {
        if (laying.isDone()) {
            return new Agenda(List.of(), List.of(), laying.findings(), EMPTY);
        }
        Network network = laying.network();
        Timetable timetable = Scheduler.schedule(network, effort);
        Odds odds = new Odds(
                network, laying.from(), jobs.stream().map(JobInHand::name).toList(), timetable, runs);
        List<Agenda.Promise> promises = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(laying.findings());
        for (int goal = 0; goal < network.goals().size(); goal++) {
            promises.add(promise(network, goal, timetable, odds));
            late(network.goals().get(goal), promises.get(goal), findings);
        }
        List<Agenda.Entry> entries = entries(network, timetable, findings);
        return new Agenda(entries, promises, findings, timetable);
    }

    private List<Agenda.Entry> entries(Network network, Timetable timetable, List<Finding> findings) {
        Map<Integer, Map<String, Instant>> ends = ends(network, timetable);
        Map<Integer, Windows> windows = new LinkedHashMap<>();
        Reasons reasons = new Reasons(network, laying.from());
        List<Agenda.Entry> entries = new ArrayList<>();
        for (int i = 0; i < network.tasks().size(); i++) {
            Place place = laying.from().get(i);
            Timetable.Place at = timetable.places().get(i);
            if (!place.held()) {
                Windows seen = windows.computeIfAbsent(place.job(), job -> new Windows(jobs.get(job)));
                entries.add(new Agenda.Entry(
                        jobs.get(place.job()).name(),
                        operation(
                                place,
                                ends.getOrDefault(place.job(), Map.of()),
                                moment(at.start()).toInstant(),
                                seen),
                        place.begun(),
                        moment(at.start()),
                        moment(at.end()),
                        moment(at.end() + network.tasks().get(i).hold()),
                        reasons.of(i)));
            }
        }
        windows.values().forEach(seen -> findings.addAll(seen.findings()));
        entries.sort(Comparator.comparing(Agenda.Entry::from).thenComparing(Agenda.Entry::to));
        return entries;
    }

    /** When each operation of each job ends or ended. */
    private Map<Integer, Map<String, Instant>> ends(Network network, Timetable timetable) {
        Map<Integer, Map<String, Instant>> ends = new LinkedHashMap<>();
        for (int job = 0; job < jobs.size(); job++) {
            Map<String, Instant> mine = new LinkedHashMap<>();
            jobs.get(job).done().forEach((id, done) -> done.to().ifPresent(to -> mine.put(id, to)));
            ends.put(job, mine);
        }
        for (int i = 0; i < network.tasks().size(); i++) {
            Place place = laying.from().get(i);
            if (!place.held()) {
                ends.getOrDefault(place.job(), new LinkedHashMap<>())
                        .put(
                                place.operation().id(),
                                moment(timetable.places().get(i).end()).toInstant());
            }
        }
        return ends;
    }

    /** What is done, with what a window that has closed asks for. */
    private Operation operation(Place place, Map<String, Instant> ends, Instant start, Windows windows) {
        Operation seen = place.operation();
        for (String id : place.operation().after()) {
            Instant ended = ends.get(id);
            if (ended != null && !place.begun()) {
                seen = windows.seen(seen, id, ended, start);
            }
        }
        return seen;
    }

    private ZonedDateTime moment(int tick) {
        return laying.calendar().momentOf(tick);
    }

    private Agenda.Promise promise(Network network, int goal, Timetable timetable, Odds odds) {
        Goal job = network.goals().get(goal);
        return new Agenda.Promise(
                job.name(),
                moment(timetable.places().get(job.task()).end()),
                moment(odds.at(goal, 0.5)),
                moment(odds.at(goal, 0.9)),
                odds.drivers(goal));
    }

    /** A due date that is not kept: whether it could be if there were no other job, and what would have to change. */
    private void late(Goal goal, Agenda.Promise promise, List<Finding> findings) {
        JobInHand job = jobs.stream()
                .filter(one -> one.name().equals(goal.name()))
                .findFirst()
                .orElseThrow();
        if (job.due().isEmpty()
                || !promise.planned().toLocalDate().isAfter(job.due().get())) {
            return;
        }
        Laying alone = new Laying(workshop, List.of(job), now);
        Timetable best = Scheduler.schedule(alone.network(), Effort.FIRST);
        ZonedDateTime earliest = alone.calendar()
                .momentOf(
                        best.places().get(alone.network().goals().get(0).task()).end());
        boolean impossible = earliest.toLocalDate().isAfter(job.due().get());
        findings.add(new Finding(
                impossible ? Finding.Severity.STOP : Finding.Severity.CAUTION,
                job.name(),
                impossible
                        ? "Due %s; even with nothing else in hand the earliest is %s."
                                .formatted(job.due().get(), earliest.toLocalDate())
                        : "Due %s, planned for %s; alone it would be done on %s."
                                .formatted(job.due().get(), promise.planned().toLocalDate(), earliest.toLocalDate()),
                List.of(),
                "worked out from the hours of the shop, the likely minutes and the pauses",
                impossible
                        ? new Changes(workshop, job, now).told()
                        : "Give it a higher priority, let another job wait, or work longer hours."));
    }
}
