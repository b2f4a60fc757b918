package scantling.checks.lasting;

/**
 * A beam of one section. Deflection by Wood Handbook (GTR-282) Eq. 9-1, k_b W L^3 / (E I) + k_s W L / (G A'), with W the
 * whole load. See docs/method/deflection.md.
 *
 * @param loading how it is loaded and held
 * @param span mm
 * @param section of it
 */
public record Beam(Loading loading, double span, Section section) {
    /** Deflection in mm when the load comes on. @param load all of it, N */
    public double deflection(double load) {
        return bends(load) + shears(load);
    }

    /** The part of it that is bending. */
    double bends(double load) {
        return loading.bending() * load * span * span * span / section.bending();
    }

    /** The part of it that is shear. */
    double shears(double load) {
        return loading.shear() * load * span / section.shear();
    }
}
