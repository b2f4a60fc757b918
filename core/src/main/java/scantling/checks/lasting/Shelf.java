package scantling.checks.lasting;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import scantling.checks.lasting.Section.Strip;

/**
 * A shelf as a beam between two supports. Millimetres and MPa.
 *
 * @param elasticity of the board along the span
 * @param width across the span
 * @param thickness of the board
 * @param span clear between supports
 * @param lippings glued along it, their bottoms measured from the board's
 * @param creep how many times the first sag it comes to in years
 * @param ends how it is held at its supports
 * @param pins the pins it lies on
 */
public record Shelf(
        double elasticity,
        double width,
        double thickness,
        double span,
        List<Strip> lippings,
        double creep,
        Ends ends,
        Pins pins) {
    private static final double LEAST = 1;
    private static final double LONGEST = 10_000;

    /** A shelf on pins bends across between them however short it is, mm. */
    private static final double SHORTEST = 100;

    /** Takes its own copy. */
    public Shelf {
        lippings = List.copyOf(lippings);
    }

    /** One that lies free on its supports and ends there. */
    public Shelf(double elasticity, double width, double thickness, double span, List<Strip> lippings, double creep) {
        this(elasticity, width, thickness, span, lippings, creep, Ends.FREE, Pins.NONE);
    }

    /** The same held otherwise. */
    public Shelf held(Ends other) {
        return new Shelf(elasticity, width, thickness, span, lippings, creep, other, pins);
    }

    /** The same on pins. */
    public Shelf on(Pins other) {
        return new Shelf(elasticity, width, thickness, span, lippings, creep, ends, other);
    }

    /** Sag in mm under a load spread evenly. @param pascal load on its area @param aged whether after years */
    public double sag(double pascal, boolean aged) {
        List<Strip> strips = new ArrayList<>(lippings);
        strips.add(new Strip(elasticity, width, thickness, 0));
        double wide = width + lippings.stream().mapToDouble(Strip::width).sum();
        Section section = Section.of(strips);
        Beam beam = new Beam(Loading.UNIFORM_SUPPORTED, span, section);
        double load = pascal * 1e-6 * wide * span;
        double sag = beam.bends(load) * ends.share(section.bending(), span)
                + beam.shears(load)
                + pins.sinks(pascal, span, width, thickness);
        return sag * (aged ? creep : 1);
    }

    /** The load a rule is held against, Pa. @param planned where the rule sets none */
    static double load(SagRule rule, double planned) {
        return rule.load().orElse(planned);
    }

    /** Sag under the rule's load, mm. @param planned Pa where the rule sets none */
    public double sag(SagRule rule, double planned) {
        return sag(load(rule, planned), rule.creeps());
    }

    /** Whether it keeps a rule. @param planned Pa where the rule sets none */
    public boolean keeps(SagRule rule, double planned) {
        return sag(rule, planned) <= rule.allowed(span);
    }

    /** The least thickness in mm that keeps the rule, the rest as it is. */
    public OptionalDouble leastThickness(SagRule rule, double planned) {
        return Solve.least(thick -> thick(thick).keeps(rule, planned), LEAST, Figures.of("thickest shelf"));
    }

    /** The greatest span in mm that keeps the rule, the rest as it is. */
    public OptionalDouble greatestSpan(SagRule rule, double planned) {
        double low = keeps(rule, planned) ? span : SHORTEST;
        return Solve.greatest(
                longer -> new Shelf(elasticity, width, thickness, longer, lippings, creep, ends, pins)
                        .keeps(rule, planned),
                low,
                LONGEST);
    }

    /** The least depth in mm of a hardwood lipping along one edge, its top flush, that keeps the rule. */
    public OptionalDouble lippingDepth(SagRule rule, double planned) {
        return Solve.least(deep -> lipped(deep).keeps(rule, planned), thickness, Figures.of("deepest lipping"));
    }

    /** The same of another thickness, mm. */
    Shelf thick(double other) {
        return new Shelf(elasticity, width, other, span, lippings, creep, ends, pins);
    }

    private Shelf lipped(double deep) {
        double stiff = 1000 * Figures.of("lipping elasticity");
        Strip strip = new Strip(stiff, Figures.of("lipping thickness"), deep, thickness - deep);
        return new Shelf(elasticity, width, thickness, span, List.of(strip), creep, ends, pins);
    }
}
