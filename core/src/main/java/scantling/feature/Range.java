package scantling.feature;

import scantling.measure.Dim;

/**
 * From here to there, both measured from one mark of a part.
 *
 * @param from the nearer end
 * @param to the farther end, never before the nearer
 */
public record Range(Dim from, Dim to) {
    /** Checks the order. */
    public Range {
        if (to.compareTo(from) < 0) {
            throw new IllegalArgumentException(
                    "A range from %s cannot end at %s, before it begins.".formatted(from.value(), to.value()));
        }
    }

    /** Around a middle. @param size its whole size */
    public static Range around(Dim middle, Dim size) {
        return new Range(middle.minus(size.half()), middle.plus(size.half()));
    }

    /** How long it is. */
    public Dim size() {
        return to.minus(from);
    }

    /** Half way. */
    public Dim middle() {
        return from.plus(to).half();
    }
}
