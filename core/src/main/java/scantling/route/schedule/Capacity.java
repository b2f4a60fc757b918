package scantling.route.schedule;

/**
 * Something there is only so much of.
 *
 * @param name what it is: hands, bench places, clamps of 900 mm and longer
 * @param amount how many there are
 * @param axis in which time it is taken up
 */
public record Capacity(String name, int amount, Axis axis) {
    /** In which time a capacity is taken up. */
    public enum Axis {
        /** Only while someone works: a pair of hands is not taken up over night. */
        WORKED,
        /** By the clock: what is clamped stays clamped over night. */
        CLOCK
    }

    /** Checks the amount. */
    public Capacity {
        if (amount < 0) {
            throw new IllegalArgumentException("There cannot be (%d) of (%s).".formatted(amount, name));
        }
    }
}
