package scantling.checks.lasting;

/**
 * Four pins a shelf lies on, set in from its front and back edges: each end then bends across, between its two pins.
 *
 * @param setIn from each edge of the shelf to its pins, mm
 * @param across stiffness of the shelf across its span, MPa
 */
public record Pins(double setIn, double across) {
    /** Ends that lie on something along their whole width. */
    public static final Pins NONE = new Pins(0, Double.POSITIVE_INFINITY);

    /**
     * How far the middle of an end sinks below its pins, mm: the end as a strip, half as wide as the lesser of span and
     * width, that takes the half of the load which comes to it. For a square plate on its four corners this, with the
     * sag along the span, lies a tenth above the plate theory.
     *
     * @param pascal load on the shelf
     * @param span mm
     * @param width of the shelf, mm
     * @param thickness mm
     */
    double sinks(double pascal, double span, double width, double thickness) {
        double between = width - 2 * setIn;
        if (Double.isInfinite(across) || between <= 0) {
            return 0;
        }
        Section strip = Section.rectangle(across, Math.min(span, width) / 2, thickness);
        double load = pascal * 1e-6 * span / 2 * between;
        Beam beam = new Beam(Loading.UNIFORM_SUPPORTED, between, strip);
        return beam.bends(load) * new Ends(0, setIn).share(strip.bending(), between) + beam.shears(load);
    }
}
