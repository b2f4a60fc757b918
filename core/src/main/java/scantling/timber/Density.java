package scantling.timber;

import java.util.OptionalDouble;

/** Specific gravity and density of wood at a moisture content: Wood Handbook Eq. 4-13 and 4-14. */
public final class Density {
    private static final double SHRINKAGE = Constants.of("volumetric shrinkage per basic sg");
    /** The moisture content at which densities are tabulated, %. */
    static final double TABULATED = Constants.of("table moisture");

    private static final double WATER = Constants.of("water density");

    private Density() {}

    /** Specific gravity on the volume at this moisture, Eq. 4-13; above fibre saturation wood is as large as green. */
    public static Estimate gravity(double basicGravity, double moisture) {
        if (!(moisture >= 0)) {
            return new Estimate.Refused("A moisture content of %s %% is not possible.".formatted(moisture));
        }
        double dried = Math.max(0, 1 - moisture / Constants.FIBRE_SATURATION);
        return Estimate.known(basicGravity / (1 - SHRINKAGE * basicGravity * dried), "Wood Handbook Eq. 4-13");
    }

    /** kg/m3 from the specific gravity on the volume at this moisture, Eq. 4-14. */
    public static double ofGravity(double gravity, double moisture) {
        return WATER * gravity * (1 + moisture / 100);
    }

    /** kg/m3 at this moisture from the basic specific gravity (green volume), Eq. 4-13 and 4-14. */
    public static Estimate ofBasic(double basicGravity, double moisture) {
        Estimate gravity = gravity(basicGravity, moisture);
        return gravity instanceof Estimate.Known known
                ? Estimate.known(ofGravity(known.value(), moisture), "Wood Handbook Eq. 4-13 and 4-14")
                : gravity;
    }

    /** Basic specific gravity of wood that weighs this at a moisture: Eq. 4-13 and 4-14 solved for it. */
    static double basic(double kilogramsPerCubicMetre, double moisture) {
        double gravity = kilogramsPerCubicMetre / (WATER * (1 + moisture / 100));
        double dried = Math.max(0, 1 - moisture / Constants.FIBRE_SATURATION);
        return gravity / (1 + SHRINKAGE * gravity * dried);
    }

    /** kg/m3 of a wood at this moisture, from its basic specific gravity, else from its density at 12 %. */
    public static Estimate of(Species species, double moisture) {
        OptionalDouble basic = species.mechanics().basicGravity();
        OptionalDouble at12 = species.mechanics().densityAt12();
        if (basic.isEmpty() && at12.isEmpty()) {
            return new Estimate.Refused(
                    "Neither density nor specific gravity is known for %s.".formatted(species.name()));
        }
        return ofBasic(basic.orElseGet(() -> basic(at12.getAsDouble(), TABULATED)), moisture);
    }
}
