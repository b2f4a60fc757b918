package scantling.timber;

/** Specific gravity and density of wood at a moisture content: Wood Handbook Eq. 4-13 and 4-14. */
public final class Density {
    private static final double SHRINKAGE = Constants.of("volumetric shrinkage per basic sg");
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

    /** kg/m3 of a wood at this moisture. */
    public static Estimate of(Species species, double moisture) {
        return species.mechanics().basicGravity().isPresent()
                ? ofBasic(species.mechanics().basicGravity().getAsDouble(), moisture)
                : new Estimate.Refused("No specific gravity is known for %s.".formatted(species.name()));
    }
}
