package scantling.cutting;

import scantling.measure.Length;

/**
 * How the stock is cut.
 *
 * @param kerf the width of wood a cut turns to dust
 * @param trim what comes off every factory edge before anything else, the saw's own cut included; zero for trimmed stock.
 *     Sticks are trimmed at their two ends only
 * @param stages how many times the direction of cutting may change, first cuts counted as one; a last cut that only frees one
 *     part from waste is not counted; 0 for no limit
 * @param firstCut what the first cuts must be
 */
public record Saw(Length kerf, Length trim, int stages, FirstCut firstCut) {
    public Saw {
        if (kerf.isNegative() || trim.isNegative() || stages < 0) {
            throw new IllegalArgumentException(
                    "Kerf (%s), trim (%s) and stages (%d) must not be less than zero.".formatted(kerf, trim, stages));
        }
    }

    /** A saw with a kerf, no trimming, and any order of cuts. */
    public static Saw of(Length kerf) {
        return new Saw(kerf, Length.ZERO, 0, FirstCut.ANY);
    }

    /** What comes off the factory edges of a piece of stock; nothing off one that is trimmed. */
    public Length trimOf(Stock stock) {
        return stock.trimmed() ? Length.ZERO : trim;
    }
}
