package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.piece.Conditions;
import scantling.piece.Spelling;

/** Whether a piece will last: sag, movement, tipping. Screens by published numbers; it certifies nothing. */
public final class LastingChecks {
    private final Assembly assembly;
    private final Woods woods = Woods.standard();

    private LastingChecks(Assembly assembly) {
        this.assembly = assembly;
    }

    /** All findings for the home and the wood as the maker tells them, else a usual home and shop; the gravest first. */
    public static List<Finding> check(Assembly assembly) {
        Conditions conditions = assembly.piece().conditions();
        List<Finding> unknown = new ArrayList<>();
        conditions.home().filter(home -> Climate.of(home).isEmpty()).ifPresent(home -> unknown.add(unknown(home)));
        Wetness shop = shop(assembly);
        conditions.shop().map(Climate::own).map(Climate::refusals).orElse(List.of()).stream()
                .limit(1)
                .forEach(reason -> unknown.add(noShop(assembly, reason)));
        return new LastingChecks(assembly).check(climate(assembly), shop, unknown);
    }

    /**
     * All findings, the gravest first. A climate or moisture that cannot be is itself a finding.
     *
     * @param home the air of the home through the year
     * @param shop moisture content in % at which the parts are made
     */
    public static List<Finding> check(Assembly assembly, Climate home, double shop) {
        return new LastingChecks(assembly).check(home, Wetness.everywhere(shop), List.of());
    }

    /** The home as the maker tells it, else a usual one. */
    public static Climate climate(Assembly assembly) {
        return assembly.piece().conditions().home().flatMap(Climate::of).orElseGet(Climate::usual);
    }

    /** How wet parts are when they are made: as measured, else as the shop's air makes wood, else as lumber is sold. */
    static Wetness shop(Assembly assembly) {
        Conditions conditions = assembly.piece().conditions();
        return conditions
                .shop()
                .map(Climate::own)
                .flatMap(Climate::findRange)
                .map(range -> new Wetness(conditions, range.driest()))
                .orElseGet(() -> Wetness.measured(conditions));
    }

    private static Finding noShop(Assembly assembly, String reason) {
        return new Finding(
                Finding.Severity.CAUTION,
                assembly.piece().title(),
                reason + " The shop's air was not counted.",
                List.of(),
                "Wood Handbook Eq. 4-5",
                "Put the shop's temperature and humidity right.");
    }

    private List<Finding> check(Climate home, Wetness shop, List<Finding> already) {
        List<Finding> findings = new ArrayList<>(already);
        findings.addAll(new ShelfCheck(assembly, woods).check());
        findings.addAll(new Overhangs(assembly, woods).check());
        findings.addAll(new DrawerFloors(assembly, woods).check());
        findings.addAll(new Seats(assembly, woods).check());
        findings.addAll(new Rails(assembly, woods).check());
        findings.addAll(new MoistureCheck(assembly, woods).check(home, shop));
        findings.addAll(new TippingCheck(assembly, woods).check());
        findings.sort(Comparator.comparing(Finding::severity));
        return List.copyOf(findings);
    }

    private static Finding unknown(Conditions.Home home) {
        String names = String.join(", ", Climate.names());
        return new Finding(
                Finding.Severity.CAUTION,
                "home",
                "No climate is called \"%s\" (line %d); a %s was taken."
                        .formatted(
                                home.name(), home.span().line(), Climate.usual().name()),
                List.of(),
                "the table of climates",
                ("%s Known are: %s; or give temperature and humidity by month."
                                .formatted(Spelling.maybe(home.name(), Climate.names()), names))
                        .strip());
    }

    /** How each solid part moves; parts of a wood without data, and all parts in a climate that cannot be, are left out. */
    public static List<Moving> movements(Assembly assembly, Climate home, double shop) {
        return home.findRange()
                .map(year -> new Movements(Woods.standard(), Wetness.everywhere(shop), year).all(assembly))
                .orElse(List.of());
    }

    /** The same for the home and the wood as the maker tells them. */
    public static List<Moving> movements(Assembly assembly) {
        Wetness shop = shop(assembly);
        Optional<Climate.Range> range = climate(assembly).findRange();
        return range.map(year -> new Movements(Woods.standard(), shop, year).all(assembly))
                .orElse(List.of());
    }
}
