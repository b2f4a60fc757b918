package scantling.route;

/**
 * How long hands are needed, in minutes.
 *
 * @param low what one time in ten is not longer than
 * @param likely as often shorter as longer
 * @param high what nine times in ten is not longer than
 */
public record Minutes(double low, double likely, double high) {
    /** No time at all. */
    public static final Minutes NONE = new Minutes(0, 0, 0);

    /** Checks the order. */
    public Minutes {
        if (!(low >= 0 && low <= likely && likely <= high)) {
            throw new IllegalArgumentException(
                    "Minutes must go up from zero: (%s, %s, %s).".formatted(low, likely, high));
        }
    }

    /** Both one after the other, marks added as if both went the same way. */
    public Minutes plus(Minutes other) {
        return new Minutes(low + other.low, likely + other.likely, high + other.high);
    }

    /** So many times as much. */
    public Minutes times(double factor) {
        return new Minutes(low * factor, likely * factor, high * factor);
    }
}
