package scantling.shop;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import scantling.construct.Tolerances;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Tolerance;
import scantling.piece.ShopText;
import scantling.piece.ShopTextReader;
import scantling.piece.Workshop;
import scantling.plan.Shop;
import scantling.plan.ShopReader;
import scantling.stock.Allowances;
import scantling.stock.Rack;

/**
 * What the shop has set for itself; everything else is as usual.
 *
 * @param own only what differs from the usual, each checked by its section
 */
public record ShopSettings(List<Setting> own) {
    private static final String OWN = "shop settings";
    private static final double USUAL_HOURS = 8;

    /** Takes its own copy. */
    public ShopSettings {
        own = List.copyOf(own);
    }

    /** What a section holds, by name. */
    public Map<String, String> section(Section section) {
        Map<String, String> values = new LinkedHashMap<>();
        own.stream()
                .filter(setting -> setting.section() == section)
                .forEach(setting -> values.put(setting.name(), setting.value()));
        return values;
    }

    private Optional<String> find(Section section, String name) {
        return Optional.ofNullable(section(section).get(name));
    }

    /** Allowances, kerfs and trims: the shop's own, else the table's. */
    public Allowances allowances() {
        return Allowances.with(key -> find(Section.ALLOWANCE, key)
                .flatMap(Section::length)
                .map(length -> Dim.lookedUp(length, OWN, key, OWN)));
    }

    /** How well the shop makes sizes. */
    public Tolerances tolerances() {
        Map<String, Tolerance> all = new LinkedHashMap<>(Tolerances.standard().byProcess());
        section(Section.TOLERANCE)
                .forEach((process, value) ->
                        Section.length(value).ifPresent(half -> all.put(process, new Tolerance(half, process))));
        return new Tolerances(all);
    }

    /** The width of cut of each of the maker's own tools. */
    public Map<String, Length> tools() {
        Map<String, Length> tools = new LinkedHashMap<>();
        section(Section.TOOL).forEach((name, value) -> Section.length(value).ifPresent(cut -> tools.put(name, cut)));
        return tools;
    }

    /** A rate, where it is set. */
    public Optional<Double> rate(String name) {
        return find(Section.RATE, name).flatMap(value -> Section.number(value, Double.MAX_VALUE));
    }

    /** Hours worked on a day of the week; eight from Monday to Friday when nothing is said (common practice). */
    public double hours(DayOfWeek day) {
        double usual = day.compareTo(DayOfWeek.FRIDAY) <= 0 ? USUAL_HOURS : 0;
        return find(Section.HOURS, day.name().toLowerCase(Locale.ROOT))
                .flatMap(value -> Section.number(value, Double.MAX_VALUE))
                .orElse(usual);
    }

    /** Hours worked on a day: none where the shop is closed. */
    public double hours(LocalDate day) {
        return closed().contains(day) ? 0 : hours(day.getDayOfWeek());
    }

    /** Days on which nobody works. */
    public Set<LocalDate> closed() {
        Set<LocalDate> days = new TreeSet<>();
        section(Section.CLOSED).keySet().forEach(day -> days.add(LocalDate.parse(day)));
        return days;
    }

    /** Relative humidity in percent: {@code driest} or {@code dampest}. */
    public Optional<Double> climate(String name) {
        return find(Section.CLIMATE, name).flatMap(value -> Section.number(value, Double.MAX_VALUE));
    }

    /** What the shop says of itself in one text; empty when it says nothing. */
    public String text() {
        return find(Section.TEXT, Section.SHOP).orElse("");
    }

    /** Hours of a usual working day: those of the first day of the week with any. */
    public double hoursADay() {
        return Stream.of(DayOfWeek.values())
                .mapToDouble(this::hours)
                .filter(hours -> hours > 0)
                .findFirst()
                .orElse(USUAL_HOURS);
    }

    /** When the shop works, as its text says; empty when it does not. */
    Optional<Workshop> calendar() {
        return ShopTextReader.read(text()).shop().flatMap(ShopText::calendar);
    }

    /** The shop as the planner takes it: its text, then what a section sets on its own. */
    public Shop shop(Rack rack) {
        Shop said = ShopReader.read(text(), rack)
                .shop()
                .orElseGet(() -> Shop.usual().with(rack));
        return new Shop(
                section(Section.TOLERANCE).isEmpty() ? said.tolerances() : tolerances(),
                section(Section.ALLOWANCE).isEmpty() ? said.allowances() : allowances(),
                rack,
                said.effort(),
                said.hardware(),
                said.joints(),
                said.office());
    }
}
