package scantling.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.finishing.Amount;
import scantling.piece.Problem;
import scantling.piece.SettingsText;
import scantling.piece.SettingsText.Entry;
import scantling.piece.Spelling;
import scantling.timber.Table;

/**
 * Reads what a shop charges:
 *
 * <pre>{@code
 * currency: EUR
 * hour: 48
 * hours: {finishing: 42}
 * margin: 20 %
 * stages: {start of finishing: 30 %}
 * prices: {white oak: 9.50, waterborne lacquer: 24}
 * work: {milling: 5 to 8 h, finishing: 6 h}
 * }</pre>
 */
public final class RatesReader {
    private static final Pattern NUMBER =
            Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,4})?)\\s*(%|[A-Z]{3}|h|hours|d|days)?");
    private static final Pattern HOURS = Pattern.compile(
            "(\\d{1,5}(?:\\.\\d{1,2})?)(?:\\s*(?:to|-)\\s*(\\d{1,5}(?:\\.\\d{1,2})?))?\\s*(?:h|hours?)?");
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
    private static final Set<String> HEADINGS = Set.of("hours", "stages", "prices", "work");
    private static final Map<String, Set<String>> CHOICES =
            Map.of("rounding rule", Set.of("up", "near", "down"), "rack stock", Set.of("at price", "free"));
    private static final double MOST = 1e7;
    private static final double MINUTES = 60;
    private static final double WHOLE = 100;

    private final List<Problem> problems = new ArrayList<>();
    private final Rates base = Rates.example();
    private final Map<String, Double> numbers = new LinkedHashMap<>(base.numbers());
    private final Map<String, String> words = new LinkedHashMap<>(base.words());
    private final Map<String, Double> hours = new LinkedHashMap<>();
    private final Map<String, Double> stages = new LinkedHashMap<>();
    private final Map<String, Double> prices = new LinkedHashMap<>();
    private final List<Work.Hours> work = new ArrayList<>();
    private final String currency;

    private RatesReader(List<Entry> entries) {
        currency = currency(entries);
    }

    /** What became of reading. @param rates there only when nothing is wrong @param problems everything that is wrong */
    public record Result(Optional<Rates> rates, List<Problem> problems) {}

    /** Reads the bytes of a file. */
    public static Result readBytes(byte[] bytes) {
        return of(SettingsText.readBytes(bytes));
    }

    /** Reads a text. */
    public static Result read(String text) {
        return of(SettingsText.read(text));
    }

    /** Reads what stands under the rates of a larger text. */
    public static Result read(List<Entry> entries) {
        return new RatesReader(entries).rates(entries);
    }

    private static Result of(SettingsText.Result text) {
        if (!text.problems().isEmpty()) {
            return new Result(Optional.empty(), text.problems());
        }
        return new RatesReader(text.entries()).rates(text.entries());
    }

    private Result rates(List<Entry> entries) {
        entries.forEach(this::entry);
        double due =
                stages.values().stream().mapToDouble(Double::doubleValue).sum() + numbers.getOrDefault("deposit", 0.0);
        if (due > WHOLE) {
            entries.stream()
                    .filter(entry ->
                            entry.heading().equals("stages") || entry.key().equals("deposit"))
                    .findFirst()
                    .ifPresent(entry -> problem(
                            entry,
                            "Deposit and stages come to %s %%, more than the whole price.".formatted(plain(due)),
                            "Leave something for delivery: 100 % at most."));
        }
        Rates rates =
                new Rates(currency, numbers, words, hours, stages, prices, new Work(work, "the maker's guess"), false);
        return new Result(problems.isEmpty() ? Optional.of(rates) : Optional.empty(), List.copyOf(problems));
    }

    private String currency(List<Entry> entries) {
        Optional<Entry> said = entries.stream()
                .filter(entry -> entry.heading().isEmpty() && entry.key().equals("currency"))
                .findFirst();
        if (said.isPresent() && !CURRENCY.matcher(said.get().value()).matches()) {
            problem(
                    said.get(),
                    "\"%s\" is no currency.".formatted(said.get().value()),
                    "Write its three letters: EUR.");
        }
        return said.map(Entry::value).orElse(base.currency());
    }

    private void entry(Entry entry) {
        switch (entry.heading()) {
            case "" -> rate(entry);
            case "hours" -> money(entry, false).ifPresent(rate -> hours.put(entry.key(), rate));
            case "stages" -> number(entry, "%", 0, WHOLE).ifPresent(share -> stages.put(entry.key(), share));
            case "prices" -> money(entry, true).ifPresent(price -> prices.put(entry.key(), price));
            case "work" -> work(entry);
            default ->
                problem(
                        entry,
                        "\"%s\" is no heading of rates.".formatted(entry.heading()),
                        "Say hours, stages, prices or work.");
        }
    }

    private void rate(Entry entry) {
        Optional<Table.Row> known = Rates.rows().stream()
                .filter(row -> row.text("key").equals(entry.key()))
                .findFirst();
        if (known.isEmpty()) {
            List<String> keys =
                    Rates.rows().stream().map(row -> row.text("key")).toList();
            problem(
                    entry,
                    "\"%s\" is no rate.".formatted(entry.key()),
                    (Spelling.maybe(entry.key(), keys) + " There are: " + String.join(", ", keys) + ", "
                                    + String.join(
                                            ", ", HEADINGS.stream().sorted().toList()) + ".")
                            .strip());
            return;
        }
        Table.Row row = known.get();
        if (row.text("kind").equals("word")) {
            word(entry);
        } else {
            String unit = switch (row.text("kind")) {
                case "percent" -> "%";
                case "days" -> "days";
                case "hours" -> "h";
                default -> currency;
            };
            number(entry, unit, row.number("least"), row.number("most"))
                    .ifPresent(number -> numbers.put(entry.key(), number));
        }
    }

    private void word(Entry entry) {
        Set<String> allowed = CHOICES.getOrDefault(entry.key(), Set.of(entry.value()));
        if (allowed.contains(entry.value())) {
            words.put(entry.key(), entry.value());
        } else {
            problem(
                    entry,
                    "\"%s\" cannot be \"%s\".".formatted(entry.key(), entry.value()),
                    "Say one of: %s."
                            .formatted(
                                    String.join(", ", allowed.stream().sorted().toList())));
        }
    }

    private Optional<Double> money(Entry entry, boolean zeroToo) {
        return number(entry, currency, zeroToo ? 0 : 0.01, MOST);
    }

    private Optional<Double> number(Entry entry, String unit, double least, double most) {
        Matcher said = NUMBER.matcher(entry.value());
        if (!said.matches()) {
            problem(entry, "\"%s\" is no number for \"%s\".".formatted(entry.value(), entry.key()), "As in: 12.50.");
            return Optional.empty();
        }
        String given = Optional.ofNullable(said.group(2)).orElse(unit);
        if (!same(given, unit)) {
            boolean mixed =
                    CURRENCY.matcher(given).matches() && CURRENCY.matcher(unit).matches();
            problem(
                    entry,
                    mixed
                            ? "\"%s\" is in %s, all else in %s.".formatted(entry.key(), given, unit)
                            : "\"%s\" is in %s, not in %s.".formatted(entry.key(), unit, given),
                    mixed ? "Change it at today's rate; one list holds one currency." : "Leave the unit out.");
            return Optional.empty();
        }
        double number = Double.parseDouble(said.group(1));
        if (number < least || number > most) {
            problem(
                    entry,
                    "\"%s\" cannot be %s.".formatted(entry.key(), plain(number)),
                    "From %s to %s.".formatted(plain(least), plain(most)));
            return Optional.empty();
        }
        return Optional.of(number);
    }

    private static boolean same(String given, String unit) {
        return given.equals(unit)
                || !given.isEmpty()
                        && !unit.isEmpty()
                        && !given.equals("%")
                        && !unit.equals("%")
                        && given.toLowerCase(Locale.ROOT).equals(given)
                        && given.charAt(0) == unit.charAt(0);
    }

    private void work(Entry entry) {
        Matcher said = HOURS.matcher(entry.value());
        double low = said.matches() ? Double.parseDouble(said.group(1)) : 0;
        double high = said.matches() && said.group(2) != null ? Double.parseDouble(said.group(2)) : low;
        if (low <= 0 || high < low) {
            problem(
                    entry,
                    "\"%s\" is no time for \"%s\".".formatted(entry.value(), entry.key()),
                    "Write hours greater than zero: 5 h, or 5 to 8 h.");
            return;
        }
        work.add(new Work.Hours(entry.key(), Amount.between(low, high).times(MINUTES), false));
    }

    private static String plain(double number) {
        return new BigDecimal(String.valueOf(number)).stripTrailingZeros().toPlainString();
    }

    private void problem(Entry entry, String message, String remedy) {
        problems.add(new Problem(entry.span(), message, remedy));
    }
}
