package scantling.route.schedule;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/** Orders in which tasks can be put: every task behind those it waits for. */
final class Orders {
    private final Network network;
    private final int[][] before;
    private final int[][] after;
    private final int[] topological;
    private final Link[][] outgoing;

    Orders(Network network) {
        this.network = network;
        topological = network.order();
        outgoing = Serial.links(network, Link::before);
        before = neighbours(network.links(), true);
        after = neighbours(network.links(), false);
    }

    private int[][] neighbours(List<Link> links, boolean into) {
        int[][] all = new int[network.tasks().size()][];
        int[] count = new int[all.length];
        for (Link link : links) {
            count[into ? link.after() : link.before()]++;
        }
        for (int i = 0; i < all.length; i++) {
            all[i] = new int[count[i]];
        }
        for (Link link : links) {
            int task = into ? link.after() : link.before();
            all[task][all[task].length - count[task]--] = into ? link.before() : link.after();
        }
        return all;
    }

    /** Ticks from the beginning of each task to the end of all that waits for it. */
    int[] tails() {
        int[] tails = new int[topological.length];
        for (int k = topological.length - 1; k >= 0; k--) {
            int i = topological[k];
            int rest = 0;
            for (Link link : outgoing[i]) {
                rest = Math.max(rest, link.lag() + tails[link.after()]);
            }
            tails[i] = network.tasks().get(i).work() + rest;
        }
        return tails;
    }

    /** Ticks before each task can begin, were there enough of everything. */
    int[] heads() {
        int[] heads = new int[topological.length];
        for (int i : topological) {
            heads[i] = Math.max(heads[i], network.tasks().get(i).earliest());
            for (Link link : outgoing[i]) {
                int reached = heads[i] + network.tasks().get(i).work() + link.lag();
                heads[link.after()] = Math.max(heads[link.after()], reached);
            }
        }
        return heads;
    }

    /** How many tasks wait for each, at any remove. */
    int[] followers() {
        boolean[][] reached = new boolean[topological.length][topological.length];
        int[] count = new int[topological.length];
        for (int k = topological.length - 1; k >= 0; k--) {
            int i = topological[k];
            for (int next : after[i]) {
                reached[i][next] = true;
                for (int j = 0; j < topological.length; j++) {
                    reached[i][j] |= reached[next][j];
                }
            }
            for (boolean one : reached[i]) {
                count[i] += one ? 1 : 0;
            }
        }
        return count;
    }

    /** The smallest key first, as far as the links allow. */
    int[] byKey(double[] key) {
        int count = topological.length;
        int[] open = new int[count];
        for (int i = 0; i < count; i++) {
            open[i] = before[i].length;
        }
        boolean[] done = new boolean[count];
        int[] order = new int[count];
        for (int at = 0; at < count; at++) {
            int best = -1;
            for (int i = 0; i < count; i++) {
                if (!done[i] && open[i] == 0 && (best < 0 || key[i] < key[best])) {
                    best = i;
                }
            }
            done[best] = true;
            order[at] = best;
            for (int next : after[best]) {
                open[next]--;
            }
        }
        return order;
    }

    /** The order in which tasks begin in a timetable, which the links keep by themselves. */
    static int[] byTime(int[] starts, int[] topological) {
        int[] rank = new int[starts.length];
        for (int k = 0; k < topological.length; k++) {
            rank[topological[k]] = k;
        }
        Integer[] order = new Integer[starts.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.<Integer>comparingInt(i -> starts[i]).thenComparingInt(i -> rank[i]));
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }

    int[] topological() {
        return topological;
    }

    /** Moves one task elsewhere in the order, as far as the links allow. */
    void shift(int[] order, SplittableRandom random) {
        int from = random.nextInt(order.length);
        int task = order[from];
        int low = from;
        while (low > 0 && !contains(before[task], order[low - 1])) {
            low--;
        }
        int high = from;
        while (high < order.length - 1 && !contains(after[task], order[high + 1])) {
            high++;
        }
        put(order, from, random.nextInt(low, high + 1));
    }

    private static void put(int[] order, int from, int to) {
        int task = order[from];
        if (to < from) {
            System.arraycopy(order, to, order, to + 1, from - to);
        } else {
            System.arraycopy(order, from + 1, order, from, to - from);
        }
        order[to] = task;
    }

    /** Moves a task to a place in the order, if the links allow. @return whether they do */
    boolean move(int[] order, int from, int to) {
        int task = order[from];
        for (int k = to; k < from; k++) {
            if (contains(before[task], order[k])) {
                return false;
            }
        }
        for (int k = from + 1; k <= to; k++) {
            if (contains(after[task], order[k])) {
                return false;
            }
        }
        put(order, from, to);
        return true;
    }

    private static boolean contains(int[] some, int one) {
        for (int each : some) {
            if (each == one) {
                return true;
            }
        }
        return false;
    }
}
