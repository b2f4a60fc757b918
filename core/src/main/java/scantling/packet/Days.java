package scantling.packet;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.piece.Workshop;
import scantling.route.Route;
import scantling.route.days.Agenda;
import scantling.route.days.Agendas;
import scantling.route.days.JobInHand;
import scantling.route.days.UsualHours;
import scantling.route.schedule.Effort;

/**
 * The work of one or more jobs, laid on days.
 *
 * @param jobs what is planned, with what is done of it already
 * @param agenda what is done when
 * @param made the moment from which it is planned
 * @param dated whether the days have dates; else only their order and number mean something
 */
public record Days(List<JobInHand> jobs, Agenda agenda, Instant made, boolean dated) {
    private static final int RUNS = 200;

    /** Takes its own copy. */
    public Days {
        jobs = List.copyOf(jobs);
    }

    /**
     * Plans the days of jobs in a shop.
     *
     * @param from the moment before which nothing more can be begun
     * @throws IllegalArgumentException if the shop hardly ever works
     */
    public static Days from(Workshop workshop, List<JobInHand> jobs, Instant from) {
        return new Days(jobs, Agendas.plan(workshop, jobs, from, Effort.FIRST, RUNS), from, true);
    }

    /** The days of one job that nobody has said a beginning of: in the usual hours, counted from a Monday. */
    static Days undated(Route route) {
        List<JobInHand> jobs = List.of(alone("", route));
        // Day 4 of the count of seconds was a Monday.
        Instant monday = Instant.EPOCH.plusSeconds(4 * 24 * 3600L);
        return new Days(
                jobs, Agendas.plan(UsualHours.in(ZoneOffset.UTC), jobs, monday, Effort.FIRST, 0), monday, false);
    }

    /** A job with nothing done and nothing said of its dates. @param name what it is called */
    public static JobInHand alone(String name, Route route) {
        return new JobInHand(name, route, Optional.empty(), 1, Map.of(), Map.of());
    }
}
