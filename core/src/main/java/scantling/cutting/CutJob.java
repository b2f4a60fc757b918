package scantling.cutting;

import java.util.List;
import scantling.measure.Length;

/**
 * One thing to plan: parts of one material and thickness, and the stock they may be cut from.
 *
 * @param saw how it is cut
 * @param keep how large an offcut must be to go back to the rack
 * @param stock what there is; all of one kind (sheets, boards or sticks)
 * @param parts what is wanted
 * @param wishes what is best among plans of the same cost
 */
public record CutJob(Saw saw, Keep keep, List<Stock> stock, List<CutPart> parts, Wishes wishes) {
    public CutJob {
        stock = List.copyOf(stock);
        parts = List.copyOf(parts);
        if (stock.stream().map(Stock::getClass).distinct().count() > 1) {
            throw new IllegalArgumentException("The stock of one job must be all sheets, all boards or all sticks.");
        }
    }

    /** A job with the usual wishes. */
    public CutJob(Saw saw, Keep keep, List<Stock> stock, List<CutPart> parts) {
        this(saw, keep, stock, parts, Wishes.USUAL);
    }

    /** The same with other wishes. */
    public CutJob withWishes(Wishes others) {
        return new CutJob(saw, keep, stock, parts, others);
    }

    /** The same with other stock. */
    public CutJob withStock(List<Stock> others) {
        return new CutJob(saw, keep, others, parts, wishes);
    }

    /** An offcut is kept when its longer and shorter sides are at least these. */
    public record Keep(Length longer, Length shorter) {
        /** 300 mm by 100 mm: common practice. */
        public static final Keep USUAL = new Keep(Length.mm(300), Length.mm(100));

        boolean worth(Length length, Length width) {
            boolean stick = width.isZero();
            return length.max(width).compareTo(longer) >= 0
                    && (stick || length.min(width).compareTo(shorter) >= 0);
        }
    }
}
