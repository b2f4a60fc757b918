package scantling.route.schedule;

import java.util.OptionalInt;

/**
 * That one task comes before another.
 *
 * @param before index of the one that must end
 * @param after index of the one that may then begin
 * @param lag ticks by the clock that must pass between, nobody's hands being needed
 * @param closes ticks by the clock after which it is too late to begin: a recoat window
 */
public record Link(int before, int after, int lag, OptionalInt closes) {
    /** Checks that the window is open at all. */
    public Link {
        if (lag < 0 || closes.orElse(lag) < lag) {
            throw new IllegalArgumentException(
                    "A wait of (%d) that closes after (%s) leaves no time.".formatted(lag, closes));
        }
    }

    /** One after the other, at once or later. */
    public static Link then(int before, int after) {
        return new Link(before, after, 0, OptionalInt.empty());
    }
}
