package scantling.route.days;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
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
            for (Operation operation : job.route().operations()) {
                JobInHand.Done done = job.done().get(operation.id());
                if (done != null && done.to().isPresent()) {
                    double minutes = worked(workshop, done.from(), done.to().get());
                    if (minutes > 0) {
                        log.add(new Logged(operation.work(), operation.amount(), minutes));
                    }
                }
            }
        }
        return log;
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
