package scantling.checks;

import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;

/**
 * A part that is cut and no longer fits what the plan now needs.
 *
 * @param part the part
 * @param size which of its sizes: {@code length}, {@code width} or {@code thickness}
 * @param cut the size as it is
 * @param planned the size that the plan now needs
 * @param allowed by how much it may be off
 */
public record Misfit(Part part, String size, Dim cut, Dim planned, Length allowed) {
    /** How much too big it is; negative when it is too small. */
    public Length over() {
        return cut.value().minus(planned.value());
    }

    /** Whether wood can be taken off to make it fit. */
    public boolean isTooBig() {
        return over().isPositive();
    }
}
