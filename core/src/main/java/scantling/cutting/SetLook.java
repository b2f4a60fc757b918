package scantling.cutting;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * One look through the sets of parts that come out of one kind of stock, for those worth most at given prices. A measure of
 * the parts, of which no such set has more than one, says how much a set can still gain.
 */
final class SetLook {
    private static final double TINY = 1e-7;
    private static final int STEPS_BETWEEN_ASKING = 50;

    private final PartSets sets;
    private final double[] measure;
    private final double[] price;
    private final int[] most;
    private final long length;
    private final long width;
    private final int mostFound;
    private final Deque<Long> found = new ArrayDeque<>();
    private final int[][] lists;

    private BooleanSupplier stop = () -> false;
    private long workEnds;
    private int steps;
    private boolean spent;
    /** Whether all sets worth enough are wanted, not only better and better ones. */
    private boolean every;

    private double threshold;
    private double best;
    private long bestSet;
    /** What sets that were not looked at can be worth at most. */
    private double open;

    /** What the last call of {@link #atMost} found the measure to be worth at its margin. */
    private double marginal;

    /** @param most of each kind @param mostFound of the sets found, so many are remembered */
    SetLook(PartSets sets, double[] measure, double[] price, int[] most, Problem problem, int type, int mostFound) {
        this.sets = sets;
        this.measure = measure;
        this.price = price;
        this.most = most;
        this.length = problem.stockLength[type];
        this.width = problem.stockWidth[type];
        this.mostFound = mostFound;
        this.lists = new int[PartSets.MOST_PARTS + 1][price.length];
    }

    /**
     * Looks for all sets worth more than so much, of parts that have a price. It is not {@link #isWhole} when there are more of
     * them than are remembered.
     *
     * @return the work done
     */
    long every(double above, long work, BooleanSupplier asked) {
        every = true;
        return run(above, work, asked);
    }

    /** Looks for the set worth most, if it is worth more than so much. @return the work done */
    long run(double above, long work, BooleanSupplier asked) {
        stop = asked;
        threshold = above;
        best = above;
        long before = sets.work();
        workEnds = before + work;
        int[] first = IntStream.range(0, price.length)
                .filter(k -> isPriced(price[k]) && most[k] > 0 && fits(PartSets.with(0, k)))
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -price[k] / measure[k]))
                .mapToInt(k -> k)
                .toArray();
        System.arraycopy(first, 0, lists[0], 0, first.length);
        visit(0, 0, 0, 1, first.length);
        return sets.work() - before;
    }

    /** Whether everything was looked at. */
    boolean isWhole() {
        return open <= threshold;
    }

    /** What no set is worth more than. */
    double highest() {
        return Math.max(best + TINY, open);
    }

    /** What the best set found is worth; what was asked to be exceeded when there is none. */
    double best() {
        return best;
    }

    /** The best set; nothing when none was worth more than asked. */
    long bestSet() {
        return bestSet;
    }

    /** Sets found, those worth least first. */
    List<Long> others() {
        return List.copyOf(found);
    }

    /** Whether a price is more than nothing. */
    static boolean isPriced(double price) {
        return price > TINY;
    }

    private boolean fits(long set) {
        long[] shapes = sets.shapes(set);
        for (int i = 0; i < shapes.length; i += 2) {
            if (shapes[i] <= length && shapes[i + 1] <= width) {
                return true;
            }
        }
        return false;
    }

    private boolean spent() {
        boolean ask = ++steps % STEPS_BETWEEN_ASKING == 0;
        spent |= sets.work() >= workEnds || ask && stop.getAsBoolean();
        return spent;
    }

    /** All sets that hold this one and more of the kinds in its list, which fit beside it one by one. */
    private void visit(long set, int size, double value, double room, int listed) {
        int[] list = lists[size];
        for (int at = 0; at < listed; at++) {
            double highest = value + atMost(list, at, listed, room);
            if (highest <= threshold) {
                return;
            }
            if (spent()) {
                open = Math.max(open, highest);
                return;
            }
            take(set, size, value, room, listed, at);
        }
    }

    private void take(long set, int size, double value, double room, int listed, int at) {
        int kind = lists[size][at];
        long larger = PartSets.with(set, kind);
        double worth = value + price[kind];
        double left = room - measure[kind];
        int next = beside(larger, size, worth, left, listed, at);
        note(larger, worth);
        if (next > 0) {
            visit(larger, size + 1, worth, left, next);
        }
    }

    /** Fills the list of the larger set: kinds of which one more fits and can make it worth enough. */
    private int beside(long larger, int size, double worth, double left, int listed, int at) {
        int[] list = lists[size];
        double highest = worth + atMost(list, at, listed, left);
        double margin = marginal;
        if (highest <= threshold) {
            return 0;
        }
        if (size + 1 >= PartSets.MOST_PARTS) {
            open = Math.max(open, highest);
            return 0;
        }
        int next = 0;
        int[] into = lists[size + 1];
        for (int b = at; b < listed; b++) {
            int kind = list[b];
            double with = highest - Math.max(0, margin * measure[kind] - price[kind]);
            boolean enough = b == at && count(larger, kind) >= most[kind];
            if (!enough && with > threshold && measure[kind] <= left + TINY) {
                if (spent()) {
                    open = Math.max(open, highest);
                    return next;
                }
                if (fits(PartSets.with(larger, kind))) {
                    into[next++] = kind;
                }
            }
        }
        return next;
    }

    private static int count(long set, int kind) {
        int count = 0;
        for (int i = 0, n = PartSets.size(set); i < n; i++) {
            count += PartSets.kind(set, i) == kind ? 1 : 0;
        }
        return count;
    }

    /** What the kinds from one on are worth at most within so much of the measure, fractions of a part allowed. */
    private double atMost(int[] list, int from, int listed, double room) {
        double worth = 0;
        double left = room;
        for (int i = from; i < listed; i++) {
            int kind = list[i];
            double wholeKind = measure[kind] * most[kind];
            if (wholeKind >= left) {
                marginal = price[kind] / measure[kind];
                return worth + marginal * Math.max(0, left);
            }
            worth += price[kind] * most[kind];
            left -= wholeKind;
        }
        marginal = 0;
        return worth;
    }

    private void note(long set, double worth) {
        if (every && worth > threshold) {
            found.add(set);
            spent |= found.size() >= mostFound;
        } else if (worth > best + TINY) {
            found.add(set);
            if (found.size() > mostFound) {
                found.remove();
            }
            best = worth;
            threshold = worth + TINY;
            bestSet = set;
        }
    }
}
