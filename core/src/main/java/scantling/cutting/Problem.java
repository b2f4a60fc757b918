package scantling.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import scantling.measure.Length;

/**
 * A job as whole numbers for the search: every length divided by the largest unit that divides them all, and one kerf added
 * to every part and every piece of stock, which makes cuts of no width equal to cuts of one kerf.
 */
final class Problem {
    final CutJob job;
    final boolean sticks;
    final int stages;
    final FirstCut firstCut;
    private final long unit;
    final long kerf;
    final long[] stockLength;
    final long[] stockWidth;
    final long[] stockCost;
    final int[] stockCount;
    /** Which stock of the job each kind is; a board with defects is several kinds, one for each way to cut it up. */
    private final int[] home;
    /** The clear stretches of each kind, none for stock without defects. */
    private final List<List<Stock.Place>> clear;

    final int items;
    final int[] partOf;
    final long[] length;
    final long[] width;
    final boolean[] turn;
    final double[] area;
    /** Items of the same size have the same number. */
    private final int[] kind;

    private final long keepLonger;
    private final long keepShorter;

    Problem(CutJob job, int stages, FirstCut firstCut) {
        this.job = job;
        this.sticks = job.stock().stream().allMatch(s -> s instanceof Stock.StickStock);
        this.stages = stages == 0 ? Integer.MAX_VALUE : stages;
        this.firstCut = firstCut;
        this.unit = unit(job);
        this.kerf = scaled(job.saw().kerf());
        this.clear = new ArrayList<>();
        this.home = homes(job, clear);
        List<Stock> stock = IntStream.of(home).mapToObj(job.stock()::get).toList();
        this.stockLength = stock.stream().mapToLong(this::usableLength).toArray();
        this.stockWidth = stock.stream().mapToLong(this::usableWidth).toArray();
        this.stockCost = stock.stream().mapToLong(Stock::cost).toArray();
        this.stockCount = stock.stream()
                .mapToInt(s -> s.count().orElse(Integer.MAX_VALUE))
                .toArray();
        this.partOf = partNumbers(job.parts());
        this.items = partOf.length;
        this.length = new long[items];
        this.width = new long[items];
        this.turn = new boolean[items];
        this.area = new double[items];
        this.kind = new int[items];
        this.keepLonger = job.keep().longer().tenthNanometres();
        this.keepShorter = job.keep().shorter().tenthNanometres();
        for (int i = 0; i < items; i++) {
            fill(i, job.parts().get(partOf[i]));
        }
        Map<List<Long>, Integer> kinds = new HashMap<>();
        for (int i = 0; i < items; i++) {
            List<Long> size = List.of(length[i], width[i]);
            kind[i] = kinds.computeIfAbsent(size, key -> kinds.size());
        }
    }

    private static int[] homes(CutJob job, List<List<Stock.Place>> clear) {
        List<Integer> homes = new ArrayList<>();
        for (int s = 0; s < job.stock().size(); s++) {
            List<List<Stock.Place>> ways = job.stock().get(s) instanceof Stock.BoardStock board
                            && !board.defects().isEmpty()
                    ? ClearRuns.of(board, job.saw(), job.parts())
                    : List.of(List.of());
            clear.addAll(ways);
            homes.addAll(Collections.nCopies(ways.size(), s));
        }
        return homes.stream().mapToInt(s -> s).toArray();
    }

    /** Which stock of the job a kind is. */
    Stock stock(int type) {
        return job.stock().get(home[type]);
    }

    /** The first kind that is a stock of the job; -1 for stock that is not of the job. */
    int firstType(Stock stock) {
        return Arrays.stream(home).boxed().map(job.stock()::get).toList().indexOf(stock);
    }

    /** The number of the stock behind a kind. */
    int home(int type) {
        return home[type];
    }

    /** How many of the stock behind a kind are in use, in whatever way they are cut up. */
    int used(int type, int[] byType) {
        int used = 0;
        for (int t = 0; t < home.length; t++) {
            used += home[t] == home[type] ? byType[t] : 0;
        }
        return used;
    }

    /** The clear stretches of a kind, in wood. */
    List<Stock.Place> clear(int type) {
        return clear.get(type);
    }

