package scantling.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.piece.JobList;
import scantling.piece.JobListReader;
import scantling.piece.Problem;
import scantling.piece.Spelling;
import scantling.piece.Workshop;
import scantling.plan.Shop;
import scantling.route.Operation;
import scantling.route.Route;
import scantling.route.Times;
import scantling.route.days.Agenda;
import scantling.route.days.Agendas;
import scantling.route.days.JobInHand;
import scantling.route.days.TimeLog;
import scantling.route.schedule.Effort;

/** A list of jobs with the routes of their pieces, minutes moved by what has been done already. */
record JobsInHand(Workshop workshop, List<JobInHand> jobs) {
    private static final int RUNS = 400;
    private static final int THREADS = 2;
    private static final double LONGEST = 3600;

    /** Reads the list and every piece in it, or tells everything that is wrong. */
    static JobsInHand read(Path file, SettingsOption settings) {
        Shop shop = settings.shop();
        JobListReader.Result result = JobListReader.readBytes(TextFile.read(file));
        JobList list = result.list().orElseThrow(() -> new Failure(Workbench.told(file, result.problems())));
        Workshop workshop = list.workshop().orElseGet(() -> settings.calendar(shop));
        List<Problem> wrong = new ArrayList<>();
        List<JobInHand> jobs = new ArrayList<>();
        for (JobList.Listed listed : list.jobs()) {
            Path piece = file.resolveSibling(listed.piece());
            Route route = Workbench.plan(piece, Optional.empty(), shop).route();
            jobs.add(job(listed, route, workshop, wrong));
        }
        if (!wrong.isEmpty()) {
            throw new Failure(Workbench.told(file, wrong));
        }
        Times times = shop.office().times().and(TimeLog.of(workshop, jobs));
        return new JobsInHand(
                workshop, jobs.stream().map(job -> timed(job, times)).toList());
    }

    private static JobInHand job(JobList.Listed listed, Route route, Workshop workshop, List<Problem> wrong) {
        Set<String> known = route.operations().stream().map(Operation::id).collect(Collectors.toSet());
        Map<String, JobInHand.Done> done = new LinkedHashMap<>();
        listed.done().forEach((id, when) -> {
            if (!known.contains(id)) {
                wrong.add(new Problem(
                        when.span(),
                        "Nothing called \"%s\" is done to %s.".formatted(id, listed.name()),
                        (Spelling.maybe(id, known) + " \"scantling route\" lists all.").strip()));
            }
            done.put(id, new JobInHand.Done(at(when.from(), workshop), when.to().map(to -> at(to, workshop))));
        });
        return new JobInHand(listed.name(), route, listed.due(), listed.priority(), listed.arrives(), done);
    }

    private static Instant at(LocalDateTime moment, Workshop workshop) {
        return moment.atZone(workshop.zone()).toInstant();
    }

    private static JobInHand timed(JobInHand job, Times times) {
        return new JobInHand(
                job.name(), job.route().timed(times), job.due(), job.priority(), job.arrives(), job.done());
    }

    /** Logged minutes of one job, by id of the operation. @param name of the job */
    Map<String, Double> minutes(String name) {
        return jobs.stream()
                .filter(job -> job.name().equals(name))
                .findFirst()
                .map(job -> TimeLog.minutes(workshop, job))
                .orElseThrow(() -> new Failure("No job in the list is called \"%s\"; there are %s."
                        .formatted(name, jobs.stream().map(JobInHand::name).collect(Collectors.joining(", ")))));
    }

    private static Effort effort(boolean first, Optional<Double> seconds) {
        if (seconds.filter(many -> !(many > 0 && many <= LONGEST)).isPresent()) {
            throw new Failure("--seconds %s: say more than 0 and at most %.0f.".formatted(seconds.get(), LONGEST));
        }
        return seconds.map(many -> Effort.until(many, THREADS)).orElse(first ? Effort.FIRST : Effort.USUAL);
    }

    /** The agenda from a moment on. @param at that moment by the shop's clock; now when not said */
    Agenda agenda(Optional<LocalDateTime> at, boolean first, Optional<Double> seconds, PrintWriter progress) {
        Instant now = moment(at);
        try {
            seconds.ifPresent(many -> progress.printf("Looking for better orders for %.0f s.%n", many));
            return Agendas.plan(workshop, jobs, now, effort(first, seconds), RUNS);
        } catch (IllegalArgumentException cannotBe) {
            throw new Failure(cannotBe.getMessage() + " Say longer hours or fewer days closed.");
        }
    }

    /** A moment by the shop's clock; now when not said. */
    Instant moment(Optional<LocalDateTime> at) {
        return at.map(moment -> at(moment, workshop)).orElseGet(Instant::now);
    }
}
