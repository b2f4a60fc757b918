package scantling.checks.lasting;

/**
 * How a beam is held at its two supports.
 *
 * @param turning what it takes to turn each end, N mm for each radian; nothing for ends that lie free, endless for
 *     ends held fast
 * @param past how far it runs on past each support, mm
 * @param takes share of the load that goes this way; the rest goes across, where it is held too
 */
public record Ends(double turning, double past, double takes) {
    /** Lying free, ending on the supports. */
    public static final Ends FREE = new Ends(0, 0, 1);
    /** Free to turn or held by springs, running past its supports or not, alone in taking the load. */
    public Ends(double turning, double past) {
        this(turning, past, 1);
    }

    /** Held so that they cannot turn. */
    public static final Ends FAST = new Ends(Double.POSITIVE_INFINITY, 0, 1);

    /**
     * Share of the bending sag that ends lying free would have, under an even load: (5 - 4/(1 + 2 E I/(k L)))/5 for ends
     * that turn against springs k, by slope-deflection; (5 - 24 (a/L)^2)/5 for a beam that runs on past its supports by
     * a, loaded there too (both closed forms of beam theory).
     *
     * @param bending E I, N mm2
     * @param span mm
     */
    double share(double bending, double span) {
        double held = turning == 0 ? 0 : 4 / (1 + 2 * bending / (turning * span));
        double beyond = past / span;
        return takes * Math.max(0, (5 - held - 24 * beyond * beyond) / 5);
    }
}
