package scantling.checks.lasting;

import java.util.Locale;
import scantling.construct.Assembly;
import scantling.timber.Table;

/**
 * What is planned to lie on a shelf or a top.
 *
 * @param psf pounds on a square foot
 * @param use what it is
 * @param stays whether it stays for years
 * @param source who says so
 */
record PlannedLoad(double psf, String use, boolean stays, String source) {
    private static final Table LOADS = Table.read("checks/shelf-loads.csv");

    /** By the words of the piece's title and of a part's name. */
    static PlannedLoad of(Assembly assembly, String name) {
        String said = (assembly.piece().title() + " " + name).toLowerCase(Locale.ROOT);
        return LOADS.rows().stream()
                .filter(row -> Scope.says(said, row.text("word")))
                .findFirst()
                .map(row -> new PlannedLoad(
                        row.number("load_psf"),
                        row.text("use"),
                        row.text("stays").equals("yes"),
                        row.source()))
                .orElseThrow();
    }

    double pascal() {
        return SagRule.pascal(psf);
    }

    /** A rule as it counts for this load. */
    SagRule under(SagRule rule) {
        return stays ? rule : rule.withoutYears();
    }

    /** Who says how much lies there under a rule. */
    String sourceUnder(SagRule rule) {
        return rule.load().isPresent() ? rule.source() : source;
    }

    /** Pounds on a square foot under a rule. */
    long psfUnder(SagRule rule) {
        return Math.round(Shelf.load(rule, pascal()) / SagRule.pascal(1));
    }
}
