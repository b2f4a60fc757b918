package scantling.route.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How good a timetable is: first how late jobs are, then how early all is finished, then how seldom the maker turns from
 * one job to another within a day.
 *
 * @param lateness ticks by which jobs are late, each times its weight
 * @param finish ticks of the clock at which the jobs end, summed over the jobs
 * @param switches how often another job is taken up within a day
 */
public record Score(long lateness, long finish, int switches) implements Comparable<Score> {
    private static final Comparator<Score> ORDER = Comparator.comparingLong(Score::lateness)
            .thenComparingLong(Score::finish)
            .thenComparingInt(Score::switches);

    /** Of tasks that stand so. @param starts ticks of the clock at which they begin @param ends at which they end */
    static Score of(Network network, int[] starts, int[] ends) {
        long late = 0;
        long finish = 0;
        for (Goal goal : network.goals()) {
            int end = ends[goal.task()];
            late += (long) goal.weight() * Math.max(0, end - goal.due().orElse(end));
            finish += end;
        }
        return new Score(late, finish, network.goals().size() < 2 ? 0 : switches(network, starts));
    }

    private static int switches(Network network, int[] starts) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < starts.length; i++) {
            if (network.tasks().get(i).work() > 0) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparingInt(i -> starts[i]));
        int switches = 0;
        for (int k = 1; k < order.size(); k++) {
            int last = order.get(k - 1);
            int next = order.get(k);
            if (network.tasks().get(last).goal() != network.tasks().get(next).goal()
                    && day(network, starts[last]) == day(network, starts[next])) {
                switches++;
            }
        }
        return switches;
    }

    private static int day(Network network, int clock) {
        return network.time().dayOf(network.time().workAt(clock));
    }

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }
}
