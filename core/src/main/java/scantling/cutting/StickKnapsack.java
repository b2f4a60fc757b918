package scantling.cutting;

import java.util.Arrays;

/** The most valuable set of sizes on a stick, every size at most as often as it is wanted: dynamic programming over lengths. */
final class StickKnapsack {
    private final long[] size;
    private final int longest;
    private final double[] best;

    /** @param longest the longest stick; the table has one place for every length up to it */
    StickKnapsack(long[] size, int longest) {
        this.size = size;
        this.longest = longest;
        this.best = new double[longest + 1];
    }

    /** The best value for every stick length; pick with {@link #pick}. */
    double[] values(double[] price, int[] most) {
        Arrays.fill(best, 0);
        for (int i = 0; i < size.length; i++) {
            int step = (int) size[i];
            if (price[i] <= 0 || step > longest) {
                continue;
            }
            for (int copies = Math.min(most[i], longest / step); copies > 0; copies--) {
                for (int at = longest; at >= step; at--) {
                    double with = best[at - step] + price[i];
                    if (with > best[at]) {
                        best[at] = with;
                    }
                }
            }
        }
        return best;
    }

    /** A best set for one length: the same table again, with a note of each choice. */
    int[] pick(double[] price, int[] most, int capacity) {
        double[] value = new double[capacity + 1];
        byte[][] taken = new byte[size.length][];
        for (int i = 0; i < size.length; i++) {
            int step = (int) size[i];
            if (price[i] <= 0 || step > capacity) {
                continue;
            }
            byte[] note = new byte[capacity + 1];
            taken[i] = note;
            int copies = Math.min(Math.min(most[i], capacity / step), Byte.MAX_VALUE);
            for (int copy = 1; copy <= copies; copy++) {
                take(value, note, step, price[i], capacity);
            }
        }
        return trace(taken, capacity);
    }

    private static void take(double[] value, byte[] note, int step, double price, int capacity) {
        for (int at = capacity; at >= step; at--) {
            double with = value[at - step] + price;
            if (with > value[at] + 1e-12) {
                value[at] = with;
                note[at] = (byte) (note[at - step] + 1);
            }
        }
    }

    private int[] trace(byte[][] taken, int capacity) {
        int[] counts = new int[size.length];
        int left = capacity;
        for (int i = size.length - 1; i >= 0; i--) {
            byte[] note = taken[i];
            if (note != null) {
                counts[i] = note[left];
                left -= counts[i] * (int) size[i];
            }
        }
        return counts;
    }
}
