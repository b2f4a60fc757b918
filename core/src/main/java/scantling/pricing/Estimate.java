package scantling.pricing;

import java.util.List;
import scantling.construct.Finding;

/**
 * What a piece costs and what to ask for it.
 *
 * @param lines every cost, by section
 * @param totals how they come to a price
 * @param payments when the price is paid, in order; they add up to it
 * @param work the hours behind it
 * @param complete whether everything has a price and the hours are known
 * @param findings what a careful master would say of it
 */
public record Estimate(
        List<Line> lines, Totals totals, List<Payment> payments, Work work, boolean complete, List<Finding> findings) {
    /**
     * From cost to price.
     *
     * @param cost of everything, risk allowance included
     * @param median a cost that half of such jobs stay under, without the allowance
     * @param ninety a cost that nine of ten such jobs stay under, without the allowance
     * @param margin what is left of the price when the cost is likely
     * @param price before tax, rounded
     * @param tax on it
     * @param toPay price and tax
     */
    public record Totals(Spread cost, Money median, Money ninety, Money margin, Money price, Money tax, Money toPay) {}

    /** A part of the price. @param when at which moment @param sum how much */
    public record Payment(String when, Money sum) {}

    /** Takes its own copies. */
    public Estimate {
        lines = List.copyOf(lines);
        payments = List.copyOf(payments);
        findings = List.copyOf(findings);
    }

    /** What a section comes to. */
    public Spread of(Line.Section section) {
        return lines.stream()
                .filter(line -> line.section() == section)
                .map(Line::cost)
                .reduce(Spread.exactly(Money.zero(totals.price().currency())), Spread::plus);
    }
}
