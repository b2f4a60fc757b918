package scantling.route.schedule;

import java.util.List;

/**
 * Puts networks in time: a first sound timetable at once, better ones as far as the effort goes, with what no timetable can
 * better beside them. The same network and effort give the same timetable, except where the effort is limited by the clock.
 */
public final class Scheduler {
    private Scheduler() {}

    /**
     * Puts everything in time.
     *
     * @throws IllegalStateException if the working time of the network ends before everything is done
     */
    public static Timetable schedule(Network network, Effort effort) {
        Score bound = Bounds.of(network);
        Timetable first = new Search(network, effort.seed()).run(effort.steps(), bound);
        Timetable best = first;
        if (finished(first)) {
            best = first.with(bound, Timetable.Status.BEST, first.note());
        } else if (effort.solver() > 0) {
            best = new ConstraintSearch(network, first, effort).run();
        }
        best = new Gathering(network, effort.seed()).run(best, effort.steps());
        List<String> wrong = TimetableCheck.problems(network, best);
        if (!wrong.isEmpty() && best.note().isEmpty()) {
            throw new IllegalStateException("A timetable failed its check: " + wrong);
        }
        return best;
    }

    private static boolean finished(Timetable timetable) {
        return timetable.note().isEmpty()
                && timetable.score().lateness() == timetable.bound().lateness()
                && timetable.score().finish() == timetable.bound().finish();
    }
}
