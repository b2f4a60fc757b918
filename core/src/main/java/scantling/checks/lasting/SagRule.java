package scantling.checks.lasting;

import java.util.List;
import java.util.OptionalDouble;
import scantling.construct.Finding;
import scantling.timber.Table;

/**
 * A limit for sag, by its own name: limits of different publishers are never mixed.
 *
 * @param name what it is called
 * @param spanOver the sag may be the span over this
 * @param most and never more than this, mm
 * @param load Pa on the shelf where the rule sets it, else the shelf's planning load counts
 * @param creeps whether years under load count
 * @param severity of passing it
 * @param source who says so
 */
public record SagRule(
        String name,
        double spanOver,
        OptionalDouble most,
        OptionalDouble load,
        boolean creeps,
        Finding.Severity severity,
        String source) {
    private static final List<SagRule> ALL =
            Table.read("checks/sag-rules.csv").rows().stream().map(SagRule::of).toList();

    private static SagRule of(Table.Row row) {
        return new SagRule(
                row.text("rule"),
                row.number("span_over"),
                row.findNumber("most_mm"),
                row.findNumber("load_psf").stream().map(SagRule::pascal).findFirst(),
                row.text("creeps").equals("yes"),
                Finding.Severity.valueOf(row.text("severity")),
                row.source());
    }

    /** The same for a load that does not stay. */
    SagRule withoutYears() {
        return new SagRule(name, spanOver, most, load, false, severity, source);
    }

    /** All of them, the gravest first. */
    public static List<SagRule> all() {
        return ALL;
    }

    /** How far a shelf of a span may sag, mm. @param span mm */
    public double allowed(double span) {
        return Math.min(span / spanOver, most.orElse(Double.POSITIVE_INFINITY));
    }

    /** Pa of pounds on a square foot. */
    static double pascal(double psf) {
        return psf * Figures.of("pascal per psf");
    }
}
