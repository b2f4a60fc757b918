package scantling.pricing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import scantling.finishing.Amount;

/**
 * Estimate against actual, by class of operation and by section, with what the job taught.
 *
 * @param rows hours first, then money
 * @param lessons what to change next time, sentences
 * @param profit what was left of the price, when every bought section and all hours are known
 */
public record CostSheet(List<Row> rows, List<String> lessons, Optional<Money> profit) {
    private static final double PERCENT = 100;

    /** One line. @param what class or section @param estimated as planned @param actual as it came; a dash when nobody said */
    public record Row(String what, String estimated, String actual, String difference) {}

    /** Takes its own copies. */
    public CostSheet {
        rows = List.copyOf(rows);
        lessons = List.copyOf(lessons);
    }

    /** Compares. Differences within a seventh of the likely figure are noise and teach nothing. */
    public static CostSheet of(Estimate estimate, Actual actual, Rates rates) {
        List<Row> rows = new ArrayList<>();
        List<String> lessons = new ArrayList<>();
        for (Work.Hours hours : estimate.work().hours()) {
            Optional<Took> took = actual.find(hours.operation())
                    .filter(logged -> !actual.hours().containsKey(hours.operation()));
            if (took.isPresent()) {
                hours(
                        took.get().title(),
                        took.get().plannedHours(),
                        Optional.of(took.get().hours()),
                        rows,
                        lessons);
            } else {
                Optional<Double> said = Optional.ofNullable(actual.hours().get(hours.operation()));
                hours(hours.operation(), hours.hours(), said, rows, lessons);
            }
        }
        actual.hours().forEach((operation, took) -> {
            if (estimate.work().hours().stream()
                    .noneMatch(each -> each.operation().equals(operation))) {
                rows.add(new Row(operation, "-", one(took) + " h", "not planned"));
                lessons.add("%s took %s h and was not planned at all.".formatted(operation, one(took)));
            }
        });
        for (Line.Section section : Line.Section.values()) {
            money(section, estimate, actual, rates, rows, lessons);
        }
        return new CostSheet(rows, lessons, profit(estimate, actual, rates));
    }

    /** The same with more that the job taught. */
    public CostSheet and(List<String> more) {
        List<String> all = new ArrayList<>(lessons);
        all.addAll(more);
        return new CostSheet(rows, all, profit);
    }

    private static void hours(String what, Amount hours, Optional<Double> took, List<Row> rows, List<String> lessons) {
        String estimated = Words.hours(hours);
        if (took.isEmpty()) {
            rows.add(new Row(what, estimated, "-", ""));
            return;
        }
        double more = (took.get() - hours.likely()) / hours.likely() * PERCENT;
        rows.add(new Row(what, estimated, one(took.get()) + " h", signed(more)));
        if (Math.abs(more) > Figures.of("lesson").likely()) {
            boolean outside = took.get() < hours.low() || took.get() > hours.high();
            lessons.add(
                    "%s took %s h for %s h planned (%s)%s: from one job, plan %s h for the like until more are logged."
                            .formatted(
                                    what,
                                    one(took.get()),
                                    one(hours.likely()),
                                    signed(more),
                                    outside ? ", outside what you thought possible" : "",
                                    one((took.get() + hours.likely()) / 2)));
        }
    }

    private static void money(
            Line.Section section, Estimate estimate, Actual actual, Rates rates, List<Row> rows, List<String> lessons) {
        Spread planned = estimate.of(section);
        Optional<Money> spent =
                Optional.ofNullable(actual.spent().get(section.word())).map(sum -> new Money(sum, rates.currency()));
        if (planned.high().amount().signum() == 0 && spent.isEmpty()) {
            return;
        }
        double likely = planned.likely().amount().doubleValue();
        Optional<Double> more =
                spent.filter(sum -> likely > 0).map(sum -> (sum.amount().doubleValue() - likely) / likely * PERCENT);
        rows.add(new Row(
                section.word(),
                planned.likely().toString(),
                spent.map(Money::toString).orElse("-"),
                more.map(CostSheet::signed).orElse("")));
        more.filter(each -> Math.abs(each) > Figures.of("lesson").likely())
                .ifPresent(each -> lessons.add("%s came to %s for %s planned (%s): look at the prices in your rates."
                        .formatted(section.word(), spent.orElseThrow(), planned.likely(), signed(each))));
    }

    private static Optional<Money> profit(Estimate estimate, Actual actual, Rates rates) {
        boolean hoursKnown = !estimate.work().hours().isEmpty()
                && estimate.work().hours().stream()
                        .allMatch(each -> actual.whole(each.operation()).isPresent());
        Money cost = rates.sum(0);
        for (Line.Section section : Line.Section.values()) {
            Spread planned = estimate.of(section);
            boolean counts = section.isBought() && planned.high().amount().signum() != 0;
            if (counts && !actual.spent().containsKey(section.word()) || !hoursKnown) {
                return Optional.empty();
            }
            if (section.isBought() || section == Line.Section.DELIVERY) {
                cost = cost.plus(Optional.ofNullable(actual.spent().get(section.word()))
                        .map(sum -> new Money(sum, rates.currency()))
                        .orElse(planned.likely()));
            }
        }
        Set<String> classes = new LinkedHashSet<>(actual.hours().keySet());
        actual.took().forEach(one -> classes.add(one.operation()));
        for (String operation : classes) {
            cost = cost.plus(rates.hour(operation).times(actual.whole(operation).orElse(0.0)));
        }
        Money overhead = cost.minus(estimate.of(Line.Section.DELIVERY).likely()).percent(rates.number("overhead"));
        return Optional.of(estimate.totals().price().minus(cost.plus(overhead)));
    }

    private static String one(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    private static String signed(double percent) {
        return String.format(Locale.ROOT, "%+.0f %%", percent);
    }
}
