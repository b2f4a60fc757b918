package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.timber.Table;

/** Whether the slides of each drawer bear what it may hold, by its floor and by its volume. */
final class SlideLoads {
    private static final Table RATINGS = Table.read("checks/slide-ratings.csv");

    private final Assembly assembly;
    private final List<Drawers.Drawer> drawers;

    SlideLoads(Assembly assembly, List<Drawers.Drawer> drawers) {
        this.assembly = assembly;
        this.drawers = drawers;
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Set<Long> told = new HashSet<>();
        for (Drawers.Drawer drawer : drawers) {
            double holds = holds(drawer);
            slides(drawer)
                    .map(this::rating)
                    .filter(row -> holds > row.number("kg") && told.add(Math.round(holds * 10)))
                    .ifPresent(row -> findings.add(finding(drawer, holds, row)));
        }
        return findings;
    }

    private Optional<Fitting> slides(Drawers.Drawer drawer) {
        return assembly.fittings().stream()
                .filter(fitting -> fitting.path().startsWith(drawer.path() + " / "))
                .filter(fitting -> fitting.what().toLowerCase(Locale.ROOT).contains("slide"))
                .findFirst();
    }

    /** Of its profile, else of any. */
    private Table.Row rating(Fitting slides) {
        String profile = slides.words().getOrDefault("profile", "");
        return RATINGS.findRow("profile", profile).orElseGet(() -> RATINGS.getRow("profile", "any other"));
    }

    /** The drawer load of the cabinet test on its floor, or clothes to its rim where it may hold them; kg, the greater. */
    private double holds(Drawers.Drawer drawer) {
        double area = drawer.parts().stream()
                .filter(part -> part.lie().thickness() == Axis.UP)
                .mapToDouble(SlideLoads::area)
                .max()
                .orElse(0);
        double spread = SagRule.pascal(Figures.of("drawer load")) * 1e-6 * area / Figures.of("gravity");
        double clothes = Scope.mayHoldClothes(assembly.piece().title())
                ? Figures.of("clothing density") / 1000 * drawer.volume()
                : 0;
        return Math.max(spread, clothes);
    }

    private static double area(Part floor) {
        return Parts.mm(floor.box().extent(Axis.ACROSS)) * Parts.mm(floor.box().extent(Axis.DEEP));
    }

    private static Finding finding(Drawers.Drawer drawer, double holds, Table.Row rating) {
        return new Finding(
                        Finding.Severity.CAUTION,
                        drawer.path(),
                        "%s holds %.0f dm3 (%.1f ft3) and may come to hold %s; slides of this kind bear %s a pair."
                                .formatted(
                                        drawer.path(),
                                        drawer.volume(),
                                        drawer.volume() / 28.3168466,
                                        Say.mass(holds),
                                        Say.mass(rating.number("kg"))),
                        List.of(),
                        "%s; %s; rating: %s"
                                .formatted(
                                        Figures.sourceOf("drawer load"),
                                        Figures.sourceOf("clothing density"),
                                        rating.source()),
                        "Buy slides rated for it at this length, or make two drawers of it.")
                .by("slides");
    }
}
