package scantling.construct;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;

/** How deep one board is let into another when the maker does not say: rules of thumb from {@code usual-depths.csv}. */
final class UsualDepths {
    private static final Map<String, Rule> RULES = read();

    private UsualDepths() {}

    /** Across the grain, away from an end. */
    static Dim dado(Dim thickness) {
        return depth("dado", thickness);
    }

    /** Along an edge or end. */
    static Dim rabbet(Dim thickness) {
        return depth("rabbet", thickness);
    }

    /** For a panel. */
    static Dim groove(Dim thickness) {
        return depth("groove", thickness);
    }

    private static Dim depth(String name, Dim thickness) {
        Rule rule = Objects.requireNonNull(RULES.get(name));
        Length exact = thickness.value().times(rule.numerator, rule.denominator);
        double effect = (double) rule.numerator / rule.denominator;
        String words = "%s, to the nearest %s mm (%s)".formatted(rule.words, rule.step.millimetres(), rule.source);
        return Dim.worked(exact.roundedTo(rule.step), words, new Making.Input(effect, thickness));
    }

    private static Map<String, Rule> read() {
        InputStream file = Objects.requireNonNull(UsualDepths.class.getResourceAsStream("usual-depths.csv"));
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        Map<String, Rule> rules = new LinkedHashMap<>();
        try (var parser = format.parse(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            for (CSVRecord row : parser) {
                rules.put(row.get("rule"), Rule.of(row));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return Map.copyOf(rules);
    }

    private record Rule(long numerator, long denominator, Length step, String words, String source) {
        static Rule of(CSVRecord row) {
            return new Rule(
                    Long.parseLong(row.get("numerator")),
                    Long.parseLong(row.get("denominator")),
                    Length.mm(row.get("step_mm")),
                    row.get("words"),
                    row.get("source"));
        }
    }
}
