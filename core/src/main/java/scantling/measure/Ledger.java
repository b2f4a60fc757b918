package scantling.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The names of a piece's numbers while it is being worked out. A number that the bench has measured is answered as
 * measured, one that the maker has set is answered as set, every other as its sum; what is built on the answer follows.
 *
 * <p>Lives for one derivation, used by one thread.
 */
public final class Ledger {
    /** Between the parts of a name: {@code left end / top rail / length}. */
    public static final String SEPARATOR = " / ";

    private final Map<String, Length> measurements;
    private final Map<String, Dim> settings;
    private final Tolerance measuring;
    private final Map<String, Dim> names = new LinkedHashMap<>();

    /**
     * @param measurements what the bench says, by name
     * @param settings what the maker sets against the sums, by name
     * @param measuring how well the bench measures
     */
    public Ledger(Map<String, Length> measurements, Map<String, Dim> settings, Tolerance measuring) {
        this.measurements = Map.copyOf(measurements);
        this.settings = Map.copyOf(settings);
        this.measuring = measuring;
    }

    /** Registers a number that is only worked out. */
    public Dim name(String path, Dim planned) {
        return name(path, planned, Tolerance.NONE);
    }

    /**
     * Registers a number under its name.
     *
     * @param tolerance what making it adds
     * @return the number to build on: measured, set, or its sum with a name
     * @throws IllegalStateException if the name is taken, which is a fault of the element that asks
     */
    public Dim name(String path, Dim planned, Tolerance tolerance) {
        Dim dim = answer(path, planned, tolerance);
        if (names.putIfAbsent(path, dim) != null) {
            throw new IllegalStateException("The name (%s) is used twice.".formatted(path));
        }
        return dim;
    }

    private Dim answer(String path, Dim planned, Tolerance tolerance) {
        Dim set = settings.get(path);
        Dim wanted = set == null ? Dim.named(path, planned, tolerance) : Dim.set(path, planned, set, tolerance);
        Length measured = measurements.get(path);
        return measured == null ? wanted : Dim.measured(path, wanted, measured, measuring);
    }

    /** The number of that name. */
    public Optional<Dim> find(String path) {
        return Optional.ofNullable(names.get(path));
    }

    /** All names in the order they were given, each with its number. */
    public Map<String, Dim> names() {
        return Collections.unmodifiableMap(names);
    }

    /** Joins the parts of a name. */
    public static String path(String first, String... rest) {
        return rest.length == 0 ? first : first + SEPARATOR + String.join(SEPARATOR, rest);
    }

    /** The parts of a name, from the outside in; a name without a separator is its only part. */
    public static List<String> names(String path) {
        List<String> names = new ArrayList<>();
        int from = 0;
        for (int at = path.indexOf(SEPARATOR); at >= 0; at = path.indexOf(SEPARATOR, from)) {
            names.add(path.substring(from, at));
            from = at + SEPARATOR.length();
        }
        names.add(path.substring(from));
        return names;
    }

    /** A name without the number behind it: {@code rail} for {@code rail 3}. */
    public static String withoutNumber(String name) {
        int end = name.length();
        while (end > 0 && Character.isDigit(name.charAt(end - 1))) {
            end--;
        }
        return end == name.length() ? name : name.substring(0, end).stripTrailing();
    }
}
