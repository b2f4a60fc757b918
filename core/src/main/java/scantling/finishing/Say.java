package scantling.finishing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Writes quantities for people. */
final class Say {
    private Say() {}

    /** Without needless decimals: 12, 0.5, 1.25. */
    static String number(double value) {
        BigDecimal plain =
                BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }

    /** Two figures that count: 0.35, 12, 140. */
    static String rough(double value) {
        BigDecimal plain = new BigDecimal(value).round(new MathContext(2, RoundingMode.HALF_UP));
        return (plain.scale() < 0
                        ? plain.setScale(0)
                        : plain.stripTrailingZeros().scale() < 0
                                ? plain.stripTrailingZeros().setScale(0)
                                : plain.stripTrailingZeros())
                .toPlainString();
    }

    /** From one to another, once when they are equal. */
    static String range(Amount amount) {
        String low = number(amount.low());
        String high = number(amount.high());
        return low.equals(high) ? low : low + " to " + high;
    }

    /** Square metres with two decimals. */
    static String area(double squareMetres) {
        return String.format(Locale.ROOT, "%.2f m2", squareMetres);
    }
}
