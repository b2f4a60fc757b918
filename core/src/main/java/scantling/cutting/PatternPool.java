package scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All patterns for sticks that a plan within a price can hold. At given prices of the parts, a plan costs what its parts are
 * worth and, for each of its sticks, what the stick costs above the parts on it: so none of its sticks can cost more above
 * than the whole plan may (variable fixing by reduced cost: Dantzig, Fulkerson and Johnson 1954; all such columns at once:
 * Baldacci, Christofides and Mingozzi 2008). Only full patterns are listed, as parts may be cut more often than wanted.
 */
final class PatternPool {
    private static final long LARGEST_TABLE = 4_000_000;
    private static final int MOST_NODES = 20_000_000;
    private static final double TINY = 1e-7;

    private final long[] size;
    private final int[] wanted;
    private final double[] price;
    private final int most;
    private final double[][] worth;
    private final List<Pattern> found = new ArrayList<>();
    private final int[] counts;
    private double least;
    private int type;
    private double cost;
    private int nodes;

    private PatternPool(long[] size, int[] wanted, double[] price, int longest, int most) {
        this.size = size;
        this.wanted = wanted;
        this.price = price;
        this.most = most;
        this.worth = new double[size.length + 1][longest + 1];
        this.counts = new int[size.length];
        for (int k = size.length - 1; k >= 0; k--) {
            fill(k, longest);
        }
    }

    /**
     * Lists them.
     *
     * @param size of each kind of part, larger ones first
     * @param price of each kind, at which no pattern is worth more than its stick costs
     * @param room how much a stick may cost above the parts on it
     * @param most empty when there are more patterns than this
     */
    static Optional<List<Pattern>> of(
            Problem problem, long[] size, int[] wanted, double[] price, double room, int most) {
        long longest = 0;
        for (long length : problem.stockLength) {
            longest = Math.max(longest, length);
        }
        if (longest * size.length > LARGEST_TABLE) {
            return Optional.empty();
        }
        PatternPool pool = new PatternPool(size, wanted, price, (int) longest, most);
        for (int t = 0; t < problem.stockLength.length; t++) {
            pool.type = t;
            pool.cost = problem.stockCost[t];
            pool.least = pool.cost - room - TINY * Math.max(1, pool.cost);
            pool.list(0, (int) problem.stockLength[t], 0, Long.MAX_VALUE);
        }
        return pool.full() ? Optional.empty() : Optional.of(pool.found);
    }

    private boolean full() {
        return found.size() > most || nodes > MOST_NODES;
    }

    /** What a length holds at most of the kinds from one on. */
    private void fill(int k, int longest) {
        double[] next = worth[k + 1];
        int step = (int) Math.min(size[k], Integer.MAX_VALUE / 2);
        for (int at = 0; at <= longest; at++) {
            double best = next[at];
            for (int copies = 1; copies <= wanted[k] && (long) copies * step <= at; copies++) {
                best = Math.max(best, next[at - copies * step] + copies * price[k]);
            }
            worth[k][at] = best;
        }
    }

    private void list(int k, int left, double value, long skipped) {
        nodes++;
        if (full() || value + worth[k][left] < least) {
            return;
        }
        if (k == size.length) {
            if (left < skipped) {
                found.add(new Pattern(type, cost, counts.clone()));
            }
            return;
        }
        int fitting = (int) Math.min(wanted[k], left / size[k]);
        for (int taken = fitting; taken >= 0; taken--) {
            counts[k] = taken;
            long missed = taken < wanted[k] ? size[k] : skipped;
            list(k + 1, left - taken * (int) size[k], value + taken * price[k], missed);
        }
        counts[k] = 0;
    }
}
