package scantling.route.schedule;

import java.util.ArrayList;
import java.util.List;

/** Betters a timetable with constraint solvers, and says what no timetable can better. */
final class ConstraintSearch {
    private static final String NOT_HERE =
            "The constraint solver does not run on this machine: this is the first sound timetable, bettered by hand.";

    private final Network network;
    private final Timetable first;
    private final Effort effort;

    ConstraintSearch(Network network, Timetable first, Effort effort) {
        this.network = network;
        this.first = first;
        this.effort = effort;
    }

    Timetable run() {
        if (!Natives.LOADED) {
            return first.with(first.bound(), Timetable.Status.FIRST, NOT_HERE);
        }
        List<Attempts.Attempt> found = Attempts.of(network, first, effort).stream()
                .filter(Attempts.Attempt::isFound)
                .toList();
        Timetable best = first;
        for (Attempts.Attempt attempt : found) {
            Timetable other = better(attempt);
            best = other.score().compareTo(best.score()) < 0 || !best.note().isEmpty() ? other : best;
        }
        Score bound = first.bound();
        for (Attempts.Attempt attempt : found) {
            Score proven = attempt.bound(best.score());
            bound = proven.compareTo(bound) > 0 ? proven : bound;
        }
        boolean isBest = found.stream().anyMatch(Attempts.Attempt::isBest);
        return best.with(bound, status(isBest, best), best.note());
    }

    private Timetable.Status status(boolean isBest, Timetable best) {
        if (isBest) {
            return Timetable.Status.BEST;
        }
        return best.places().equals(first.places()) ? Timetable.Status.FIRST : Timetable.Status.IMPROVED;
    }

    /** What the solver found, put anew in its order so that nothing stands later than it need; the better of the two. */
    private Timetable better(Attempts.Attempt attempt) {
        Serial serial = new Serial(network);
        int[] starts = attempt.starts();
        boolean sound = serial.run(Orders.byTime(starts, network.order()));
        Score score = serial.score();
        boolean worse = !first.note().isEmpty() ? !sound : !sound || score.compareTo(first.score()) > 0;
        if (worse) {
            return first;
        }
        List<Timetable.Place> places = new ArrayList<>();
        for (int i = 0; i < starts.length; i++) {
            places.add(new Timetable.Place(serial.starts[i], serial.ends[i]));
        }
        return new Timetable(places, score, first.bound(), Timetable.Status.IMPROVED, "");
    }
}
