package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.timber.Movement;

/** Whether a piece will last: sag, movement, tipping. Screens by published numbers; it certifies nothing. */
public final class LastingChecks {
    private LastingChecks() {}

    /** All findings for a usual home and a usual shop, the gravest first. */
    public static List<Finding> check(Assembly assembly) {
        return check(assembly, Climate.usual(), Figures.of("shop moisture"));
    }

    /**
     * All findings, the gravest first. A climate or moisture that cannot be is itself a finding.
     *
     * @param home the air of the home through the year
     * @param shop moisture content in % at which the parts are made
     */
    public static List<Finding> check(Assembly assembly, Climate home, double shop) {
        Woods woods = Woods.standard();
        List<Finding> findings = new ArrayList<>(new ShelfCheck(assembly, woods).check());
        findings.addAll(moving(assembly, woods, home, shop));
        findings.addAll(new TippingCheck(assembly, woods).check());
        findings.sort(Comparator.comparing(Finding::severity));
        return List.copyOf(findings);
    }

    private static List<Finding> moving(Assembly assembly, Woods woods, Climate home, double shop) {
        List<String> refusals = home.refusals();
        // Any shrinkage shows whether the formula takes the moisture content.
        List<String> remarks = Movement.wide(1, shop, shop).remarks();
        Optional<Climate.Range> range = home.findRange();
        if (range.isEmpty() || !remarks.isEmpty()) {
            return List.of(refused(assembly, home, range.isEmpty() ? refusals.get(0) : remarks.get(0)));
        }
        return new MovementCheck(assembly, new Movements(woods, shop, range.get())).check();
    }

    /** How each solid part moves; parts of a wood without data, and all parts in a climate that cannot be, are left out. */
    public static List<Moving> movements(Assembly assembly, Climate home, double shop) {
        return home.findRange()
                .map(year -> new Movements(Woods.standard(), shop, year).all(assembly))
                .orElse(List.of());
    }

    private static Finding refused(Assembly assembly, Climate home, String reason) {
        return new Finding(
                Finding.Severity.CAUTION,
                assembly.piece().title(),
                reason + " Movement was not judged.",
                List.of(),
                home.source(),
                "Put the climate (%s) or the moisture of the wood right.".formatted(home.name()));
    }
}
