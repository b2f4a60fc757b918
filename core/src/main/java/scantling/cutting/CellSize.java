package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A cell in which sizes of one direction are counted, rounded down: so many of them are as long as a length that is some
 * part's or some stock's, so that at least that one is counted whole.
 *
 * @param cells how many
 * @param length as long as these
 */
record CellSize(long cells, long length) {
    /** Sizes as they are. */
    static final CellSize UNIT = new CellSize(1, 1);
    /** A cell may be so much larger than the finest, if sizes go into it better. */
    private static final double SPREAD = 1.35;

    int of(long size) {
        return (int) (size * cells / length);
    }

    /**
     * The cell that loses least: of which most are on the parts for those on the stock.
     *
     * @param most cells along the longest stock
     * @param lengthwise whether cells lie along the length
     */
    static CellSize best(Problem problem, PartKinds kinds, int[] types, int most, boolean lengthwise) {
        long longest = IntStream.of(types)
                .mapToLong(t -> lengthwise ? problem.stockLength[t] : problem.stockWidth[t])
                .max()
                .orElse(1);
        if (longest <= most) {
            return UNIT;
        }
        List<CellSize> all = new ArrayList<>();
        for (long size : sizes(problem, kinds, types, lengthwise)) {
            long from = (long) Math.ceil(size * most / SPREAD / longest);
            for (long cells = Math.max(1, from); cells * longest <= size * most; cells++) {
                all.add(new CellSize(cells, size));
            }
        }
        return all.stream()
                .max(Comparator.comparingDouble(cell -> cell.kept(problem, kinds, types, lengthwise)))
                .orElse(new CellSize(most, longest));
    }

    private static long[] sizes(Problem problem, PartKinds kinds, int[] types, boolean lengthwise) {
        LongStream stock =
                IntStream.of(types).mapToLong(t -> lengthwise ? problem.stockLength[t] : problem.stockWidth[t]);
        LongStream straight =
                IntStream.of(kinds.samples()).mapToLong(i -> lengthwise ? problem.length[i] : problem.width[i]);
        LongStream turned = IntStream.of(kinds.samples())
                .filter(i -> problem.turn[i])
                .mapToLong(i -> lengthwise ? problem.width[i] : problem.length[i]);
        return LongStream.concat(stock, LongStream.concat(straight, turned))
                .sorted()
                .distinct()
                .toArray();
    }

    /** What the parts take of the cheapest stock, by areas counted in this cell one way and exactly the other. */
    private double kept(Problem problem, PartKinds kinds, int[] types, boolean lengthwise) {
        int[] wanted = kinds.wanted();
        double need = 0;
        for (int k = 0; k < wanted.length; k++) {
            int item = kinds.sample(k);
            double straight = area(problem.length[item], problem.width[item], lengthwise);
            double turned = area(problem.width[item], problem.length[item], lengthwise);
            need += wanted[k] * (problem.turn[item] ? Math.min(straight, turned) : straight);
        }
        double price = Double.MAX_VALUE;
        for (int t : types) {
            double area = area(problem.stockLength[t], problem.stockWidth[t], lengthwise);
            price = Math.min(price, Math.max(1, problem.stockCost[t]) / area);
        }
        return need * price;
    }

    private double area(long length, long width, boolean lengthwise) {
        return lengthwise ? (double) of(length) * width : (double) of(width) * length;
    }
}
