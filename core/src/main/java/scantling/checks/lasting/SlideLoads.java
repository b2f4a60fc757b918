package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.space.Axis;

/** Whether bought slides of the usual rating bear what a drawer may hold. */
final class SlideLoads {
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
            boolean heavy = holds > Figures.of("usual slide rating");
            if (heavy && runsOnSlides(drawer) && told.add(Math.round(holds * 10))) {
                findings.add(finding(drawer, holds));
            }
        }
        return findings;
    }

    /** What each drawer may carry, itself included where it runs on bought slides; those alike once. */
    List<Carrying> carry() {
        Map<String, List<Drawers.Drawer>> alike = new LinkedHashMap<>();
        drawers.forEach(drawer -> alike.computeIfAbsent(
                        "%.1f %b".formatted(spread(drawer), runsOnSlides(drawer)), key -> new ArrayList<>())
                .add(drawer));
        return alike.values().stream().map(this::carrying).toList();
    }

    private Carrying carrying(List<Drawers.Drawer> alike) {
        double spread = spread(alike.get(0));
        double rating = Figures.of("usual slide rating");
        boolean slides = runsOnSlides(alike.get(0)) && rating < spread;
        double most = slides ? rating : spread;
        return new Carrying(
                alike.stream().map(Drawers.Drawer::path).toList(),
                most,
                most,
                slides
                        ? "the usual rating of slides, the drawer itself included"
                        : "the cabinet test's load on its floor",
                Figures.sourceOf(slides ? "usual slide rating" : "drawer load"));
    }

    private boolean runsOnSlides(Drawers.Drawer drawer) {
        return assembly.fittings().stream()
                .filter(fitting -> fitting.path().startsWith(drawer.path() + " / "))
                .anyMatch(fitting -> fitting.what().toLowerCase(Locale.ROOT).contains("slide"));
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

    private static Finding finding(Drawers.Drawer drawer, double holds) {
        return new Finding(
                        Finding.Severity.CAUTION,
                        drawer.path(),
                        "%s may come to hold %s; slides of the usual rating bear %s."
                                .formatted(drawer.path(), Say.mass(holds), Say.mass(Figures.of("usual slide rating"))),
                        List.of(),
                        "%s; %s; rating: %s"
                                .formatted(
                                        Figures.sourceOf("drawer load"),
                                        Figures.sourceOf("clothing density"),
                                        Figures.sourceOf("usual slide rating")),
                        "Buy slides rated for it at this length, or make two drawers of it.")
                .by("slides");
    }
}
