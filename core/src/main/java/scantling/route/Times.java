package scantling.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.timber.Table;

/**
 * How long work takes: time standards, each moved toward what the maker's own log says (docs/method/time.md). The ratio of
 * logged to standard minutes has a median and a spread; a standard counts as much as three observations.
 */
public final class Times {
    /** What turns the median distance from the median into a standard deviation of a normal distribution. */
    private static final Table FIGURES = Table.read("route/route-figures.csv");

    private static final double DEVIATIONS = 1.4826;
    /** Standard deviations from the median to the mark that nine in ten do not pass. */
    private static final double TO_MARK = 1.2816;

    private static final Map<String, Standard> STANDARDS = read();
    private static final double WEIGHT = figure("observations of a standard");

    private final Map<String, Standard> standards;
    private final Map<String, List<Double>> ratios = new LinkedHashMap<>();

    /**
     * How long one kind of work takes.
     *
     * @param work its name
     * @param unit what an amount of it counts
     * @param each minutes for one unit
     * @param setUp minutes before the first
     * @param source who says so
     * @param observations how many logged times moved it
     */
    public record Standard(String work, String unit, Minutes each, double setUp, String source, int observations) {}

    private Times(Map<String, Standard> standards) {
        this.standards = standards;
    }

    /** The standards alone. */
    public static Times standard() {
        return new Times(STANDARDS);
    }

    /**
     * Standards of the shop's own in place of those of the table; nothing that was learned is kept.
     *
     * @param own by work; every one of a work that {@link #knows} has
     */
    public static Times with(Map<String, Standard> own) {
        Map<String, Standard> all = new LinkedHashMap<>(STANDARDS);
        all.putAll(own);
        return new Times(Collections.unmodifiableMap(all));
    }

    /** The standards moved by a log; entries of unknown work are passed over, see {@link #knows}. */
    public static Times learned(Collection<Logged> log) {
        return standard().moved(log);
    }

    /** These standards moved by this log alone, whatever moved them before. */
    public Times moved(Collection<Logged> log) {
        return new Times(standards).and(log);
    }

    /** The same with more logged times behind them. */
    public Times and(Collection<Logged> log) {
        Times times = new Times(standards);
        ratios.forEach((work, seen) -> times.ratios.put(work, new ArrayList<>(seen)));
        for (Logged entry : log) {
            Standard standard = standards.get(entry.work());
            if (standard != null) {
                double expected =
                        standard.setUp() + entry.amount() * standard.each().likely();
                times.ratios
                        .computeIfAbsent(entry.work(), k -> new ArrayList<>())
                        .add(Math.log(entry.minutes() / expected));
            }
        }
        return times;
    }

    /** The names of all kinds of work. */
    public static Set<String> works() {
        return Collections.unmodifiableSet(STANDARDS.keySet());
    }

    /** Whether there is a standard of that name. */
    public static boolean knows(String work) {
        return STANDARDS.containsKey(work);
    }

    /** All kinds of work, as learned so far. */
    public List<Standard> all() {
        return standards.keySet().stream().map(this::of).toList();
    }

    /**
     * One kind of work, as learned so far.
     *
     * @throws IllegalStateException if there is no such standard
     */
    public Standard of(String work) {
        Standard standard = standards.get(work);
        if (standard == null) {
            throw new IllegalStateException("There is no time standard for (%s).".formatted(work));
        }
        List<Double> seen = ratios.getOrDefault(work, List.of());
        if (seen.isEmpty()) {
            return standard;
        }
        double middle = median(seen);
        double observed = TO_MARK
                * DEVIATIONS
                * median(seen.stream().map(one -> Math.abs(one - middle)).toList());
        double moved = Math.exp(seen.size() * middle / (WEIGHT + seen.size()));
        Minutes each = standard.each();
        double likely = each.likely() * moved;
        double down = spread(Math.log(each.likely() / each.low()), observed, seen.size());
        double up = spread(Math.log(each.high() / each.likely()), observed, seen.size());
        Minutes learned = new Minutes(likely * Math.exp(-down), likely, likely * Math.exp(up));
        return new Standard(work, standard.unit(), learned, standard.setUp() * moved, standard.source(), seen.size());
    }

    private static double spread(double prior, double observed, int count) {
        return Math.sqrt((WEIGHT * prior * prior + count * observed * observed) / (WEIGHT + count));
    }

    /** The middle one, or between the two in the middle. */
    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }

    private static Map<String, Standard> read() {
        Map<String, Standard> standards = new LinkedHashMap<>();
        for (Table.Row row : Table.read("route/time-standards.csv").rows()) {
            Minutes each = new Minutes(row.number("low"), row.number("likely"), row.number("high"));
            standards.put(
                    row.text("work"),
                    new Standard(row.text("work"), row.text("unit"), each, row.number("setup"), row.source(), 0));
        }
        return standards;
    }

    static double figure(String name) {
        return FIGURES.getRow("name", name).number("value");
    }
}
