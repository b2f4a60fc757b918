package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import scantling.piece.Conditions;
import scantling.timber.Estimate;
import scantling.timber.Moisture;
import scantling.timber.Table;

/**
 * The air of a home through the year.
 *
 * @param name what it is called
 * @param months January first
 * @param source who says so
 */
public record Climate(String name, List<Month> months, String source) {
    private static final Table TABLE = Table.read("checks/climates.csv");
    private static final String USUAL = "heated home";
    private static final int MONTHS = 12;

    /** The air of one month. @param celsius temperature @param humidity relative humidity in % */
    public record Month(double celsius, double humidity) {
        Estimate moisture() {
            return Moisture.equilibrium(celsius, humidity);
        }
    }

    /** The driest and dampest that wood comes to, % of the dry mass. */
    record Range(double driest, double dampest) {}

    /** Takes its own copy. */
    public Climate {
        months = List.copyOf(months);
    }

    /** The home as the maker tells it; empty when it is called by a name that no table knows. */
    public static Optional<Climate> of(Conditions.Home home) {
        return home.name().isEmpty() ? Optional.of(own(home)) : find(home.name());
    }

    static Climate own(Conditions.Home home) {
        List<Month> months = new ArrayList<>();
        for (int month = 0; month < MONTHS; month++) {
            months.add(new Month(of(home.celsius(), month), of(home.humidity(), month)));
        }
        return new Climate("the client's own numbers", months, "the client's own numbers");
    }

    private static double of(List<Double> year, int month) {
        return year.get(year.size() == 1 ? 0 : month);
    }

    /** The names of all that are tabulated. */
    public static Set<String> names() {
        return TABLE.rows().stream()
                .map(row -> row.text("climate"))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The one taken when nothing is said: a heated home, dry in winter and damp in late summer. */
    public static Climate usual() {
        return find(USUAL).orElseThrow();
    }

    /** One of the tabulated climates. */
    public static Optional<Climate> find(String name) {
        List<Table.Row> rows = TABLE.rows().stream()
                .filter(row -> row.text("climate").equals(name))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Climate(
                        name,
                        rows.stream()
                                .map(row -> new Month(row.number("celsius"), row.number("humidity_pct")))
                                .toList(),
                        rows.get(0).source()));
    }

    /** Equilibrium moisture content month by month in %, Wood Handbook Eq. 4-5; a refusal where a number cannot be. */
    public List<Estimate> moisture() {
        return months.stream().map(Month::moisture).toList();
    }

    /** Why no range can be given, in words; empty when it can. */
    List<String> refusals() {
        List<String> reasons = new ArrayList<>();
        moisture().forEach(each -> {
            if (each instanceof Estimate.Refused refused) {
                reasons.add(refused.reason());
            }
        });
        return months.isEmpty() ? List.of("A climate without months says nothing.") : reasons;
    }

    Optional<Range> findRange() {
        if (!refusals().isEmpty()) {
            return Optional.empty();
        }
        ToDoubleFunction<Estimate> value = each -> each.find().orElseThrow();
        return Optional.of(new Range(
                moisture().stream().mapToDouble(value).min().orElseThrow(),
                moisture().stream().mapToDouble(value).max().orElseThrow()));
    }
}
