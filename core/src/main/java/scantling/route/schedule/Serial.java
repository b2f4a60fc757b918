package scantling.route.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Puts one task after another where it first fits: the serial generation scheme (Kelley 1963), with working time and clock
 * kept apart. Where a window has closed before a task could begin, what opened it is begun later and all is put anew.
 */
final class Serial {
    private static final int MOST_TRIES = 60;

    private final Network network;
    private final WorkTime time;
    private final Task[] tasks;
    private final Link[][] into;
    private final Profile[] profiles;
    private final boolean[] worked;
    private final int[][] during;
    private final int[][] after;
    /** Working tick at which each begins, clock ticks at which it begins and ends, of the last run. */
    final int[] work;

    final int[] starts;
    final int[] ends;
    private final int[] delayed;
    /** How many windows had closed in the last run when their task began. */
    private int missed;

    Serial(Network network) {
        this.network = network;
        time = network.time();
        tasks = network.tasks().toArray(Task[]::new);
        int count = tasks.length;
        into = incoming(network);
        int capacities = network.capacities().size();
        profiles = new Profile[capacities];
        worked = new boolean[capacities];
        during = new int[count][capacities];
        after = new int[count][capacities];
        for (int c = 0; c < capacities; c++) {
            profiles[c] = new Profile(network.capacities().get(c).amount());
            worked[c] = network.capacities().get(c).axis() == Capacity.Axis.WORKED;
            for (int i = 0; i < count; i++) {
                during[i][c] = tasks[i].amountDuring(c);
                after[i][c] = tasks[i].amountAfter(c);
            }
        }
        work = new int[count];
        starts = new int[count];
        ends = new int[count];
        delayed = new int[count];
    }

    static Link[][] incoming(Network network) {
        return links(network, Link::after);
    }

    /** The links of each task. @param of which of its two tasks a link counts for */
    static Link[][] links(Network network, ToIntFunction<Link> of) {
        List<List<Link>> lists = new ArrayList<>();
        network.tasks().forEach(task -> lists.add(new ArrayList<>()));
        network.links().forEach(link -> lists.get(of.applyAsInt(link)).add(link));
        return lists.stream().map(list -> list.toArray(Link[]::new)).toArray(Link[][]::new);
    }

    /** Puts all tasks in this order, which must have every task behind those it waits for. @return whether no window closed */
    boolean run(int[] order) {
        Arrays.fill(delayed, 0);
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            boolean pushed = false;
            missed = 0;
            for (Profile profile : profiles) {
                profile.clear();
            }
            pinned();
            for (int task : order) {
                if (tasks[task].pinned().isEmpty()) {
                    put(task);
                    pushed |= push(task);
                }
            }
            if (!pushed) {
                break;
            }
        }
        return missed == 0;
    }

    int missed() {
        return missed;
    }

    Score score() {
        return Score.of(network, starts, ends);
    }

    private void pinned() {
        for (int i = 0; i < tasks.length; i++) {
            if (tasks[i].pinned().isPresent()) {
                starts[i] = tasks[i].pinned().getAsInt();
                work[i] = time.workAt(starts[i]);
                ends[i] = tasks[i].work() == 0 ? starts[i] : time.endOf(work[i] + tasks[i].work());
                take(i);
            }
        }
    }

    private void put(int i) {
        Task task = tasks[i];
        int clock = Math.max(task.earliest(), delayed[i]);
        for (Link link : into[i]) {
            clock = Math.max(clock, ends[link.before()] + link.lag());
        }
        int at = time.workAt(clock);
        while (true) {
            int fits = task.unbroken() ? time.fitting(at, task.work()) : at;
            place(i, fits);
            int next = conflict(i, fits);
            if (next < 0) {
                break;
            }
            at = Math.max(fits + 1, next);
        }
        take(i);
    }

    private void place(int i, int at) {
        work[i] = at;
        starts[i] = time.startOf(at);
        ends[i] = tasks[i].work() == 0 ? starts[i] : time.endOf(at + tasks[i].work());
    }

    /** The first working tick worth trying after a conflict; minus one when there is none. */
    private int conflict(int i, int at) {
        int length = tasks[i].work();
        for (int c = 0; c < profiles.length; c++) {
            if (during[i][c] > 0) {
                int found = worked[c]
                        ? profiles[c].lastConflict(at, at + length, during[i][c])
                        : profiles[c].lastConflict(starts[i], ends[i], during[i][c]);
                if (found >= 0) {
                    return worked[c] ? found + 1 : time.workAt(found + 1);
                }
            }
            if (after[i][c] > 0) {
                int found = profiles[c].lastConflict(ends[i], ends[i] + tasks[i].hold(), after[i][c]);
                if (found >= 0) {
                    return time.workAt(found + 1) - length;
                }
            }
        }
        return -1;
    }

    private void take(int i) {
        int length = tasks[i].work();
        for (int c = 0; c < profiles.length; c++) {
            if (during[i][c] > 0 && worked[c]) {
                profiles[c].take(work[i], work[i] + length, during[i][c]);
            } else if (during[i][c] > 0) {
                profiles[c].take(starts[i], ends[i], during[i][c]);
            }
            if (after[i][c] > 0) {
                profiles[c].take(ends[i], ends[i] + tasks[i].hold(), after[i][c]);
            }
        }
    }

    /** Where a window had closed, what opened it is to begin so much later. @return whether something can still be moved */
    private boolean push(int i) {
        boolean moved = false;
        for (Link link : into[i]) {
            int late = link.closes().isEmpty()
                    ? 0
                    : starts[i] - ends[link.before()] - link.closes().getAsInt();
            if (late > 0) {
                missed++;
                if (tasks[link.before()].pinned().isEmpty()) {
                    delayed[link.before()] = starts[link.before()] + late;
                    moved = true;
                }
            }
        }
        return moved;
    }
}
