package scantling.finishing;

/**
 * A number that is only known within bounds.
 *
 * @param low it will hardly be less
 * @param likely the most likely
 * @param high it will hardly be more
 */
public record Amount(double low, double likely, double high) {
    /** Nothing. */
    public static final Amount ZERO = exactly(0);

    /** Checks that the three are in order. */
    public Amount {
        if (!(low <= likely && likely <= high)) {
            throw new IllegalArgumentException(
                    "An amount must run upward, not (%s, %s, %s).".formatted(low, likely, high));
        }
    }

    /** A number known exactly. */
    public static Amount exactly(double value) {
        return new Amount(value, value, value);
    }

    /** From one to another, the middle most likely. */
    public static Amount between(double low, double high) {
        return new Amount(low, (low + high) / 2, high);
    }

    /** Both together, as if low fell with low: never narrower than the truth. */
    public Amount plus(Amount other) {
        return new Amount(low + other.low, likely + other.likely, high + other.high);
    }

    /** So many times it; not negative. */
    public Amount times(double factor) {
        return new Amount(low * factor, likely * factor, high * factor);
    }

    /** Whether it is one exact number. */
    public boolean isExact() {
        return low == high;
    }
}
