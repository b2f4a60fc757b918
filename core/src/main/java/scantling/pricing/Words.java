package scantling.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import scantling.finishing.Amount;

/** Writes numbers for people. */
final class Words {
    private Words() {}

    static String plain(double number) {
        BigDecimal rounded =
                BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }

    static String hours(Amount hours) {
        return hours.isExact()
                ? String.format(Locale.ROOT, "%.1f h", hours.likely())
                : String.format(Locale.ROOT, "%.1f h (%.1f to %.1f)", hours.likely(), hours.low(), hours.high());
    }
}
