package scantling.route.schedule;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;

/**
 * A network as the constraint solver sees it. Every task begins at a tick of working time; where the clock counts (waits,
 * what is held over night, due dates) the tick of the clock follows from the window the working tick lies in.
 */
final class ConstraintModel {
    private final Network network;
    private final CpModel model = new CpModel();
    private final Moments moments;
    private final List<IntervalVar> worked = new ArrayList<>();
    private final long scale;

    ConstraintModel(Network network, Timetable first) {
        this.network = network;
        moments = new Moments(model, network, first);
        scale = (long) moments.horizon() * network.goals().size() + 1;
        for (int i = 0; i < network.tasks().size(); i++) {
            worked.add(model.newFixedSizeIntervalVar(
                    moments.work(i), network.tasks().get(i).work(), "work " + i));
        }
        network.links().forEach(this::link);
        for (int c = 0; c < network.capacities().size(); c++) {
            if (network.capacities().get(c).axis() == Capacity.Axis.WORKED
                    || network.time().isAlways()) {
                capacityOfWork(c);
            } else {
                capacityOfClock(c);
            }
        }
        objective(first);
        moments.hint();
    }

    CpModel model() {
        return model;
    }

    int[] starts(CpSolver solver) {
        int[] starts = new int[network.tasks().size()];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = (int) solver.value(moments.work(i));
        }
        return starts;
    }

    /** The solver's one number as lateness and finish: where lateness is all the bound says, finish is not known. */
    Score split(long bound, Score best) {
        long lateness = bound / scale;
        return lateness >= best.lateness()
                ? new Score(best.lateness(), Math.min(best.finish(), bound - best.lateness() * scale), 0)
                : new Score(lateness, 0, 0);
    }

    private void link(Link link) {
        int length = network.tasks().get(link.before()).work();
        if (link.lag() == 0 && link.closes().isEmpty()) {
            model.addGreaterOrEqual(moments.work(link.after()), plus(moments.work(link.before()), length));
            return;
        }
        LinearArgument end = moments.end(link.before());
        model.addGreaterOrEqual(moments.start(link.after()), plus(end, link.lag()));
        if (link.closes().isPresent()) {
            model.addLessOrEqual(
                    moments.start(link.after()), plus(end, link.closes().getAsInt()));
        }
    }

    private static LinearExprBuilder plus(LinearArgument one, long more) {
        return LinearExpr.newBuilder().add(one).add(more);
    }

    private void capacityOfWork(int c) {
        CumulativeConstraint all =
                model.addCumulative(network.capacities().get(c).amount());
        for (int i = 0; i < worked.size(); i++) {
            int amount = network.tasks().get(i).amountDuring(c);
            if (amount > 0) {
                all.addDemand(worked.get(i), amount);
            }
        }
    }

    private void capacityOfClock(int c) {
        CumulativeConstraint all =
                model.addCumulative(network.capacities().get(c).amount());
        for (int i = 0; i < worked.size(); i++) {
            Task task = network.tasks().get(i);
            if (task.amountDuring(c) > 0 && task.work() > 0) {
                all.addDemand(moments.during(i), task.amountDuring(c));
            }
            if (task.amountAfter(c) > 0 && task.hold() > 0) {
                all.addDemand(moments.after(i), task.amountAfter(c));
            }
        }
    }

    private void objective(Timetable first) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (Goal goal : network.goals()) {
            LinearArgument end = moments.end(goal.task());
            sum.add(end);
            if (goal.due().isPresent()) {
                IntVar late = model.newIntVar(0, moments.horizon(), "late " + goal.name());
                int ends = first.places().get(goal.task()).end();
                model.addHint(late, Math.max(0, ends - goal.due().getAsInt()));
                model.addGreaterOrEqual(plus(late, goal.due().getAsInt()), end);
                sum.addTerm(late, goal.weight() * scale);
            }
        }
        model.minimize(sum);
    }
}
