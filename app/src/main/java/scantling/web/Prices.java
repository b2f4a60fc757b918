package scantling.web;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.Optional;

/** Sums of the shop's money as forms send them and pages show them; the store keeps hundredths. */
final class Prices {
    private static final int LONGEST = 20;
    private static final int CENTS = 2;

    private Prices() {}

    /** A price in a field: 12, 12.50 or 12,50; nothing when nothing is said. */
    static Optional<Long> read(Context ctx, String name) {
        String said = Requests.field(ctx, name, LONGEST).strip();
        if (said.isEmpty()) {
            return Optional.empty();
        }
        String plain = said.replace(',', '.');
        if (!plain.matches("\\d{1,9}(\\.\\d{1,2})?")) {
            throw new Refused(
                    Refused.BAD,
                    "\"%s\" is no price.".formatted(Requests.shown(said)),
                    "Write a sum such as 12.50, without the name of the money.");
        }
        return Optional.of(new BigDecimal(plain).movePointRight(CENTS).longValueExact());
    }

    /** With two decimals: {@code 12.50}. */
    static String written(long hundredths) {
        return BigDecimal.valueOf(hundredths, CENTS).toPlainString();
    }

    /** The same; empty when there is none. */
    static String written(Optional<Long> price) {
        return price.map(Prices::written).orElse("");
    }
}
