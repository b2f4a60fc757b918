package scantling.cutting;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;

/**
 * Values of the sizes of one direction, fitted to a job: the prices of the cheapest mixture of patterns that cut stock of that
 * direction into the sizes, of each as much as is wanted (Gilmore and Gomory 1961). No set of sizes that fits along a piece of
 * stock is worth more than the best of its patterns, so that they are dual feasible functions (Lueker 1983, from memory), as good for the job as any in
 * one direction.
 */
final class FittedValues {
    /** Parts that all that is wanted is divided into. */
    private static final double WHOLE = 1e6;
    /** Of everything a little is wanted, more than fits along any stock, so that it is valued. */
    private static final int LEAST = 500;
    /** How near to the cheapest mixture is near enough. */
    private static final double NEAR = 1e-4;
    /** Values are a little smaller than the stock, so that their rounding does no harm. */
    private static final double ROUNDING = 1e-9;

    private final long[] sizes;
    private final double[] value;
    private final double[] stock;

    private FittedValues(long[] sizes, double[] value, double[] stock) {
        this.sizes = sizes;
        this.value = value;
        this.stock = stock;
    }

    /**
     * Fits them.
     *
     * @param sizes rising, each once, none longer than the longest stock
     * @param wanted how much of each
     * @param stock its lengths
     */
    static FittedValues of(long[] sizes, double[] wanted, long[] stock, BooleanSupplier stop) {
        double sum = DoubleStream.of(wanted).sum();
        int[] parts = DoubleStream.of(wanted)
                .mapToInt(w -> LEAST + (int) Math.round(w / sum * WHOLE))
                .toArray();
        double longest = LongStream.of(stock).max().orElse(1);
        StickPatterns patterns = new StickPatterns(
                sizes, stock, LongStream.of(stock).mapToDouble(s -> s / longest).toArray());
        PatternProgram program = new PatternProgram(patterns, stop);
        program.solve(parts, NEAR);
        double[] value = program.trusted();
        int[] often = new int[sizes.length];
        Arrays.fill(often, Integer.MAX_VALUE);
        double[] most = patterns.values(value, often);
        return new FittedValues(
                sizes, value, DoubleStream.of(most).map(m -> m * (1 + ROUNDING)).toArray());
    }

    /** What each of some sizes is worth; no bound to it where it is longer than the stock. */
    double[] of(long[] some) {
        return LongStream.of(some)
                .mapToDouble(s -> {
                    int at = Arrays.binarySearch(sizes, s);
                    return at < 0 ? Double.POSITIVE_INFINITY : value[at];
                })
                .toArray();
    }

    /** What each kind of stock is worth: no sizes that fit along it are worth more. */
    double[] ofStock() {
        return stock.clone();
    }
}
