package scantling.space;

import java.util.Optional;

/**
 * Where two boxes that are not turned lie against each other.
 *
 * @param side the side of the first that the second lies against
 * @param patch the rectangle of touching: a box without thickness across that side
 */
public record Contact(Side side, Box patch) {
    /** Where the first touches the second with more than an edge, exactly; nothing when they are apart or share space. */
    public static Optional<Contact> between(Box first, Box second) {
        for (Side side : Side.values()) {
            if (first.plane(side).equals(second.plane(side.opposite()))) {
                Box patch = first.meet(second);
                if (spans(patch, side.axis())) {
                    return Optional.of(new Contact(side, patch));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean spans(Box patch, Axis through) {
        for (Axis axis : Axis.values()) {
            if (axis != through && patch.plane(Side.of(axis, false)).compareTo(patch.plane(Side.of(axis, true))) >= 0) {
                return false;
            }
        }
        return true;
    }
}
