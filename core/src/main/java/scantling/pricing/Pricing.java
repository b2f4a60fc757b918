package scantling.pricing;

import java.util.ArrayList;
import java.util.List;
import scantling.finishing.Amount;

/**
 * Makes an estimate. Costs are added line by line to the hundredth; overhead falls on materials and labour, the allowance
 * for risk on all of it; the price is cost / (1 - margin), rounded by rule, then tax. See docs/method/pricing.md.
 */
public final class Pricing {
    private static final double PERCENT = 0.01;

    private final Basis basis;
    private final Rates rates;
    private final Told told = new Told();
    private final List<Line> lines = new ArrayList<>();

    private Pricing(Basis basis, Rates rates) {
        this.basis = basis;
        this.rates = rates;
    }

    /** What a piece costs at a shop's rates. Hours come from the work behind it, else from the maker's own guess. */
    public static Estimate estimate(Basis basis, Rates rates) {
        return new Pricing(basis, rates).estimate();
    }

    private Estimate estimate() {
        Work work = work();
        lines.addAll(new Materials(rates, told).of(basis.sawn()));
        lines.addAll(new Supplies(basis, rates, told).lines());
        handling();
        work.hours().forEach(this::labour);
        Spread direct = sum();
        share(Line.Section.OVERHEAD, "overhead", direct, "overhead");
        delivery();
        Spread before = sum();
        share(Line.Section.RISK, "allowance for what goes wrong", before, "risk");
        return new Estimate(lines, totals(before), payments(toPay(sum())), work, told.isComplete(), told.findings());
    }

    /** The route's hours where there are any; the maker's guess beside them must agree, or stands alone. */
    private Work work() {
        Work route = basis.work();
        Work guess = rates.work();
        if (route.hours().isEmpty()) {
            if (guess.hours().isEmpty()) {
                told.noHours();
            }
            return guess;
        }
        if (!guess.hours().isEmpty()) {
            double itemised = route.total().likely();
            double whole = guess.total().likely();
            double apart = Math.abs(itemised - whole) / whole;
            if (apart > Figures.of("hours agree").likely() * PERCENT) {
                told.disagree("The route comes to %s, your guess to %s: %s %% apart."
                        .formatted(
                                Words.hours(route.total()),
                                Words.hours(guess.total()),
                                Words.plain(Math.rint(apart / PERCENT))));
            }
        }
        return route;
    }

    private Spread sum() {
        return lines.stream().map(Line::cost).reduce(Spread.exactly(rates.sum(0)), Spread::plus);
    }

    private void handling() {
        Spread materials = lines.stream()
                .filter(line -> line.section() == Line.Section.MATERIALS)
                .map(Line::cost)
                .reduce(Spread.exactly(rates.sum(0)), Spread::plus);
        share(Line.Section.MATERIALS, "fetching and waste not planned", materials, "handling");
    }

    private void share(Line.Section section, String what, Spread of, String key) {
        double percent = rates.number(key);
        if (percent > 0) {
            lines.add(new Line(section, what, Words.plain(percent) + " %", of.percent(percent), "the shop's rates"));
        }
    }

    private void labour(Work.Hours hours) {
        Amount time = hours.hours();
        lines.add(new Line(
                Line.Section.LABOUR,
                hours.operation(),
                Words.hours(time),
                Spread.of(time, rates.hour(hours.operation())),
                "the shop's rates"));
        if (hours.atMachine()) {
            lines.add(new Line(
                    Line.Section.MACHINES,
                    hours.operation(),
                    Words.hours(time),
                    Spread.of(time, rates.money("machine hour")),
                    "the shop's rates"));
        }
    }

    private void delivery() {
        Money sum = rates.money("delivery");
        if (sum.amount().signum() > 0) {
            lines.add(new Line(Line.Section.DELIVERY, "delivery", "", Spread.exactly(sum), "the shop's rates"));
        }
    }

    private Money price(Spread cost) {
        return cost.likely().withMargin(rates.number("margin")).rounded(rates.money("rounding"), rates.rounding());
    }

    private Money toPay(Spread cost) {
        Money price = price(cost);
        return price.plus(price.percent(rates.number("tax")));
    }

    private Estimate.Totals totals(Spread withoutRisk) {
        Spread cost = sum();
        Money price = price(cost);
        Money tax = price.percent(rates.number("tax"));
        double overhead = 1 + rates.number("overhead") * PERCENT;
        double variance = lines.stream()
                .filter(line -> line.section().ordinal() < Line.Section.OVERHEAD.ordinal())
                .mapToDouble(line -> line.cost().variance() * overhead * overhead)
                .sum();
        double mean = lines.stream()
                .filter(line -> line.section() != Line.Section.RISK)
                .mapToDouble(line -> line.cost().mean())
                .sum();
        double ninety = mean + Figures.of("z 90").likely() * Math.sqrt(variance);
        Money most = withoutRisk.high();
        Money odds = rates.sum(ninety);
        return new Estimate.Totals(
                cost,
                rates.sum(mean),
                odds.compareTo(most) > 0 ? most : odds,
                price.minus(cost.likely()),
                price,
                tax,
                price.plus(tax));
    }

    private List<Estimate.Payment> payments(Money toPay) {
        List<Estimate.Payment> payments = new ArrayList<>();
        Money rest = toPay;
        double deposit = rates.number("deposit");
        if (deposit > 0) {
            Money sum = toPay.percent(deposit);
            payments.add(new Estimate.Payment("on order", sum));
            rest = rest.minus(sum);
        }
        for (var stage : rates.stages().entrySet()) {
            Money sum = toPay.percent(stage.getValue());
            payments.add(new Estimate.Payment(stage.getKey(), sum));
            rest = rest.minus(sum);
        }
        if (rest.amount().signum() != 0) {
            payments.add(new Estimate.Payment("before delivery", rest));
        }
        return payments;
    }
}
