package scantling.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A sum of money to the hundredth, in one currency. Sums of two currencies are never added: that is a fault of the
 * program, for texts that mix them are refused when they are read.
 *
 * @param amount with two decimals; may be negative: a credit
 * @param currency three letters
 */
public record Money(BigDecimal amount, String currency) implements Comparable<Money> {
    private static final int CENTS = 2;

    /** Rounds to the hundredth, halves to the even neighbour. */
    public Money {
        amount = amount.setScale(CENTS, RoundingMode.HALF_EVEN);
    }

    /** No money. */
    public static Money zero(String currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /** A decimal sum. */
    public static Money of(String decimal, String currency) {
        return new Money(new BigDecimal(decimal), currency);
    }

    /** A sum in hundredths. */
    public static Money ofHundredths(long hundredths, String currency) {
        return new Money(BigDecimal.valueOf(hundredths, CENTS), currency);
    }

    /** The sum of the two. @throws IllegalArgumentException for two currencies */
    public Money plus(Money other) {
        check(other);
        return new Money(amount.add(other.amount), currency);
    }

    /** The difference of the two. @throws IllegalArgumentException for two currencies */
    public Money minus(Money other) {
        check(other);
        return new Money(amount.subtract(other.amount), currency);
    }

    /** So many times it, to the hundredth. */
    public Money times(double factor) {
        return new Money(amount.multiply(BigDecimal.valueOf(factor)), currency);
    }

    /** A percentage of it, to the hundredth. */
    public Money percent(double percent) {
        return new Money(amount.multiply(BigDecimal.valueOf(percent)).movePointLeft(2), currency);
    }

    /** What a cost is sold for when a margin is a share of the price: cost / (1 - margin). @param marginPercent under 100 */
    public Money withMargin(double marginPercent) {
        if (!(marginPercent < 100)) {
            throw new IllegalArgumentException(
                    "A margin (%s %%) must be less than the price.".formatted(marginPercent));
        }
        BigDecimal rest = BigDecimal.valueOf(100).subtract(BigDecimal.valueOf(marginPercent));
        return new Money(amount.movePointRight(2).divide(rest, CENTS, RoundingMode.HALF_EVEN), currency);
    }

    /** To a whole multiple of a step. @throws IllegalArgumentException for a step that is not positive or of another currency */
    public Money rounded(Money step, RoundingMode rule) {
        check(step);
        if (step.amount.signum() <= 0) {
            throw new IllegalArgumentException("A rounding step must be more than nothing, not (%s).".formatted(step));
        }
        return new Money(amount.divide(step.amount, 0, rule).multiply(step.amount), currency);
    }

    private void check(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("%s and %s are two currencies.".formatted(this, other));
        }
    }

    @Override
    public int compareTo(Money other) {
        check(other);
        return amount.compareTo(other.amount);
    }

    /** As on a quote: {@code 1,250.00 EUR}. */
    @Override
    public String toString() {
        return String.format(java.util.Locale.ROOT, "%,.2f %s", amount, currency);
    }
}
