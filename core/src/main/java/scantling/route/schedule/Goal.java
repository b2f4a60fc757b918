package scantling.route.schedule;

import java.util.OptionalInt;

/**
 * What is to be done by when.
 *
 * @param name the job
 * @param task index of its last task
 * @param due tick of the clock by which that should have ended
 * @param weight how much being late matters against other jobs, at least 1
 */
public record Goal(String name, int task, OptionalInt due, int weight) {
    /** Checks the weight. */
    public Goal {
        if (weight < 1) {
            throw new IllegalArgumentException("The weight (%d) of (%s) must be 1 or more.".formatted(weight, name));
        }
    }
}
