package scantling.route.schedule;

/** What no timetable can better, from sums alone: the longest chain, and the work that has to go through each capacity. */
final class Bounds {
    private Bounds() {}

    static Score of(Network network) {
        int[] ends = new int[network.tasks().size()];
        Link[][] into = Serial.incoming(network);
        for (int i : network.order()) {
            ends[i] = end(network, i, into[i], ends);
        }
        if (network.goals().size() == 1) {
            int last = network.goals().get(0).task();
            ends[last] = waitsForAll(network, last) ? Math.max(ends[last], throughput(network)) : ends[last];
        }
        Score score = Score.of(network, ends.clone(), ends);
        return new Score(score.lateness(), score.finish(), 0);
    }

    private static int end(Network network, int i, Link[] into, int[] ends) {
        Task task = network.tasks().get(i);
        WorkTime time = network.time();
        int clock = task.pinned().orElse(task.earliest());
        for (Link link : into) {
            clock = Math.max(clock, ends[link.before()] + link.lag());
        }
        int work = time.workAt(clock);
        return task.work() == 0 ? clock : time.endOf(work + task.work());
    }

    /** Whether every other task comes before the last one. */
    private static boolean waitsForAll(Network network, int last) {
        boolean[] reaches = new boolean[network.tasks().size()];
        reaches[last] = true;
        int[] order = network.order();
        Link[][] outgoing = Serial.links(network, Link::before);
        for (int k = order.length - 1; k >= 0; k--) {
            for (Link link : outgoing[order[k]]) {
                reaches[order[k]] |= reaches[link.after()];
            }
        }
        for (boolean one : reaches) {
            if (!one) {
                return false;
            }
        }
        return true;
    }

    private static int throughput(Network network) {
        int most = 0;
        for (int c = 0; c < network.capacities().size(); c++) {
            Capacity capacity = network.capacities().get(c);
            boolean asWorked =
                    capacity.axis() == Capacity.Axis.WORKED || network.time().isAlways();
            long sum = 0;
            for (Task task : network.tasks()) {
                sum += (long) task.amountDuring(c) * task.work();
            }
            if (asWorked && sum > 0) {
                int least = (int) ((sum + capacity.amount() - 1) / capacity.amount());
                most = Math.max(most, network.time().endOf(least));
            }
        }
        return most;
    }
}
