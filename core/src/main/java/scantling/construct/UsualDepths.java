package scantling.construct;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.timber.Table;

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
        Map<String, Rule> rules = new HashMap<>();
        Table.read("construct/usual-depths.csv").rows().forEach(row -> rules.put(row.text("rule"), Rule.of(row)));
        return Map.copyOf(rules);
    }

    private record Rule(long numerator, long denominator, Length step, String words, String source) {
        static Rule of(Table.Row row) {
            return new Rule(
                    Long.parseLong(row.text("numerator")),
                    Long.parseLong(row.text("denominator")),
                    Length.mm(row.text("step_mm")),
                    row.text("words"),
                    row.source());
        }
    }
}
