package scantling.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The most valuable set of sizes on a stick, every size at most as often as it is wanted: dynamic programming over lists of
 * sets of which none is both longer and worth less than another (Kellerer, Pferschy and Pisinger 2004). Sizes worth most for
 * their length come first, so that sets which the rest cannot bring up to the best are left off.
 */
final class StickKnapsack {
    private static final double TINY = 1e-12;
    /** For the rounding of a rate. */
    private static final double SHARE = 1e-9;

    private final long[] size;
    private final int[] capacity;
    /** Every set ever made: the one it was made from, and the size that was added to it. */
    private int[] from = new int[1024];

    private int[] added = new int[1024];
    private int made;

    private int[] length = {0};
    private double[] value = {0};
    private int[] set = {-1};
    private int sets;

    /** @param capacity the lengths of the sticks */
    StickKnapsack(long[] size, int[] capacity) {
        this.size = size;
        this.capacity = capacity;
    }

    /** The best value for every stick; the sets of the best are told by {@link #pick}. */
    double[] values(double[] price, int[] most) {
        made = 0;
        sets = 1;
        length = new int[] {0};
        value = new double[] {0};
        set = new int[] {-1};
        int longest = Arrays.stream(capacity).max().orElse(0);
        int[] order = IntStream.range(0, size.length)
                .filter(i -> price[i] > 0 && size[i] <= longest)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -price[i] / size[i]))
                .mapToInt(i -> i)
                .toArray();
        for (int k = 0; k < order.length; k++) {
            int i = order[k];
            double nextRate = k + 1 < order.length ? price[order[k + 1]] / size[order[k + 1]] : 0;
            int copies = (int) Math.min(most[i], longest / size[i]);
            for (int copy = 1; copy <= copies; copy++) {
                add(i, price[i], copy < copies ? price[i] / size[i] : nextRate, longest);
            }
        }
        return Arrays.stream(capacity).mapToDouble(c -> value[last(c)]).toArray();
    }

    /** The best set for one of the sticks, right after {@link #values}. */
    int[] pick(int stick) {
        int[] counts = new int[size.length];
        for (int at = set[last(stick)]; at >= 0; at = from[at]) {
            counts[added[at]]++;
        }
        return counts;
    }

    private int last(int most) {
        int at = Arrays.binarySearch(length, 0, sets, most);
        return at >= 0 ? at : -at - 2;
    }

    /** Every set with and without one more of a size. */
    private void add(int kind, double price, double nextRate, int longest) {
        int step = (int) size[kind];
        int[] lengths = new int[2 * sets];
        double[] values = new double[2 * sets];
        int[] marks = new int[2 * sets];
        double least = capacity.length == 1 ? value[sets - 1] * (1 - SHARE) : 0;
        double top = -1;
        int count = 0;
        int with = 0;
        for (int without = 0; without < sets || with < sets; ) {
            boolean more = without == sets || with < sets && length[with] + step < length[without];
            int at = more ? with++ : without++;
            int here = more ? length[at] + step : length[at];
            double worth = more ? value[at] + price : value[at];
            if (here > longest) {
                break;
            }
            boolean hopeful = worth + (longest - here) * nextRate >= least;
            if (worth > top + TINY && hopeful) {
                // of two as long, only the dearer stays
                count = count > 0 && lengths[count - 1] == here ? count - 1 : count;
                lengths[count] = here;
                values[count] = worth;
                marks[count++] = more ? mark(set[at], kind) : set[at];
                top = worth;
            }
        }
        length = lengths;
        value = values;
        set = marks;
        sets = count;
    }

    private int mark(int before, int kind) {
        if (made == from.length) {
            from = Arrays.copyOf(from, 2 * made);
            added = Arrays.copyOf(added, 2 * made);
        }
        from[made] = before;
        added[made] = kind;
        return made++;
    }
}
