package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    /** What each drawer may carry, itself included where it runs on bought slides; those alike once. */
    List<Carrying> carry() {
        Map<String, List<Drawers.Drawer>> alike = new LinkedHashMap<>();
        drawers.forEach(drawer -> alike.computeIfAbsent(
                        "%.1f %s"
                                .formatted(
                                        spread(drawer),
                                        slides(drawer).map(this::rating).map(row -> row.text("kg"))),
                        key -> new ArrayList<>())
                .add(drawer));
        return alike.values().stream().map(this::carrying).toList();
    }

    private Carrying carrying(List<Drawers.Drawer> alike) {
        double spread = spread(alike.get(0));
        List<String> paths = alike.stream().map(Drawers.Drawer::path).toList();
        return slides(alike.get(0))
                .map(this::rating)
                .filter(row -> row.number("kg") < spread)
                .map(row -> new Carrying(
                        paths,
                        row.number("kg"),
                        row.number("kg"),
                        "the usual rating of slides, the drawer itself included",
                        row.source()))
                .orElseGet(() -> new Carrying(
                        paths,
                        spread,
                        spread,
                        "the cabinet test's load on its floor",
                        Figures.sourceOf("drawer load")));
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
        double spread = spread(drawer);
        double clothes = Scope.mayHoldClothes(assembly.piece().title())
                ? Figures.of("clothing density") / 1000 * drawer.volume()
                : 0;
        return Math.max(spread, clothes);
    }

    /** The drawer load of the cabinet test on its floor, kg. */
    private static double spread(Drawers.Drawer drawer) {
        double area = drawer.parts().stream()
                .filter(part -> part.lie().thickness() == Axis.UP)
                .mapToDouble(SlideLoads::area)
                .max()
                .orElse(0);
        return Carrying.mass(SagRule.pascal(Figures.of("drawer load")), area);
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
