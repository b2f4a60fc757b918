package scantling.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.piece.Problem;
import scantling.piece.SettingsText;

/**
 * What a job took: {@code hours: {milling: 7.5}}, {@code operations: {glue up / left end: 35 min}} and
 * {@code spent: {materials: 412.30}}.
 *
 * @param hours by class of operation
 * @param spent by section, in the currency of the rates
 * @param operations hands-on minutes by id of the operation
 * @param took what the logged operations of each class took; worked out by whoever knows the route
 */
public record Actual(
        Map<String, Double> hours, Map<String, BigDecimal> spent, Map<String, Double> operations, List<Took> took) {
    /** Nothing is logged. */
    public static final Actual NONE = new Actual(Map.of(), Map.of());

    private static final Pattern NUMBER = Pattern.compile("(\\d{1,7}(?:\\.\\d{1,2})?)\\s*(h|hours|min|[A-Z]{3})?");
    private static final Set<String> HEADINGS = Set.of("hours", "spent", "operations");

    /** Takes its own copies. */
    public Actual {
        hours = Collections.unmodifiableMap(new LinkedHashMap<>(hours));
        spent = Collections.unmodifiableMap(new LinkedHashMap<>(spent));
        operations = Collections.unmodifiableMap(new LinkedHashMap<>(operations));
        took = List.copyOf(took);
    }

    /** Hours and money alone. */
    public Actual(Map<String, Double> hours, Map<String, BigDecimal> spent) {
        this(hours, spent, Map.of(), List.of());
    }

    /** The same with what its operations come to, class by class. */
    public Actual with(List<Took> classes) {
        return new Actual(hours, spent, operations, classes);
    }

    /** The same with logged minutes of operations. */
    public Actual logging(Map<String, Double> minutes) {
        Map<String, Double> all = new LinkedHashMap<>(operations);
        all.putAll(minutes);
        return new Actual(hours, spent, all, took);
    }

    /** What the logged operations of a class took. */
    Optional<Took> find(String operation) {
        return took.stream().filter(one -> one.operation().equals(operation)).findFirst();
    }

    /** Hours of a class when all of them are known. */
    Optional<Double> whole(String operation) {
        return Optional.ofNullable(hours.get(operation))
                .or(() -> find(operation).filter(Took::isWhole).map(Took::hours));
    }

    /** What became of reading. @param actual there only when nothing is wrong @param problems everything that is wrong */
    public record Result(Optional<Actual> actual, List<Problem> problems) {}

    /** Reads the bytes of a file. @param currency of the rates */
    public static Result readBytes(byte[] bytes, String currency) {
        return of(SettingsText.readBytes(bytes), currency);
    }

    /** Reads a text. @param currency of the rates */
    public static Result read(String text, String currency) {
        return of(SettingsText.read(text), currency);
    }

    private static Result of(SettingsText.Result text, String currency) {
        List<Problem> problems = new ArrayList<>(text.problems());
        Map<String, Double> hours = new LinkedHashMap<>();
        Map<String, BigDecimal> spent = new LinkedHashMap<>();
        Map<String, Double> operations = new LinkedHashMap<>();
        for (SettingsText.Entry entry : text.entries()) {
            String heading = entry.heading();
            Matcher said = NUMBER.matcher(entry.value());
            if (!HEADINGS.contains(heading)) {
                problems.add(new Problem(
                        entry.span(),
                        "\"%s\" stands under no heading.".formatted(entry.key()),
                        "Say hours, operations or spent."));
            } else if (!said.matches() || !fits(said.group(2), heading, currency)) {
                problems.add(wrong(entry, currency));
            } else if (heading.equals("spent")) {
                spent.put(entry.key(), new BigDecimal(said.group(1)));
            } else {
                (heading.equals("hours") ? hours : operations).put(entry.key(), Double.valueOf(said.group(1)));
            }
        }
        Actual actual = new Actual(hours, spent, operations, List.of());
        return new Result(problems.isEmpty() ? Optional.of(actual) : Optional.empty(), problems);
    }

    private static Problem wrong(SettingsText.Entry entry, String currency) {
        boolean money = entry.heading().equals("spent");
        String like = entry.heading().equals("hours") ? "As in: 7.5 h." : "As in: 35 min.";
        return new Problem(
                entry.span(),
                "\"%s\" is no %s.".formatted(entry.value(), money ? "sum in " + currency : "time"),
                money ? "As in: 412.30." : like);
    }

    private static boolean fits(@org.jspecify.annotations.Nullable String unit, String heading, String currency) {
        return unit == null
                || switch (heading) {
                    case "hours" -> unit.startsWith("h");
                    case "operations" -> unit.equals("min");
                    default -> unit.equals(currency);
                };
    }
}
