package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.space.Extent;
import scantling.space.Solid;

/**
 * How a piece stands: hand statics about its front feet. Each part weighs at the middle of its reach. See
 * docs/method/tipping.md.
 */
final class Balance {
    private final Map<Part, Double> masses = new LinkedHashMap<>();
    private final List<Part> unweighed = new ArrayList<>();
    private final List<Drawers.Drawer> drawers;
    private final double frontFeet;

    Balance(Assembly assembly, Woods woods, List<Drawers.Drawer> drawers) {
        this.drawers = drawers;
        List<Part> parts =
                assembly.parts().stream().filter(part -> !part.box().isEmpty()).toList();
        for (Part part : parts) {
            OptionalDouble density = woods.findDensity(part);
            density.ifPresentOrElse(kg -> masses.put(part, kg * 1e-9 * solid(part).volume()), () -> unweighed.add(part));
        }
        double floor = parts.stream().mapToDouble(part -> solid(part).extent().bottom()).min().orElse(0);
        this.frontFeet = parts.stream()
                .map(part -> solid(part).extent())
                .filter(extent -> extent.bottom() <= floor + Solid.TOLERANCE)
                .mapToDouble(Extent::front)
                .min()
                .orElse(0);
    }

    private static Solid solid(Part part) {
        return Solid.of(part.box(), part.lie(), part.outline(), part.turn());
    }

    /** kg. */
    double mass() {
        return masses.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    List<Part> unweighed() {
        return unweighed;
    }

    /** Height of the centre of mass, mm. */
    double centreHeight() {
        return masses.entrySet().stream()
                        .mapToDouble(entry -> entry.getValue() * middleUp(entry.getKey()))
                        .sum()
                / mass();
    }

    private static double middleUp(Part part) {
        Extent extent = solid(part).extent();
        return (extent.bottom() + extent.top()) / 2;
    }

    private double behindFeet(Part part) {
        Extent extent = solid(part).extent();
        return (extent.front() + extent.back()) / 2 - frontFeet;
    }

    /** What holds it down, all drawers shut: kg mm about the front feet. */
    double shut() {
        return masses.entrySet().stream()
                .mapToDouble(entry -> entry.getValue() * behindFeet(entry.getKey()))
                .sum();
    }

    /** What holds it down with all drawers open, kg mm. @param perDm3 kg of contents in each dm3 of drawer */
    double open(double perDm3) {
        double moment = shut();
        for (Drawers.Drawer drawer : drawers) {
            double own = drawer.parts().stream()
                    .mapToDouble(part -> masses.getOrDefault(part, 0.0))
                    .sum();
            double contents = perDm3 * drawer.volume();
            double middle = (drawer.extent().front() + drawer.extent().back()) / 2 - frontFeet;
            moment += contents * middle - (own + contents) * drawer.opens();
        }
        return moment;
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
