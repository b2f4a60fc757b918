package scantling.cutting;

/**
 * How hard to search. A step is one attempt to take a few parts out and put them back better.
 *
 * @param steps the most steps to take; 0 gives the first plan only
 * @param seed the same seed and steps give the same plan
 */
public record Effort(long steps, long seed) {
    public Effort {
        if (steps < 0) {
            throw new IllegalArgumentException("Steps (%d) must not be less than zero.".formatted(steps));
        }
    }

    /** No limit of steps: the caller stops the search. */
    public static Effort untilStopped(long seed) {
        return new Effort(Long.MAX_VALUE, seed);
    }
}
