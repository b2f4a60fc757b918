package scantling.timber;

/** How strength changes with moisture: Wood Handbook Eq. 5-3. Not for work to maximum load, nor tension across the grain. */
public final class Strength {
    private static final String FORMULA = "Wood Handbook Eq. 5-3";
    private static final double REFERENCE = Constants.of("strength reference");
    private static final Table INTERSECTIONS = Table.read("timber/strength-intersection.csv");

    private Strength() {}

    /** The moisture content in % below which strength begins to rise as a wood dries; 25 where none is tabulated. */
    public static double intersection(Species species) {
        return INTERSECTIONS
                .findRow("species", species.name())
                .map(row -> row.number("mc_pct"))
                .orElseGet(() -> Constants.of("strength intersection"));
    }

    /**
     * A property at a moisture content, in the unit in which it is given.
     *
     * @param at12 the property at 12 %
     * @param green the property of green wood
     * @param intersection see {@link #intersection}
     * @param moisture in %; at or above the intersection the green value holds
     */
    public static Estimate at(double at12, double green, double intersection, double moisture) {
        if (!(at12 > 0 && green > 0 && intersection > REFERENCE && moisture >= 0)) {
            return new Estimate.Refused(
                    "Strength at %s %% moisture cannot be worked out from %s at 12 %% and %s green, meeting at %s %%."
                            .formatted(moisture, at12, green, intersection));
        }
        double exponent = (REFERENCE - moisture) / (intersection - REFERENCE);
        return Estimate.known(moisture >= intersection ? green : at12 * Math.pow(at12 / green, exponent), FORMULA);
    }
}
