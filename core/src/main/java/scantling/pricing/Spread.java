package scantling.pricing;

import scantling.finishing.Amount;

/**
 * A sum of money known within bounds.
 *
 * @param low it will hardly be less
 * @param likely the most likely
 * @param high it will hardly be more
 */
public record Spread(Money low, Money likely, Money high) {
    private static final double SIXTH = 6;
    private static final double MODE = 4;

    /** A sum known exactly. */
    public static Spread exactly(Money sum) {
        return new Spread(sum, sum, sum);
    }

    /** So many at a price each. */
    public static Spread of(Amount count, Money each) {
        return new Spread(each.times(count.low()), each.times(count.likely()), each.times(count.high()));
    }

    /** Both together, low with low. */
    public Spread plus(Spread other) {
        return new Spread(low.plus(other.low), likely.plus(other.likely), high.plus(other.high));
    }

    /** A percentage of it. */
    public Spread percent(double percent) {
        return new Spread(low.percent(percent), likely.percent(percent), high.percent(percent));
    }

    /** The mean of a three-point estimate: (low + 4 likely + high) / 6. */
    public double mean() {
        return (low.amount().doubleValue()
                        + MODE * likely.amount().doubleValue()
                        + high.amount().doubleValue())
                / SIXTH;
    }

    /** The variance of a three-point estimate: ((high - low) / 6) squared. */
    public double variance() {
        double deviation = high.minus(low).amount().doubleValue() / SIXTH;
        return deviation * deviation;
    }
}
