package scantling.route.days;

import java.time.ZonedDateTime;
import java.util.List;
import scantling.construct.Finding;
import scantling.route.Operation;
import scantling.route.schedule.Timetable;

/**
 * What is to be done when.
 *
 * @param entries by the time they begin
 * @param promises when each job will be done
 * @param findings what cannot be kept, and what would have to change
 * @param timetable how the order was found
 */
public record Agenda(List<Entry> entries, List<Promise> promises, List<Finding> findings, Timetable timetable) {
    /** Takes its own copies. */
    public Agenda {
        entries = List.copyOf(entries);
        promises = List.copyOf(promises);
        findings = List.copyOf(findings);
    }

    /**
     * One operation in its place.
     *
     * @param job name of the job
     * @param operation what is done
     * @param begun whether it goes on already
     * @param from when it begins
     * @param to when its work is done
     * @param free when what it takes up besides hands is free again
     * @param why why now
     */
    public record Entry(
            String job,
            Operation operation,
            boolean begun,
            ZonedDateTime from,
            ZonedDateTime to,
            ZonedDateTime free,
            String why) {}

    /**
     * When a job will be done.
     *
     * @param job its name
     * @param planned if all takes as long as is likely
     * @param even as likely earlier as later
     * @param safe nine times in ten not later
     * @param drivers operations that move the date most, the most first
     */
    public record Promise(
            String job, ZonedDateTime planned, ZonedDateTime even, ZonedDateTime safe, List<Driver> drivers) {
        /** Takes its own copy. */
        public Promise {
            drivers = List.copyOf(drivers);
        }
    }

    /** What moves a date. @param operation its title @param share of the spread of the date that goes with it, 0 to 1 */
    public record Driver(String operation, double share) {}
}
