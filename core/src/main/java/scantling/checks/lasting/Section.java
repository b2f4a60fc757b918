package scantling.checks.lasting;

import java.util.List;

/**
 * How stiff the section of a beam is. Strips of different stiffness are taken together by the transformed section: each
 * counts by its own modulus about the common neutral axis (parallel-axis rule).
 *
 * @param bending E I in N mm2
 * @param shear G A' in N
 */
public record Section(double bending, double shear) {
    private static final double SHEAR_MODULUS = Figures.of("shear modulus share");
    private static final double SHEAR_AREA = Figures.of("shear area share");

    /**
     * One rectangle of a section.
     *
     * @param elasticity MPa
     * @param width mm, level
     * @param height mm, upright
     * @param bottom mm above any one line for all strips
     */
    public record Strip(double elasticity, double width, double height, double bottom) {
        private double axial() {
            return elasticity * width * height;
        }

        private double middle() {
            return bottom + height / 2;
        }

        private double bendingAbout(double axis) {
            double away = middle() - axis;
            return elasticity * width * height * height * height / 12 + axial() * away * away;
        }
    }

    /** How much of a rectangle's area resists shear. */
    public static double shearArea() {
        return SHEAR_AREA;
    }

    /** Shear modulus in MPa where only the modulus along the grain is known. */
    public static double rigidity(double elasticity) {
        return SHEAR_MODULUS * elasticity;
    }

    /** A rectangle. @param elasticity MPa @param width mm @param height mm, upright */
    public static Section rectangle(double elasticity, double width, double height) {
        return of(List.of(new Strip(elasticity, width, height, 0)));
    }

    /** Strips glued to each other. Shear is shared by their areas, G = E/16 each, A' = 5/6 A. */
    public static Section of(List<Strip> strips) {
        double axial = strips.stream().mapToDouble(Strip::axial).sum();
        double axis = strips.stream()
                        .mapToDouble(strip -> strip.axial() * strip.middle())
                        .sum()
                / axial;
        double bending =
                strips.stream().mapToDouble(strip -> strip.bendingAbout(axis)).sum();
        return new Section(bending, SHEAR_MODULUS * SHEAR_AREA * axial);
    }
}
