package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.space.Extent;
import scantling.space.Solid;

/**
 * How a piece stands: hand statics about its front feet. Each part weighs at the middle of its reach. See
 * docs/method/tipping.md.
 */
final class Balance {
    private final List<Weighed> weights = new ArrayList<>();
    private final List<Part> unweighed = new ArrayList<>();
    private final List<Drawers.Drawer> drawers;
    private final double frontFeet;
    private final double backFeet;

    /** @param mass kg @param extent of its wood */
    private record Weighed(Part part, double mass, Extent extent) {
        double middleUp() {
            return (extent.bottom() + extent.top()) / 2;
        }

        double middleDeep() {
            return (extent.front() + extent.back()) / 2;
        }
    }

    Balance(Assembly assembly, Woods woods, List<Drawers.Drawer> drawers) {
        this.drawers = drawers;
        List<Extent> extents = new ArrayList<>();
        for (Part part : assembly.parts()) {
            if (!part.box().isEmpty()) {
                Solid solid = part.solid();
                extents.add(solid.extent());
                weigh(part, solid, woods.findDensity(part));
            }
        }
        this.frontFeet = frontFeet(extents);
        this.backFeet = backFeet(extents);
    }

    private void weigh(Part part, Solid solid, OptionalDouble density) {
        density.ifPresentOrElse(
                kg -> weights.add(new Weighed(part, kg * 1e-9 * solid.volume(), solid.extent())),
                () -> unweighed.add(part));
    }

    private static double frontFeet(List<Extent> extents) {
        return feet(extents).mapToDouble(Extent::front).min().orElse(0);
    }

    private static double backFeet(List<Extent> extents) {
        return feet(extents).mapToDouble(Extent::back).max().orElse(0);
    }

    /** Parts that reach lowest. */
    private static Stream<Extent> feet(List<Extent> extents) {
        double floor = extents.stream().mapToDouble(Extent::bottom).min().orElse(0);
        return extents.stream().filter(extent -> extent.bottom() <= floor + Solid.TOLERANCE);
    }

    /** kg. */
    double mass() {
        return weights.stream().mapToDouble(Weighed::mass).sum();
    }

    List<Part> unweighed() {
        return unweighed;
    }

    /** Height of the centre of mass, mm. */
    double centreHeight() {
        return weights.stream()
                        .mapToDouble(each -> each.mass() * each.middleUp())
                        .sum()
                / mass();
    }

    /** What holds it down, all drawers shut: kg mm about the front feet. */
    double shut() {
        return weights.stream()
                .mapToDouble(each -> each.mass() * (each.middleDeep() - frontFeet))
                .sum();
    }

    /** What holds it down with all drawers open, kg mm. @param perDm3 kg of contents in each dm3 of drawer */
    double open(double perDm3) {
        double moment = shut();
        for (Drawers.Drawer drawer : drawers) {
            double own = weights.stream()
                    .filter(each -> drawer.parts().contains(each.part()))
                    .mapToDouble(Weighed::mass)
                    .sum();
            double contents = perDm3 * drawer.volume();
            double middle = (drawer.extent().front() + drawer.extent().back()) / 2 - frontFeet;
            moment += contents * middle - (own + contents) * drawer.opens();
        }
        return moment;
    }

    /**
     * What is left of a moment when the floor gives under the front: the standard raises the rear instead. Its weight
     * moves forward by its height times the slope.
     */
    double onSoftFloor(double moment) {
        double slope = Figures.of("soft floor raise") / Math.max(1, backFeet - frontFeet);
        return moment - mass() * centreHeight() * slope;
    }

    /** How far in front of the front feet the furthest drawer reaches when open, mm; zero when none does. */
    double reach() {
        return drawers.stream()
                .mapToDouble(drawer -> frontFeet - drawer.extent().front() + drawer.opens())
                .max()
                .stream()
                .map(reach -> Math.max(0, reach))
                .findFirst()
                .orElse(0);
    }
}
