package scantling.pricing;

import scantling.finishing.Amount;

/**
 * What the logged operations of one class took.
 *
 * @param operation the class
 * @param done how many of its operations are logged
 * @param all how many it has
 * @param planned hands-on minutes planned for those that are logged
 * @param minutes that they took
 */
public record Took(String operation, int done, int all, Amount planned, double minutes) {
    private static final double MINUTES = 60;

    /** Whether every operation of the class is logged. */
    boolean isWhole() {
        return done == all;
    }

    double hours() {
        return minutes / MINUTES;
    }

    Amount plannedHours() {
        return planned.times(1 / MINUTES);
    }

    String title() {
        return isWhole() ? operation : "%s, %d of %d logged".formatted(operation, done, all);
    }
}