    boolean isFlawed(int type) {
        return stock(type) instanceof Stock.BoardStock board && !board.defects().isEmpty();
    }

    /** The rectangles of a kind that may be used, as length and width by turns: one for clear stock. */
    long[] fields(int type) {
        return isFlawed(type)
                ? clear.get(type).stream()
                        .flatMapToLong(at -> LongStream.of(withKerf(at.length()), withKerf(at.width())))
                        .toArray()
                : new long[] {stockLength[type], stockWidth[type]};
    }

    /** The number of an item's size. */
    int kind(int item) {
        return kind[item];
    }

    /** Whether an offcut is worth keeping. */
    boolean keeps(Node left) {
        long l = (left.length - kerf) * unit;
        long w = (left.width - kerf) * unit;
        return sticks ? l >= keepLonger : Math.max(l, w) >= keepLonger && Math.min(l, w) >= keepShorter;
    }

    private static int[] partNumbers(List<CutPart> parts) {
        int[] numbers = new int[parts.stream().mapToInt(CutPart::count).sum()];
        int at = 0;
        for (int p = 0; p < parts.size(); p++) {
            for (int c = 0; c < parts.get(p).count(); c++) {
                numbers[at++] = p;
            }
        }
        return numbers;
    }

    private void fill(int i, CutPart part) {
        length[i] = scaled(part.length()) + kerf;
        width[i] = sticks ? 1 : scaled(part.width()) + kerf;
        turn[i] = !sticks && part.turn() && length[i] != width[i];
        area[i] = (double) length[i] * width[i];
    }

    private long usableLength(Stock stock) {
        return scaled(stock.length().minus(job.saw().trimOf(stock).times(2))) + kerf;
    }

    private long usableWidth(Stock stock) {
        return sticks ? 1 : scaled(stock.width().minus(job.saw().trimOf(stock).times(2))) + kerf;
    }

    private long scaled(Length length) {
        return length.tenthNanometres() / unit;
    }

    /** A size in wood as the search counts it: with the kerf that frees it. */
    long withKerf(Length wood) {
        return scaled(wood) + kerf;
    }

    /** A size of the search back to wood: one kerf less, never below nothing. */
    Length wood(long size) {
        return new Length(Math.max(0, size - kerf) * unit);
    }

    /** Whether an item goes onto a kind of stock at all. */
    boolean fits(int item, int type) {
        return fits(length[item], width[item], type) || (turn[item] && fits(width[item], length[item], type));
    }

    private boolean fits(long l, long w, int type) {
        if (!isFlawed(type)) {
            return l <= stockLength[type] && w <= stockWidth[type];
        }
        return clear.get(type).stream().anyMatch(at -> l <= withKerf(at.length()) && w <= withKerf(at.width()));
    }

    boolean fitsSomewhere(int item) {
        for (int type = 0; type < stockCost.length; type++) {
            if (stockCount[type] > 0 && fits(item, type)) {
                return true;
            }
        }
        return false;
    }

    /** The items that fit on some stock. */
    int[] fitting() {
        return IntStream.range(0, items).filter(this::fitsSomewhere).toArray();
    }

    /** The area of the largest stock. */
    double largestStock() {
        return IntStream.range(0, stockCost.length)
                .mapToDouble(this::stockArea)
                .max()
                .orElse(1);
    }

    double stockArea(int type) {
        return (double) stockLength[type] * stockWidth[type];
    }

    private static long unit(CutJob job) {
        LongStream saw = Stream.of(job.saw().kerf(), job.saw().trim()).mapToLong(Length::tenthNanometres);
        LongStream stock = job.stock().stream()
                .flatMap(s -> Stream.of(s.length(), s.width()))
                .mapToLong(Length::tenthNanometres);
        LongStream parts = job.parts().stream()
                .flatMap(p -> Stream.of(p.length(), p.width()))
                .mapToLong(Length::tenthNanometres);
        BigInteger common = LongStream.concat(saw, LongStream.concat(stock, parts))
                .mapToObj(BigInteger::valueOf)
                .reduce(BigInteger.ZERO, BigInteger::gcd);
        return Math.max(1, common.longValueExact());
    }
}
