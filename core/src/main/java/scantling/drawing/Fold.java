package scantling.drawing;

import java.util.Set;
import scantling.feature.Surface;

/**
 * The surfaces of a part laid flat on paper: the face side in the middle, the edges folded out below and above it, the
 * ends at its left and right, and the back side under all or beside it, turned over along its length. In drawing units,
 * from the corner of the near end and the face edge, or its mirror image.
 *
 * @param length of the part
 * @param width of the part
 * @param thick of the part
 * @param mirrored whether the near end is at the right
 * @param shown the surfaces that are drawn
 * @param back the left upper corner of the back side
 */
record Fold(double length, double width, double thick, boolean mirrored, Set<Surface> shown, Spot back) {
    /** Paper between two surfaces; words stand in it. */
    static final double GAP = 20;

    /** Takes its own copy. */
    Fold {
        shown = Set.copyOf(shown);
    }

    /** The same with its back side somewhere else. */
    Fold withBack(Spot corner) {
        return new Fold(length, width, thick, mirrored, shown, corner);
    }

    /** Where a place of a surface lies on paper. */
    Spot spot(Surface surface, double along, double across, double through) {
        double x = mirrored ? length - along : along;
        return switch (surface) {
            case FACE_SIDE -> new Spot(x, -across);
            case FACE_EDGE -> new Spot(x, GAP + through);
            case BACK_EDGE -> new Spot(x, -width - GAP - through);
            case BACK_SIDE -> new Spot(back.x() + x, back.y() + across);
            case NEAR_END -> new Spot(mirrored ? length + GAP + through : -GAP - through, -across);
            case FAR_END -> new Spot(mirrored ? -GAP - through : length + GAP + through, -across);
        };
    }

    /** The rectangle of a surface. */
    Hatch.Field field(Surface surface) {
        return box(spot(surface, 0, 0, 0), spot(surface, length, width, thick));
    }

    static Hatch.Field box(Spot one, Spot other) {
        return new Hatch.Field(
                Math.min(one.x(), other.x()),
                Math.min(one.y(), other.y()),
                Math.max(one.x(), other.x()),
                Math.max(one.y(), other.y()));
    }

    boolean shows(Surface surface) {
        return shown.contains(surface);
    }

    /** The left edge of all that is drawn. */
    double left() {
        return shows(mirrored ? Surface.FAR_END : Surface.NEAR_END) ? -GAP - thick : 0;
    }

    double right() {
        return shows(mirrored ? Surface.NEAR_END : Surface.FAR_END) ? length + GAP + thick : length;
    }

    double top() {
        return shows(Surface.BACK_EDGE) ? -width - GAP - thick : -width;
    }

    /** The lower edge of the face side and what is folded out below it; the back side is further down. */
    double bottom() {
        return shows(Surface.FACE_EDGE) ? GAP + thick : 0;
    }
}
