package scantling.route.days;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import scantling.construct.Finding;
import scantling.piece.Workshop;
import scantling.route.Operation;
import scantling.route.Pause;
import scantling.route.Step;
import scantling.route.schedule.Goal;
import scantling.route.schedule.Link;
import scantling.route.schedule.Network;
import scantling.route.schedule.Task;

/** Lays the routes of all jobs on the calendar: what is left of them as one network of tasks. */
final class Laying {
    private static final long SPARE_DAYS = 60;
    private static final double HOURS_A_DAY = 24;

    private final List<JobInHand> jobs;
    private final Instant now;
    private final Places places;
    private final Calendar calendar;
    private final List<Task> tasks = new ArrayList<>();
    private final List<Place> from = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Goal> goals = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Laying(Workshop workshop, List<JobInHand> jobs, Instant now) {
        this.jobs = jobs;
        this.now = now;
        places = new Places(workshop);
        calendar = calendar(workshop, jobs, now);
        for (int job = 0; job < jobs.size(); job++) {
            lay(job);
        }
    }

    /** Long enough for all to take four times as long, one after another, every pause running into nights and holidays. */
    private static Calendar calendar(Workshop workshop, List<JobInHand> jobs, Instant now) {
        long work = 1;
        long clock = 1;
        for (JobInHand job : jobs) {
            for (Operation operation : job.route().operations()) {
                work += 4L * Calendar.ticks(operation.hands().high());
                clock += Calendar.ticksOfHours(
                        operation.pause().hours() + operation.needs().holdHours());
            }
        }
        Calendar near = Calendar.from(workshop, now.atZone(workshop.zone()).toLocalDate(), 1, 1);
        long latest = jobs.stream()
                .flatMap(job -> job.arrives().values().stream())
                .mapToLong(day -> near.endOf(day))
                .max()
                .orElse(0);
        long off = (workshop.closed().size() + SPARE_DAYS) * Calendar.ticksOfHours(HOURS_A_DAY);
        return Calendar.from(workshop, near.first(), work, 3 * clock + 2 * latest + work + off);
    }

    Calendar calendar() {
        return calendar;
    }

    List<Place> from() {
        return from;
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(places.crowded());
        return all;
    }

    boolean isDone() {
        return goals.isEmpty();
    }

    Network network() {
        return new Network(tasks, places.capacities(), links, calendar.time(), goals);
    }

    private void lay(int number) {
        JobInHand job = jobs.get(number);
        findings.addAll(Frozen.findings(job));
        Map<String, Integer> index = new HashMap<>();
        Map<String, Operation> byId = new HashMap<>();
        int last = -1;
        for (Operation operation : job.route().operations()) {
            byId.put(operation.id(), operation);
            Optional<JobInHand.Done> done = Optional.ofNullable(job.done().get(operation.id()));
            Optional<Instant> ended = done.flatMap(JobInHand.Done::to);
            if (ended.isPresent()) {
                held(operation, ended.get(), number);
            } else {
                last = tasks.size();
                index.put(operation.id(), last);
                tasks.add(task(job, operation, done, goals.size(), byId));
                from.add(new Place(number, operation, done.isPresent(), false));
            }
        }
        for (Operation operation : job.route().operations()) {
            for (String before : operation.after()) {
                link(index, byId, before, operation.id());
            }
        }
        if (last >= 0) {
            OptionalInt due =
                    job.due().map(day -> OptionalInt.of(calendar.endOf(day))).orElse(OptionalInt.empty());
            goals.add(new Goal(job.name(), last, due, job.priority()));
        }
    }

    private void link(Map<String, Integer> index, Map<String, Operation> byId, String before, String after) {
        Integer one = index.get(before);
        Integer other = index.get(after);
        Operation first = byId.get(before);
        if (one == null || other == null || first == null) {
            return;
        }
        Pause pause = first.pause();
        OptionalInt closes = pause.closes().isPresent()
                ? OptionalInt.of(Math.max(
                        Calendar.ticksOfHours(pause.hours()),
                        Calendar.ticksOfHours(pause.closes().getAsDouble())))
                : OptionalInt.empty();
        links.add(new Link(one, other, Calendar.ticksOfHours(pause.hours()), closes));
    }

    private Task task(
            JobInHand job, Operation operation, Optional<JobInHand.Done> begun, int goal, Map<String, Operation> byId) {
        int work = Calendar.ticks(operation.hands().likely());
        if (begun.isPresent()) {
            int spent = calendar.time().workAt(calendar.tickFrom(now))
                    - calendar.time().workAt(calendar.tickFrom(begun.get().from()));
            work = Math.max(1, work - spent);
        }
        boolean unbroken =
                operation.needs().unbroken() && work <= calendar.time().longest();
        return new Task(
                job.name() + ": " + operation.title(),
                goal,
                work,
                unbroken,
                Calendar.ticksOfHours(operation.needs().holdHours()),
                earliest(job, operation, byId),
                OptionalInt.empty(),
                places.uses(job.name(), operation, findings));
    }

    /** Not before now, not before its material is there, not before what was done for it has dried. */
    private int earliest(JobInHand job, Operation operation, Map<String, Operation> byId) {
        int earliest = calendar.tickFrom(now);
        if (operation.step() == Step.RECEIVE) {
            for (var arrival : job.arrives().entrySet()) {
                if (operation.id().contains(arrival.getKey())) {
                    Instant morning = arrival.getValue()
                            .atStartOfDay(places.workshop().zone())
                            .toInstant();
                    earliest = Math.max(earliest, calendar.tickFrom(morning));
                }
            }
        }
        for (String before : operation.after()) {
            JobInHand.Done done = job.done().get(before);
            Operation first = byId.get(before);
            if (done != null && done.to().isPresent() && first != null) {
                long seconds = Math.round(first.pause().hours() * 3600);
                earliest = Math.max(earliest, calendar.tickFrom(done.to().get().plusSeconds(seconds)));
            }
        }
        return earliest;
    }

    /** What is done but still sits in clamps or dries goes on taking up its place. */
    private void held(Operation operation, Instant done, int job) {
        long seconds = Math.round(operation.needs().holdHours() * 3600);
        int left = calendar.tickFrom(done.plusSeconds(seconds)) - calendar.tickFrom(now);
        if (left > 0) {
            tasks.add(new Task(
                    operation.title(),
                    goals.size(),
                    0,
                    false,
                    left,
                    0,
                    OptionalInt.of(calendar.tickFrom(now)),
                    places.held(jobs.get(job).name(), operation, findings)));
            from.add(new Place(job, operation, true, true));
        }
    }
}
