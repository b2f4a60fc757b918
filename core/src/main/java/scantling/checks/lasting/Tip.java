package scantling.checks.lasting;

import java.util.OptionalDouble;

/**
 * The edge of a board that runs on past its support, loaded there alone: what sinks it most. Each millimetre of its width
 * is taken as a beam. Millimetres and MPa.
 *
 * @param elasticity along the overhang
 * @param thickness of the board
 * @param reach of the overhang past the support
 * @param back clear span behind the support; nothing where it lies on a bed
 * @param creep how many times the first deflection it comes to in years
 */
record Tip(double elasticity, double thickness, double reach, double back, double creep) {
    /**
     * How far the edge sinks, mm: w a^3 (4 L + 3 a)/(24 E I), a beam that overhangs one support with an even load on the
     * overhang; with L = 0 a cantilever.
     */
    double sinks(double pascal, boolean aged) {
        Section section = Section.rectangle(elasticity, 1, thickness);
        double load = pascal * 1e-6;
        double bends = load * Math.pow(reach, 3) * (4 * back + 3 * reach) / (24 * section.bending());
        double shears = new Beam(Loading.UNIFORM_CANTILEVER, reach, section).shears(load * reach);
        return (bends + shears) * (aged ? creep : 1);
    }

    double sinks(SagRule rule, double planned) {
        return sinks(Shelf.load(rule, planned), rule.creeps());
    }

    double allowed(SagRule rule) {
        return rule.allowed(Figures.of("cantilever counts as") * reach);
    }

    boolean keeps(SagRule rule, double planned) {
        return sinks(rule, planned) <= allowed(rule);
    }

    OptionalDouble leastThickness(SagRule rule, double planned) {
        return Solve.least(
                thick -> new Tip(elasticity, thick, reach, back, creep).keeps(rule, planned),
                1,
                Figures.of("thickest shelf"));
    }

    OptionalDouble greatestReach(SagRule rule, double planned) {
        return Solve.greatest(less -> new Tip(elasticity, thickness, less, back, creep).keeps(rule, planned), 1, reach);
    }
}
