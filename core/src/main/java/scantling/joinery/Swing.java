package scantling.joinery;

import scantling.timber.InService;

/**
 * Between what moistures the wood of a piece lives.
 *
 * @param driest % of the dry mass
 * @param dampest likewise
 * @param source who says so
 */
public record Swing(double driest, double dampest, String source) {
    /** Interior woodwork where nothing is known of the home: the first line of the table. */
    public static Swing usual() {
        InService usual = InService.all().get(0);
        return new Swing(usual.least(), usual.most(), usual.source());
    }
}
