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

    /** Sheets of one size. */
    record SheetStock(String name, Length length, Length width, OptionalInt count, long cost) implements Stock {
        public SheetStock {
            check(name, length, width, count, cost);
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
    }

    /** Sticks: edging, mouldings, rod. Only length counts. */
    record StickStock(String name, Length length, OptionalInt count, long cost) implements Stock {
        public StickStock {
            check(name, length, length, count, cost);
        }

        @Override
        public Length width() {
            return Length.ZERO;
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
