package scantling.checks.frame;

import scantling.checks.lasting.Section;

/**
 * What a bar resists by its section.
 *
 * @param axial E A, N
 * @param flat E I when it bends in the direction of its depth across the section's width, N mm2
 * @param upright E I when it bends in the direction of its width, N mm2
 * @param twist G J, N mm2
 * @param shear G A', N
 */
record Profile(double axial, double flat, double upright, double twist, double shear) {
    /**
     * A rectangle. The twisting constant is Saint-Venant's series in its usual short form, a b^3 (1/3 - 0.21 b/a (1 -
     * b^4/(12 a^4))), within 0.5 % for every ratio.
     *
     * @param elasticity MPa
     * @param rigidity shear modulus, MPa
     */
    static Profile rectangle(double elasticity, double rigidity, double width, double depth) {
        double a = Math.max(width, depth);
        double b = Math.min(width, depth);
        double ratio = b / a;
        double torsion = a * b * b * b * (1.0 / 3 - 0.21 * ratio * (1 - Math.pow(ratio, 4) / 12));
        return new Profile(
                elasticity * width * depth,
                elasticity * width * depth * depth * depth / 12,
                elasticity * depth * width * width * width / 12,
                rigidity * torsion,
                Section.shearArea() * rigidity * width * depth);
    }
}
