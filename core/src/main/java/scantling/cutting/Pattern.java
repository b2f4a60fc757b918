package scantling.cutting;

import java.util.stream.IntStream;

/** One way to cut a piece of stock. Immutable: its counts are not to be changed. */
final class Pattern {
    private final int type;
    private final double cost;
    private final int[] counts;
    /** The kinds it has any of: most patterns hold few of many kinds. */
    private final int[] held;

    /**
     * Makes one.
     *
     * @param type which kind of stock
     * @param cost what the stock costs
     * @param counts how many of each kind; {@code -1} in one place, and cost 0, means 'one too many of this kind'
     */
    Pattern(int type, double cost, int[] counts) {
        this.type = type;
        this.cost = cost;
        this.counts = counts;
        this.held =
                IntStream.range(0, counts.length).filter(i -> counts[i] != 0).toArray();
    }

    int type() {
        return type;
    }

    double cost() {
        return cost;
    }

    int[] counts() {
        return counts;
    }

    /** The kinds it has any of. Not to be changed. */
    int[] held() {
        return held;
    }

    boolean within(int[] demand) {
        for (int i : held) {
            if (counts[i] > demand[i]) {
                return false;
            }
        }
        return true;
    }

    double worth(double[] price) {
        double sum = 0;
        for (int i : held) {
            sum += counts[i] * price[i];
        }
        return sum;
    }
}
