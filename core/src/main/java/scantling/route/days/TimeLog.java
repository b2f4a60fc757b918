package scantling.route.days;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.piece.Workshop;
import scantling.route.Logged;
import scantling.route.Operation;

/** What has been done, as times to learn from. */
public final class TimeLog {
    private static final double SECONDS = 60;

    private TimeLog() {}

    /** The logged minutes of everything that is finished in these jobs. */
    public static List<Logged> of(Workshop workshop, List<JobInHand> jobs) {
        List<Logged> log = new ArrayList<>();
        for (JobInHand job : jobs) {
            Map<String, Double> minutes = minutes(workshop, job);
            for (Operation operation : job.route().operations()) {
                Double took = minutes.get(operation.id());
                if (took != null) {
                    log.add(new Logged(operation.work(), operation.amount(), took));
                }
            }
        }
        return log;
    }

    /** Minutes of what is finished of a job, by id of the operation. */
    public static Map<String, Double> minutes(Workshop workshop, JobInHand job) {
        Map<String, Double> minutes = new LinkedHashMap<>();
        for (Operation operation : job.route().operations()) {
            JobInHand.Done done = job.done().get(operation.id());
            if (done != null && done.to().isPresent()) {
                double took = worked(workshop, done.from(), done.to().get());
                if (took > 0) {
                    minutes.put(operation.id(), took);
                }
            }
        }
        return minutes;
    }

    /** Minutes within the hours of the shop; where it was done out of hours, all minutes. */
    static double worked(Workshop workshop, Instant from, Instant to) {
        double within = 0;
        LocalDate last = to.atZone(workshop.zone()).toLocalDate();
        for (LocalDate day = from.atZone(workshop.zone()).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
            for (Workshop.Hours hours : workshop.on(day)) {
                Instant begin = later(
                        from,
                        ZonedDateTime.of(day, hours.from(), workshop.zone()).toInstant());
                Instant end = earlier(
                        to, ZonedDateTime.of(day, hours.to(), workshop.zone()).toInstant());
                within += Math.max(0, (end.getEpochSecond() - begin.getEpochSecond()) / SECONDS);
            }
        }
        return within > 0 ? within : (to.getEpochSecond() - from.getEpochSecond()) / SECONDS;
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
