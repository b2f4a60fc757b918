package scantling.pricing;

import java.util.Optional;
import scantling.finishing.Amount;
import scantling.timber.Table;

/** Consumption and other single numbers, each with its source in {@code pricing/consumables.csv}. */
final class Figures {
    private static final Table TABLE = Table.read("pricing/consumables.csv");

    private Figures() {}

    static Amount of(String item) {
        Table.Row row = TABLE.getRow("item", item);
        return Amount.between(row.number("low"), row.number("high"));
    }

    static String sourceOf(String item) {
        return TABLE.getRow("item", item).source();
    }

    /** The example price of a small thing: glue, a biscuit. */
    static Optional<Amount> findPrice(String item) {
        return TABLE.findRow("item", item)
                .filter(row -> row.text("unit").startsWith("money"))
                .map(row -> Amount.exactly(row.number("low")));
    }
}
