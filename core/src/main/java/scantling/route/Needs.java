package scantling.route;

import scantling.measure.Length;

/**
 * What an operation takes up besides hands.
 *
 * @param bench whether it takes a bench place, and keeps it while glue sets
 * @param clamps how many clamps it keeps while glue sets
 * @param clampLength how long they must be at least
 * @param spray whether it takes the place to spray
 * @param drying drying places that its parts take after it
 * @param dryingRoom square metres that its parts take after it, laid flat or standing as they are glued together
 * @param holdHours how long after the work bench place, clamps and drying places stay taken
 * @param unbroken whether no break may fall into it
 */
public record Needs(
        boolean bench,
        int clamps,
        Length clampLength,
        boolean spray,
        int drying,
        double dryingRoom,
        double holdHours,
        boolean unbroken) {
    /** Only hands. */
    public static final Needs HANDS = new Needs(false, 0, Length.ZERO, false, 0, 0, 0, false);

    /** A glue-up, which keeps its bench place and clamps while the glue sets, and is not broken off. */
    public static Needs gluing(int clamps, Length clampLength, double holdHours) {
        return new Needs(true, clamps, clampLength, false, 0, 0, holdHours, true);
    }

    /** A coat, whose parts take a drying place until the next. @param room square metres they take up */
    public static Needs coating(boolean spray, double room, double holdHours) {
        return new Needs(false, 0, Length.ZERO, spray, 1, room, holdHours, true);
    }

    /** Hands at a bench. */
    public static final Needs BENCH = new Needs(true, 0, Length.ZERO, false, 0, 0, 0, false);
}
