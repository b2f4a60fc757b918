package scantling.cutting;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * The least cost of a small job, exactly: for every set of parts, all the smallest rectangles that it can be cut from edge to
 * edge (two sets side by side or one above the other, as Wang 1983 builds them), so which sets come out of one piece of stock;
 * then the cheapest way to share the parts among such sets. Stages and the first cut are not looked at, so for a saw that is
 * bound to them it is a bound, and not always reached.
 */
final class SmallJob {
    /** Beyond so much work the answer would come too late. */
    private static final long MOST_WORK = 30_000_000;

    private static final int MOST_SETS = 60_000;

    private final Problem problem;
    private final int[] types;
    private final int[] sample;
    private final int[] many;
    private final int[] stride;
    private final int sets;
    private final long longest;
    private final long widest;
    private final double largest;
    /** Of every set, its smallest rectangles: length and width by turns, shorter ones first. */
    private final long[][] shapes;

    private long work;

    private SmallJob(Problem problem, int[] items, int[] types) {
        this.problem = problem;
        this.types = types;
        PartKinds kinds = new PartKinds(problem, items);
        this.sample = kinds.samples();
        this.many = kinds.wanted();
        this.stride = new int[many.length];
        long product = 1;
        for (int k = 0; k < many.length; k++) {
            stride[k] = (int) Math.min(product, Integer.MAX_VALUE);
            product = Math.min(product * (many[k] + 1), 1L << 40);
        }
        this.sets = product > MOST_SETS ? 0 : (int) product;
        this.shapes = new long[sets][];
        this.longest = Arrays.stream(types)
                .mapToLong(t -> problem.stockLength[t])
                .max()
                .orElse(0);
        this.widest =
                Arrays.stream(types).mapToLong(t -> problem.stockWidth[t]).max().orElse(0);
        this.largest =
                Arrays.stream(types).mapToDouble(problem::stockArea).max().orElse(0);
    }

    /** The least cost; 0 when the job is not small, or its stock does not suffice. */
    static long cost(Problem problem, int[] items, int[] types, BooleanSupplier stop) {
        SmallJob job = new SmallJob(problem, items, types);
        return job.sets == 0 || problem.sticks ? 0 : job.solve(stop);
    }

    private long solve(BooleanSupplier stop) {
        for (int set = 1; set < sets; set++) {
            shapes[set] = shapes(set);
            if (work > MOST_WORK || stop.getAsBoolean()) {
                return 0;
            }
        }
        return shared();
    }

    private int count(int set, int kind) {
        return set / stride[kind] % (many[kind] + 1);
    }

    private double area(int set) {
        double area = 0;
        for (int k = 0; k < many.length; k++) {
            area += count(set, k) * problem.area[sample[k]];
        }
        return area;
    }

    private long[] shapes(int set) {
        if (area(set) > largest) {
            return new long[0];
        }
        Front front = new Front(longest, widest);
        for (int k = 0; k < many.length; k++) {
            if (set == stride[k]) {
                one(front, sample[k]);
                return front.shapes();
            }
        }
        split(set, many.length - 1, 0, front);
        return front.shapes();
    }

    private void one(Front front, int item) {
        front.add(problem.length[item], problem.width[item]);
        if (problem.turn[item]) {
            front.add(problem.width[item], problem.length[item]);
        }
    }

    /** Every way to part a set in two, each once. */
    private void split(int set, int kind, int first, Front front) {
        if (kind < 0) {
            int second = set - first;
            if (first > 0 && first <= second) {
                work += front.join(shapes[first], shapes[second]);
            }
            return;
        }
        int all = count(set, kind);
        for (int taken = 0; taken <= all; taken++) {
            split(set, kind - 1, first + taken * stride[kind], front);
        }
    }

    /** The cheapest kinds of stock for a set, or -1: free or scarce stock is thought to be there without end. */
    private long price(int set) {
        long least = -1;
        for (int t : types) {
            if ((least < 0 || problem.stockCost[t] < least) && fits(set, t)) {
                least = problem.stockCost[t];
            }
        }
        return least;
    }

    private boolean fits(int set, int type) {
        for (int i = 0; i < shapes[set].length; i += 2) {
            if (shapes[set][i] <= problem.stockLength[type] && shapes[set][i + 1] <= problem.stockWidth[type]) {
                return true;
            }
        }
        return false;
    }

    /** The cheapest way to make each set of sets that come out of one piece; the first kind still open is always taken. */
    private long shared() {
        long[] price = new long[sets];
        for (int set = 1; set < sets; set++) {
            price[set] = price(set);
        }
        long[] least = new long[sets];
        for (int set = 1; set < sets && work <= MOST_WORK; set++) {
            least[set] = cheapest(set, many.length - 1, 0, price, least, Long.MAX_VALUE);
        }
        return work > MOST_WORK ? 0 : least[sets - 1];
    }

    private long cheapest(int set, int kind, int piece, long[] price, long[] least, long best) {
        if (kind < 0) {
            work++;
            if (piece == 0 || price[piece] < 0) {
                return best;
            }
            return Math.min(best, price[piece] + least[set - piece]);
        }
        int all = count(set, kind);
        int from = all > 0 && isLowest(set, kind) ? 1 : 0;
        long now = best;
        for (int taken = from; taken <= all; taken++) {
            now = cheapest(set, kind - 1, piece + taken * stride[kind], price, least, now);
        }
        return now;
    }

    private boolean isLowest(int set, int kind) {
        return set % stride[kind] == 0;
    }
}
