package scantling.route;

/**
 * A time from the maker's own log.
 *
 * @param work the time standard it belongs to
 * @param amount how much was done, in the standard's unit
 * @param minutes how long it took, set-up included
 */
public record Logged(String work, double amount, double minutes) {
    /** Checks that something was done in some time. */
    public Logged {
        if (!(amount > 0 && minutes > 0)) {
            throw new IllegalArgumentException(
                    "Of (%s), (%s) in (%s) minutes cannot be learned from.".formatted(work, amount, minutes));
        }
    }
}
