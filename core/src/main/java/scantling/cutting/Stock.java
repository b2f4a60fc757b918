package scantling.cutting;

import java.util.List;
import java.util.OptionalInt;
import scantling.measure.Length;
import scantling.stock.Defect;

/** What parts are cut from. Costs are whole numbers of any one unit of money; the plan's cost is in the same unit. */
public sealed interface Stock {
    /** What the maker calls it. */
    String name();

    /** Along the grain. */
    Length length();

    /** Across the grain; zero for a stick. */
    Length width();

    /** How many there are, or empty for as many as wanted. */
    OptionalInt count();

    /** What one costs. */
    long cost();

    /** Whether its edges and ends need no trimming any more, because it was sawn from something larger. */
    default boolean trimmed() {
        return false;
    }

    /** Whether it lies on the rack or on the bench already, so that nobody has to buy it; the search looks at the cost only. */
    boolean onHand();

    /** What no part may have, from its near end and its reference edge; only boards have any. */
    default List<Defect> defects() {
        return List.of();
    }

    /** The same with some of it gone. */
    Stock left(int gone);

    /** The same at another cost. */
    Stock at(long cost);

    /** A piece sawn from it that is in hand: one, trimmed, and paid already; its defects are those that lie in it. */
    Stock inHand(String name, Place place);

    /** A rectangle of the stock. @param x from its near end @param y from its reference edge */
    record Place(Length x, Length y, Length length, Length width) {}

    /**
     * Sheets of one size.
     *
     * @param trimmed needs no trimming
     * @param onHand on the rack already
     */
    record SheetStock(
            String name, Length length, Length width, OptionalInt count, long cost, boolean trimmed, boolean onHand)
            implements Stock {
        public SheetStock {
            check(name, length, width, count, cost);
        }

        /** Sheets to be bought. */
        public SheetStock(String name, Length length, Length width, OptionalInt count, long cost, boolean trimmed) {
            this(name, length, width, count, cost, trimmed, false);
        }

        /** Sheets with factory edges. */
        public SheetStock(String name, Length length, Length width, OptionalInt count, long cost) {
            this(name, length, width, count, cost, false);
        }

        @Override
        public Stock left(int gone) {
            return new SheetStock(name, length, width, Rest.fewer(count, gone), cost, trimmed, onHand);
        }

        @Override
        public Stock at(long other) {
            return new SheetStock(name, length, width, count, other, trimmed, onHand);
        }

        @Override
        public Stock inHand(String called, Place place) {
            return new SheetStock(called, place.length(), place.width(), OptionalInt.of(1), 0, true, true);
        }
    }

    /**
     * Boards of one width and usable length: mostly one of each.
     *
     * @param length between what is cut off its two ends
     * @param trimmed needs no trimming, because it was sawn from something larger
     * @param onHand already on the rack, so nobody has to buy it; the search looks at {@code cost} only, so a caller that
     *     wants it used first gives it a low one
     * @param defects what no part may have, from the near end of this length
     */
    record BoardStock(
            String name,
            Length length,
            Length width,
            OptionalInt count,
            long cost,
            boolean trimmed,
            boolean onHand,
            List<Defect> defects)
            implements Stock {
        public BoardStock {
            check(name, length, width, count, cost);
            defects = List.copyOf(defects);
        }

        /** Clear boards. */
        public BoardStock(String name, Length length, Length width, OptionalInt count, long cost, boolean onHand) {
            this(name, length, width, count, cost, onHand, List.of());
        }

        /** Boards as they come. */
        public BoardStock(
                String name,
                Length length,
                Length width,
                OptionalInt count,
                long cost,
                boolean onHand,
                List<Defect> defects) {
            this(name, length, width, count, cost, false, onHand, defects);
        }

        @Override
        public Stock left(int gone) {
            return new BoardStock(name, length, width, Rest.fewer(count, gone), cost, trimmed, onHand, defects);
        }

        @Override
        public Stock at(long other) {
            return new BoardStock(name, length, width, count, other, trimmed, onHand, defects);
        }

        @Override
        public Stock inHand(String called, Place place) {
            return new BoardStock(
                    called, place.length(), place.width(), OptionalInt.of(1), 0, true, true, defectsIn(place));
        }

        /** The defects that lie in a piece of it, measured from that piece's own end and edge. */
        List<Defect> defectsIn(Place at) {
            return defects.stream()
                    .flatMap(one -> one.within(at.x(), at.y(), at.length(), at.width(), width).stream())
                    .toList();
        }
    }

    /**
     * Sticks: edging, mouldings, rod. Only length counts.
     *
     * @param trimmed its ends need no trimming
     * @param onHand on the rack already
     */
    record StickStock(String name, Length length, OptionalInt count, long cost, boolean trimmed, boolean onHand)
            implements Stock {
        public StickStock {
            check(name, length, length, count, cost);
        }

        /** Sticks as they are bought. */
        public StickStock(String name, Length length, OptionalInt count, long cost) {
            this(name, length, count, cost, false, false);
        }

        /** Sticks to be bought. */
        public StickStock(String name, Length length, OptionalInt count, long cost, boolean trimmed) {
            this(name, length, count, cost, trimmed, false);
        }

        @Override
        public Length width() {
            return Length.ZERO;
        }

        @Override
        public Stock left(int gone) {
            return new StickStock(name, length, Rest.fewer(count, gone), cost, trimmed, onHand);
        }

        @Override
        public Stock at(long other) {
            return new StickStock(name, length, count, other, trimmed, onHand);
        }

        @Override
        public Stock inHand(String called, Place place) {
            return new StickStock(called, place.length(), OptionalInt.of(1), 0, true, true);
        }
    }

    private static void check(String name, Length length, Length width, OptionalInt count, long cost) {
        if (!length.isPositive() || !width.isPositive() || count.orElse(0) < 0 || cost < 0) {
            throw new IllegalArgumentException(
                    "Stock (%s) of (%s) by (%s), cost (%d): sizes must be positive, costs not negative."
                            .formatted(name, length, width, cost));
        }
    }
}
