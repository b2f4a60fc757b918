package scantling.route.schedule;

/**
 * How hard to look for a better timetable.
 *
 * @param steps how often the order of the first timetable is changed to better it
 * @param solver how much the constraint solver may do, in its own units that do not depend on the machine's speed; 0 leaves
 *     it out
 * @param seconds the most time by the clock for the solver; only where a run need not be repeatable is it the limit that
 *     counts
 * @param threads on how many threads the solver looks
 * @param seed where the search begins; the same seed looks the same way
 */
public record Effort(int steps, double solver, double seconds, int threads, long seed) {
    private static final double LONG = 600;

    /** The first sound timetable only: a few hundredths of a second. */
    public static final Effort FIRST = new Effort(20, 0, 0, 1, 1);

    /** About two seconds for a few jobs, and the same answer every time. */
    public static final Effort USUAL = new Effort(2_000, 0.4, LONG, 1, 1);

    /** Some more seconds, and the same answer every time. */
    public static final Effort THOROUGH = new Effort(2_000, 2, LONG, 1, 1);

    /** As long as the clock says, on several threads; the answer depends on the machine. */
    public static Effort until(double seconds, int threads) {
        return new Effort(2_000, Double.MAX_VALUE, seconds, threads, 1);
    }

    /** Checks that nothing is negative. */
    public Effort {
        if (steps < 0 || solver < 0 || seconds < 0 || threads < 1) {
            throw new IllegalArgumentException(
                    "An effort of (%d, %s, %s, %d) cannot be made.".formatted(steps, solver, seconds, threads));
        }
    }
}
