package scantling.route.schedule;

/**
 * What a task takes up.
 *
 * @param capacity index of the capacity in its network
 * @param amount how much of it
 * @param during while it is worked on
 * @param after while it is held after the work: in clamps, drying; only by the clock
 */
public record Use(int capacity, int amount, boolean during, boolean after) {
    /** Taken up by the work alone. */
    public static Use during(int capacity, int amount) {
        return new Use(capacity, amount, true, false);
    }

    /** Taken up by the work and by what is held after it. */
    public static Use throughout(int capacity, int amount) {
        return new Use(capacity, amount, true, true);
    }

    /** Taken up only by what is held after the work. */
    public static Use after(int capacity, int amount) {
        return new Use(capacity, amount, false, true);
    }
}
