package scantling.checks.lasting;

/**
 * A board on two supports with one load in its middle. Millimetres, MPa, N.
 *
 * @param elasticity along the span
 * @param width of the board
 * @param thickness of the board
 * @param span clear
 * @param load in its middle
 */
record SatBoard(double elasticity, double width, double thickness, double span, double load) {
    double sag() {
        return new Beam(Loading.POINT_SUPPORTED, span, Section.rectangle(elasticity, width, thickness))
                .deflection(load);
    }

    /** Greatest bending stress, P L/4 over b t^2/6. */
    double stress() {
        return load * span / 4 / (width * thickness * thickness / 6);
    }

    SatBoard thick(double mm) {
        return new SatBoard(elasticity, width, mm, span, load);
    }
}
