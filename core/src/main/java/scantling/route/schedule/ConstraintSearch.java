package scantling.route.schedule;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.ArrayList;
import java.util.List;
import scantling.cutting.Natives;

/** Betters a timetable with a constraint solver, and says what no timetable can better. */
final class ConstraintSearch {
    private static final String NOT_HERE =
            "The constraint solver does not run on this machine: this is the first sound timetable, bettered by hand.";
    private static final double MOST_UNITS = 1e6;

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
        ConstraintModel model = new ConstraintModel(network, first);
        CpSolver solver = solver();
        CpSolverStatus status = solver.solve(model.model());
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        Timetable best = found ? better(model, solver) : first;
        return best.with(bound(model, solver, found, best), status(status, best), found ? "" : first.note());
    }

    private Timetable.Status status(CpSolverStatus status, Timetable best) {
        if (status == CpSolverStatus.OPTIMAL) {
            return Timetable.Status.BEST;
        }
        return best.places().equals(first.places()) ? Timetable.Status.FIRST : Timetable.Status.IMPROVED;
    }

    private CpSolver solver() {
        CpSolver solver = new CpSolver();
        var parameters = solver.getParameters();
        parameters.setRandomSeed((int) effort.seed());
        parameters.setNumWorkers(effort.threads());
        parameters.setMaxTimeInSeconds(effort.seconds());
        parameters.setMaxDeterministicTime(Math.min(MOST_UNITS, effort.solver()));
        parameters.setUseHardPrecedencesInCumulative(true);
        return solver;
    }

    /** What the solver found, put anew in its order so that nothing stands later than it need; the better of the two. */
    private Timetable better(ConstraintModel model, CpSolver solver) {
        Serial serial = new Serial(network);
        int[] starts = model.starts(solver);
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

    private Score bound(ConstraintModel model, CpSolver solver, boolean found, Timetable best) {
        if (!found) {
            return first.bound();
        }
        Score proven = model.split((long) Math.ceil(solver.bestObjectiveBound() - 1e-6), best.score());
        return proven.compareTo(first.bound()) > 0 ? proven : first.bound();
    }
}
