package scantling.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import scantling.piece.Problem;
import scantling.piece.SettingsText;

/**
 * What a job took: {@code hours: {milling: 7.5}} and {@code spent: {materials: 412.30}}.
 *
 * @param hours by class of operation
 * @param spent by section, in the currency of the rates
 */
public record Actual(Map<String, Double> hours, Map<String, BigDecimal> spent) {
    private static final Pattern NUMBER = Pattern.compile("(\\d{1,7}(?:\\.\\d{1,2})?)\\s*(h|hours|[A-Z]{3})?");

    /** Takes its own copies. */
    public Actual {
        hours = Collections.unmodifiableMap(new LinkedHashMap<>(hours));
        spent = Collections.unmodifiableMap(new LinkedHashMap<>(spent));
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
        for (SettingsText.Entry entry : text.entries()) {
            Matcher said = NUMBER.matcher(entry.value());
            boolean isHours = entry.heading().equals("hours");
            if (!isHours && !entry.heading().equals("spent")) {
                problems.add(new Problem(
                        entry.span(), "\"%s\" stands under no heading.".formatted(entry.key()), "Say hours or spent."));
            } else if (!said.matches() || !fits(said.group(2), isHours, currency)) {
                problems.add(new Problem(
                        entry.span(),
                        "\"%s\" is no %s.".formatted(entry.value(), isHours ? "time" : "sum in " + currency),
                        isHours ? "As in: 7.5 h." : "As in: 412.30."));
            } else if (isHours) {
                hours.put(entry.key(), Double.valueOf(said.group(1)));
            } else {
                spent.put(entry.key(), new BigDecimal(said.group(1)));
            }
        }
        return new Result(problems.isEmpty() ? Optional.of(new Actual(hours, spent)) : Optional.empty(), problems);
    }

    private static boolean fits(@org.jspecify.annotations.Nullable String unit, boolean isHours, String currency) {
        return unit == null || (isHours ? unit.startsWith("h") : unit.equals(currency));
    }
}
