package scantling.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** Against worked costings in print. */
class MoneyTest {
    private static Money euros(String sum) {
        return Money.of(sum, "EUR");
    }

    private static Money more(Money sum, double percent) {
        return sum.plus(sum.percent(percent));
    }

    /** The Technique of Furniture Making (E. Joyce), Percentage additions: 42,300 direct, 50,760 with indirect cost. */
    @Test
    void aYearlyBudgetComesOutAsPrinted() {
        Money wages = more(more(euros("20000"), 10), 40);
        Money materials = more(euros("10000"), 15);
        assertEquals(euros("30800"), wages);
        assertEquals(euros("42300"), wages.plus(materials));
        assertEquals(euros("50760"), more(wages.plus(materials), 20));
    }

    /** Woodworking Network, 40 Under 40: 20 % margin on a cost of 1,000 is a price of 1,250, not 1,200. */
    @Test
    void aMarginIsAShareOfThePriceAndNotAMarkUp() {
        Money price = euros("1000").withMargin(20);
        assertEquals(euros("1250"), price);
        assertEquals(price.percent(20), price.minus(euros("1000")));
    }

    /** 1/3 of a hundred is no number of hundredths; the sum is rounded once, halves to even. */
    @Test
    void sumsAreRoundedToTheHundredthByRule() {
        assertEquals(euros("0.12"), euros("0.125"));
        assertEquals(euros("0.14"), euros("0.135"));
        assertEquals(euros("1255"), euros("1250.01").rounded(euros("5"), RoundingMode.CEILING));
        assertEquals(euros("1250"), euros("1250").rounded(euros("5"), RoundingMode.CEILING));
        assertEquals("1,250.00 EUR", euros("1250").toString());
    }

    @Test
    void twoCurrenciesAreNeverAdded() {
        assertThrows(IllegalArgumentException.class, () -> euros("1").plus(Money.of("1", "USD")));
        assertThrows(IllegalArgumentException.class, () -> euros("1").compareTo(Money.of("1", "USD")));
        assertThrows(IllegalArgumentException.class, () -> euros("1").rounded(euros("0"), RoundingMode.UP));
        assertThrows(IllegalArgumentException.class, () -> euros("1").withMargin(100));
    }

    /** Three-point estimate as the PERT authors print it (Malcolm and others, 1959; from memory): (a + 4m + b) / 6, ((b - a) / 6)^2. */
    @Test
    void threePointsGiveMeanAndVariance() {
        Spread spread = new Spread(euros("4"), euros("5"), euros("12"));
        assertEquals(6, spread.mean(), 1e-12);
        assertEquals(16.0 / 9, spread.variance(), 1e-12);
    }
}
