package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Finding;

/**
 * What a shelf or a drawer may carry, spread evenly.
 *
 * @param parts what carries alike: paths of shelves or of drawers
 * @param kilograms at most: what it was checked for, or less where a rule or a slide allows less
 * @param straight up to which a shelf is not seen to sag even after years; the same as the most where no such rule is known
 * @param why what sets the most
 * @param source who says so
 */
public record Carrying(List<String> parts, double kilograms, double straight, String why, String source) {
    /** Takes its own copy. */
    public Carrying {
        parts = List.copyOf(parts);
    }

    /** Shelves first, then drawers; what no number is known for is left out. */
    public static List<Carrying> of(Assembly assembly) {
        Woods woods = Woods.standard();
        List<Carrying> all = new ArrayList<>(new ShelfCheck(assembly, woods).carry());
        List<Drawers.Drawer> drawers = new Drawers(assembly).all();
        all.addAll(new SlideLoads(assembly, drawers).carry());
        return List.copyOf(all);
    }

    /** What shelves alike may carry. @param area of one, mm2 @param load what they are for */
    static Carrying shelves(List<String> paths, Shelf shelf, double area, PlannedLoad load) {
        double most = load.pascal();
        double straight = most;
        String why = "checked for %s".formatted(load.use());
        String source = load.source();
        for (SagRule each : SagRule.all()) {
            SagRule rule = load.under(each);
            double bears = rule.allowed(shelf.span()) / shelf.sag(1, rule.creeps());
            straight = Math.min(straight, bears);
            // A rule with a load of its own says nothing of other loads.
            if (rule.load().isEmpty() && rule.severity() != Finding.Severity.NOTE && bears < most) {
                most = bears;
                why = rule.name();
                source = rule.source();
            }
        }
        return new Carrying(paths, mass(most, area), mass(straight, area), why, source);
    }

    /** Mass that presses so much on so many square millimetres, kg. */
    static double mass(double pascal, double area) {
        return pascal * 1e-6 * area / Figures.of("gravity");
    }
}
