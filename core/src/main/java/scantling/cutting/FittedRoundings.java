package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Demands from values fitted to the job by turns: those of one direction to what the parts are worth in the other, then the other way
 * round. Each turn asks for no less than the one before.
 */
final class FittedRoundings {
    private static final int TURNS = 6;
    /** The mixtures of more sizes take too long to be worth it: hundredths of a second for so many. */
    private static final int MOST_SIZES = 30;
    /** How far a part that may be turned goes over to the side on which it is worth less. */
    private static final double LEAN = 0.25;

    private final Problem problem;
    private final int[] items;
    private final BooleanSupplier stop;
    private final long[][] straight;
    private final long[][] across;
    private final long[][] stock;
    /** Of each item, how much of it lies as it is, the rest turned. */
    private final double[] lies;

    FittedRoundings(Problem problem, int[] items, int[] types, BooleanSupplier stop) {
        this.problem = problem;
        this.items = items;
        this.stop = stop;
        long[] lengths = IntStream.of(items).mapToLong(i -> problem.length[i]).toArray();
        long[] widths = IntStream.of(items).mapToLong(i -> problem.width[i]).toArray();
        this.straight = new long[][] {lengths, widths};
        this.across = new long[][] {widths, lengths};
        this.stock = new long[][] {
            IntStream.of(types).mapToLong(t -> problem.stockLength[t]).toArray(),
            IntStream.of(types).mapToLong(t -> problem.stockWidth[t]).toArray()
        };
        this.lies = new double[items.length];
        for (int k = 0; k < lies.length; k++) {
            lies[k] = !problem.turn[items[k]] ? 1 : 0.5;
        }
    }

    /** One for each turn; none where there are too many sizes. */
    List<Demand> demands() {
        return sizes(Node.X).length <= MOST_SIZES && sizes(Node.Y).length <= MOST_SIZES ? fitted() : List.of();
    }

    private List<Demand> fitted() {
        Rounded[] now = {plain(Node.X), plain(Node.Y)};
        List<Demand> demands = new ArrayList<>();
        for (int turn = 0; turn < TURNS && !stop.getAsBoolean(); turn++) {
            int axis = turn % 2 == 0 ? Node.X : Node.Y;
            now[axis] = fitted(axis, now[1 - axis]);
            demands.add(now[Node.X].times(now[Node.Y], problem, items));
            lean(now);
        }
        return demands;
    }

    /** Sizes as they are. */
    private Rounded plain(int axis) {
        double longest = longest(axis);
        return new Rounded(
                new double[][] {shares(straight[axis], longest), shares(across[axis], longest)},
                shares(stock[axis], longest));
    }

    private long longest(int axis) {
        return LongStream.of(stock[axis]).max().orElse(1);
    }

    private static double[] shares(long[] sizes, double longest) {
        return LongStream.of(sizes)
                .mapToDouble(s -> s <= longest ? s / longest : Double.POSITIVE_INFINITY)
                .toArray();
    }

    private Rounded fitted(int axis, Rounded other) {
        long[] sizes = sizes(axis);
        double[] wanted = new double[sizes.length];
        for (int k = 0; k < items.length; k++) {
            want(wanted, sizes, straight[axis][k], lies[k] * other.items()[0][k]);
            want(wanted, sizes, across[axis][k], (1 - lies[k]) * other.items()[1][k]);
        }
        FittedValues values = FittedValues.of(sizes, wanted, stock[axis], stop);
        return new Rounded(new double[][] {values.of(straight[axis]), values.of(across[axis])}, values.ofStock());
    }

    /** Those that lie along an axis, turned or not, rising. */
    private long[] sizes(int axis) {
        long longest = longest(axis);
        LongStream turned = IntStream.range(0, items.length)
                .filter(k -> problem.turn[items[k]])
                .mapToLong(k -> across[axis][k]);
        return LongStream.concat(LongStream.of(straight[axis]), turned)
                .filter(s -> s <= longest)
                .sorted()
                .distinct()
                .toArray();
    }

    private static void want(double[] wanted, long[] sizes, long size, double much) {
        int at = Arrays.binarySearch(sizes, size);
        if (at >= 0 && much > 0 && !Double.isInfinite(much)) {
            wanted[at] += much;
        }
    }

    private void lean(Rounded[] now) {
        for (int k = 0; k < lies.length; k++) {
            if (problem.turn[items[k]]) {
                double less = now[Node.X].across(now[Node.Y], k) - now[Node.X].straight(now[Node.Y], k);
                lies[k] = Math.max(0, Math.min(1, lies[k] + LEAN * Math.signum(less)));
            }
        }
    }
}
