package scantling.cutting;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The most valuable patterns of three stages for one direction of the first cut, every part as often as one likes (Gilmore and
 * Gomory 1965): strips as high as some part is, each cut into columns as long as some part is, each column a stack of parts
 * no longer than it. Parts are rounded up to cells and stock down, so that what is found fits.
 */
final class StripTables {
    /** Cells along the longest stock. */
    private static final long CELLS = 2_500;
    /** Cells up to so many times as large are tried, for one into which the sizes go well. */
    private static final double SPREAD = 1.6;

    /** The axis that the first cut divides. */
    final int axis;
    /** Sizes across the strips, and along them; rising, in the problem's units. */
    final long[] heights;

    final long[] lengths;
    private final int[] height;
    private final int[] length;
    private final int[] stockHeight;
    private final int[] stockLength;
    private final boolean trims;
    /** Of each height and length, the best price of the parts that have it. */
    private final double[][] price;
    /** Of each length of a column, what each height of it is worth. */
    private final double[][] column;
    /** Of each height of a strip, what each length of it is worth. */
    private final double[][] strip;

    private final double[] sheet;

    /** @param sample an item of each kind @param trims whether a part may be shorter than its column */
    StripTables(Problem problem, int[] sample, int axis, boolean trims) {
        this.axis = axis;
        this.trims = trims;
        this.heights = sizes(problem, sample, axis == Node.X);
        this.lengths = sizes(problem, sample, axis != Node.X);
        long[] across = axis == Node.X ? problem.stockLength : problem.stockWidth;
        long[] along = axis == Node.X ? problem.stockWidth : problem.stockLength;
        long cellAcross = cell(heights, across);
        long cellAlong = cell(lengths, along);
        this.height = up(heights, cellAcross);
        this.length = up(lengths, cellAlong);
        this.stockHeight =
                LongStream.of(across).mapToInt(s -> (int) (s / cellAcross)).toArray();
        this.stockLength =
                LongStream.of(along).mapToInt(s -> (int) (s / cellAlong)).toArray();
        int high = IntStream.of(stockHeight).max().orElse(0);
        int wide = IntStream.of(stockLength).max().orElse(0);
        this.price = new double[heights.length][lengths.length];
        this.column = new double[lengths.length][high + 1];
        this.strip = new double[heights.length][wide + 1];
        this.sheet = new double[high + 1];
    }

    private static long[] sizes(Problem problem, int[] sample, boolean lengthwise) {
        LongStream straight = IntStream.of(sample).mapToLong(i -> lengthwise ? problem.length[i] : problem.width[i]);
        LongStream turned = IntStream.of(sample)
                .filter(i -> problem.turn[i])
                .mapToLong(i -> lengthwise ? problem.width[i] : problem.length[i]);
        return LongStream.concat(straight, turned).sorted().distinct().toArray();
    }

    /** Of the cells small enough, that which loses least when sizes are rounded up to it. */
    private static long cell(long[] sizes, long[] stock) {
        long whole = LongStream.of(stock).max().orElse(1);
        long least = (whole + CELLS - 1) / CELLS;
        long best = least;
        double bestLoss = Double.MAX_VALUE;
        for (long cell = least; cell <= least * SPREAD; cell++) {
            double loss = 0;
            for (long size : sizes) {
                loss += ((size + cell - 1) / cell * cell - size) / (double) size;
            }
            if (loss < bestLoss) {
                bestLoss = loss;
                best = cell;
            }
        }
        return best;
    }

    private static int[] up(long[] sizes, long cell) {
        return LongStream.of(sizes).mapToInt(s -> (int) ((s + cell - 1) / cell)).toArray();
    }

    /** About how many operations it takes to fill the tables. */
    long work() {
        long columns = (long) lengths.length * heights.length * sheet.length;
        return columns + (long) heights.length * lengths.length * strip[0].length;
    }

    /** Forgets all prices. */
    void clear() {
        for (double[] row : price) {
            Arrays.fill(row, 0);
        }
    }

    /** Takes in a part of a size across and along the strips at a price. */
    void offer(long across, long along, double worth) {
        int h = Arrays.binarySearch(heights, across);
        int l = Arrays.binarySearch(lengths, along);
        price[h][l] = Math.max(price[h][l], worth);
    }

    /** Fills the tables for the prices offered. */
    void solve() {
        double[] best = new double[heights.length];
        for (int l = 0; l < lengths.length; l++) {
            for (int h = 0; h < heights.length; h++) {
                best[h] = trims ? Math.max(best[h], price[h][l]) : price[h][l];
            }
            knapsack(column[l], height, best);
        }
        double[] columns = new double[lengths.length];
        for (int h = 0; h < heights.length; h++) {
            for (int l = 0; l < lengths.length; l++) {
                columns[l] = column[l][Math.min(height[h], column[l].length - 1)];
            }
            knapsack(strip[h], length, columns);
        }
    }

    /** The highest value of each capacity: every size as often as one likes. */
    private static void knapsack(double[] value, int[] size, double[] worth) {
        int[] usable = worthwhile(size, worth, value.length);
        value[0] = 0;
        for (int at = 1; at < value.length; at++) {
            double best = value[at - 1];
            for (int i : usable) {
                if (size[i] > at) {
                    break;
                }
                best = Math.max(best, value[at - size[i]] + worth[i]);
            }
            value[at] = best;
        }
    }

    /** Those that fit and are worth more than every smaller one. */
    private static int[] worthwhile(int[] size, double[] worth, int room) {
        int[] found = new int[size.length];
        int count = 0;
        double most = 0;
        for (int i = 0; i < size.length && size[i] < room; i++) {
            if (worth[i] > most) {
                most = worth[i];
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The value of the best pattern of a kind of stock; to be asked before its strips are. */
    double value(int type) {
        knapsack(sheet, height, strips(type));
        return sheet[stockHeight[type]];
    }

    private double[] strips(int type) {
        double[] worth = new double[heights.length];
        Arrays.setAll(worth, h -> strip[h][stockLength[type]]);
        return worth;
    }

    /** The strips of the best pattern, as places in the heights; after {@link #value} of the same kind of stock. */
    int[] stripsOf(int type) {
        return taken(sheet, height, strips(type), stockHeight[type]);
    }

    /** The columns of the best strip of a height, as places in the lengths. */
    int[] columnsOf(int type, int h) {
        double[] worth = new double[lengths.length];
        Arrays.setAll(worth, l -> column[l][Math.min(height[h], column[l].length - 1)]);
        return taken(strip[h], length, worth, stockLength[type]);
    }

    /** The parts of the best column, as places in the heights. */
    int[] partsOf(int h, int l) {
        double[] worth = new double[heights.length];
        for (int k = 0; k < worth.length; k++) {
            for (int m = trims ? 0 : l; m <= l; m++) {
                worth[k] = Math.max(worth[k], price[k][m]);
            }
        }
        return taken(column[l], height, worth, Math.min(height[h], column[l].length - 1));
    }

    private static int[] taken(double[] value, int[] size, double[] worth, int whole) {
        IntStream.Builder taken = IntStream.builder();
        int at = whole;
        while (at > 0 && value[at] > 0) {
            int from = at;
            int one = IntStream.range(0, size.length)
                    .filter(i -> worth[i] > 0 && size[i] <= from && value[from - size[i]] + worth[i] == value[from])
                    .findFirst()
                    .orElse(-1);
            if (value[at - 1] == value[at] || one < 0) {
                at--;
            } else {
                taken.add(one);
                at -= size[one];
            }
        }
        return taken.build().toArray();
    }
}
