package scantling.route.schedule;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The moments at which tasks begin and end, in working time and by the clock, as variables made when first asked for. */
final class Moments {
    /** How much later than in the first timetable the last task may end: other orders let one job wait for another. */
    private static final double ROOM = 1.3;

    private final CpModel model;
    private final Network network;
    private final WorkTime time;
    private final Timetable first;
    private final int horizon;
    private final int last;
    private final int[] heads;
    private final int[] tails;
    private final List<IntVar> works = new ArrayList<>();
    private final Map<Integer, LinearArgument> starts = new HashMap<>();
    private final Map<Integer, LinearArgument> ends = new HashMap<>();

    Moments(CpModel model, Network network, Timetable first) {
        this.model = model;
        this.network = network;
        this.first = first;
        time = network.time();
        int end = first.places().stream().mapToInt(Timetable.Place::end).max().orElse(0);
        boolean one =
                network.goals().size() == 1 && network.goals().get(0).due().isEmpty();
        int reach = one ? end : (int) (end * ROOM) + 1;
        last = Math.min(time.total(), time.isAlways() ? reach : time.workAt(reach) + 1);
        horizon = time.isAlways() ? reach : time.endOf(last);
        Orders orders = new Orders(network);
        heads = orders.heads();
        tails = orders.tails();
        for (int i = 0; i < network.tasks().size(); i++) {
            works.add(work(i, network.tasks().get(i)));
        }
    }

    private IntVar work(int i, Task task) {
        if (task.pinned().isPresent()) {
            int at = time.workAt(task.pinned().getAsInt());
            return model.newIntVar(at, at, "pinned " + i);
        }
        int low = time.isAlways() ? heads[i] : time.workAt(task.earliest());
        int high = time.isAlways() ? horizon - tails[i] : last - task.work();
        return model.newIntVar(low, Math.max(low, high), "task " + i);
    }

    int horizon() {
        return horizon;
    }

    IntVar work(int i) {
        return works.get(i);
    }

    /** The tick of the clock at which a task begins. */
    LinearArgument start(int i) {
        if (time.isAlways()) {
            return works.get(i);
        }
        Task task = network.tasks().get(i);
        if (task.pinned().isPresent()) {
            return LinearExpr.constant(task.pinned().getAsInt());
        }
        return starts.computeIfAbsent(i, k -> clock(k, 0, task.unbroken() ? task.work() : 1));
    }

    /** The tick of the clock at which its work is done. */
    LinearArgument end(int i) {
        Task task = network.tasks().get(i);
        if (time.isAlways()) {
            return LinearExpr.newBuilder().add(works.get(i)).add(task.work());
        }
        if (task.pinned().isPresent()) {
            int pinned = task.pinned().getAsInt();
            return LinearExpr.constant(task.work() == 0 ? pinned : time.endOf(time.workAt(pinned) + task.work()));
        }
        if (task.work() == 0 || task.unbroken()) {
            return LinearExpr.newBuilder().add(start(i)).add(task.work());
        }
        return ends.computeIfAbsent(
                i,
                k -> LinearExpr.newBuilder().add(clock(k, task.work() - 1, 1)).add(1));
    }

    IntervalVar during(int i) {
        Task task = network.tasks().get(i);
        if (task.unbroken() || task.pinned().isPresent()) {
            return task.pinned().isPresent()
                    ? fixed(first.places().get(i).start(), first.places().get(i).end())
                    : model.newFixedSizeIntervalVar(start(i), task.work(), "during " + i);
        }
        IntVar size = model.newIntVar(task.work(), horizon, "size " + i);
        model.addHint(size, first.places().get(i).end() - first.places().get(i).start());
        return model.newIntervalVar(start(i), size, end(i), "during " + i);
    }

    private IntervalVar fixed(int from, int to) {
        return model.newFixedInterval(from, to - from, "fixed");
    }

    IntervalVar after(int i) {
        return model.newFixedSizeIntervalVar(end(i), network.tasks().get(i).hold(), "after " + i);
    }

    /** The clock at a working tick of a task: which window it lies in decides. @param room working ticks that must fit behind */
    private LinearArgument clock(int i, int offset, int room) {
        LinearExprBuilder low = LinearExpr.newBuilder();
        LinearExprBuilder high = LinearExpr.newBuilder();
        LinearExprBuilder shift = LinearExpr.newBuilder();
        List<Literal> windows = new ArrayList<>();
        int begin = (network.tasks().get(i).pinned().isPresent() ? 0 : time.workAt(heads[i])) + offset;
        int hinted = time.workAt(first.places().get(i).start()) + offset;
        for (int k = 0; k < time.windows() && time.before(k) < last; k++) {
            if (time.before(k + 1) <= begin || time.before(k + 1) - time.before(k) < room) {
                continue;
            }
            var in = model.newBoolVar("in " + i + " " + k);
            model.addHint(in, time.before(k) <= hinted && hinted < time.before(k + 1));
            windows.add(in);
            low.addTerm(in, time.before(k));
            high.addTerm(in, time.before(k + 1) - room);
            shift.addTerm(in, time.from(k) - time.before(k));
        }
        model.addExactlyOne(windows);
        LinearExprBuilder at = LinearExpr.newBuilder().add(works.get(i)).add(offset);
        model.addGreaterOrEqual(at, low);
        model.addLessOrEqual(at, high);
        IntVar clock = model.newIntVar(0, horizon + time.longest(), "clock " + i + " " + offset);
        model.addHint(clock, time.startOf(hinted));
        model.addEquality(clock, LinearExpr.newBuilder().add(at).add(shift));
        return clock;
    }

    /** Where the first timetable has the tasks, for the solver to begin with. */
    void hint() {
        for (int i = 0; i < works.size(); i++) {
            model.addHint(works.get(i), time.workAt(first.places().get(i).start()));
        }
    }
}
