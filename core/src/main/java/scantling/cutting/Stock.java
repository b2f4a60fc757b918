package scantling.cutting;

import java.util.OptionalInt;
import scantling.measure.Length;

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

    /** The same with some of it gone. */
    Stock left(int gone);

    /** A piece sawn from it that is in hand: one, trimmed, and paid already. */
    Stock inHand(String name, Length length, Length width);

    /**
     * Sheets of one size.
     *
     * @param trimmed needs no trimming
     */
    record SheetStock(String name, Length length, Length width, OptionalInt count, long cost, boolean trimmed)
            implements Stock {
        public SheetStock {
            check(name, length, width, count, cost);
        }

        /** Sheets with factory edges. */
        public SheetStock(String name, Length length, Length width, OptionalInt count, long cost) {
            this(name, length, width, count, cost, false);
        }

        @Override
        public Stock left(int gone) {
            return new SheetStock(name, length, width, Rest.fewer(count, gone), cost, trimmed);
        }

        @Override
        public Stock inHand(String called, Length l, Length w) {
            return new SheetStock(called, l, w, OptionalInt.of(1), 0, true);
        }
    }

    /**
     * Boards of one width and usable length: mostly one of each.
     *
     * @param onHand already on the rack, so nobody has to buy it; the search looks at {@code cost} only, so a caller that
     *     wants it used first gives it a low one
     */
    record BoardStock(String name, Length length, Length width, OptionalInt count, long cost, boolean onHand)
            implements Stock {
        public BoardStock {
            check(name, length, width, count, cost);
        }

        @Override
        public Stock left(int gone) {
            return new BoardStock(name, length, width, Rest.fewer(count, gone), cost, onHand);
        }

        @Override
        public Stock inHand(String called, Length l, Length w) {
            return new BoardStock(called, l, w, OptionalInt.of(1), 0, true);
        }
    }

    /**
     * Sticks: edging, mouldings, rod. Only length counts.
     *
     * @param trimmed its ends need no trimming
     */
    record StickStock(String name, Length length, OptionalInt count, long cost, boolean trimmed) implements Stock {
        public StickStock {
            check(name, length, length, count, cost);
        }

        /** Sticks as they are bought. */
        public StickStock(String name, Length length, OptionalInt count, long cost) {
            this(name, length, count, cost, false);
        }

        @Override
        public Length width() {
            return Length.ZERO;
        }

        @Override
        public Stock left(int gone) {
            return new StickStock(name, length, Rest.fewer(count, gone), cost, trimmed);
        }

        @Override
        public Stock inHand(String called, Length l, Length w) {
            return new StickStock(called, l, OptionalInt.of(1), 0, true);
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
