package scantling.checks;

import scantling.construct.Part;
import scantling.space.Box;
import scantling.space.Extent;
import scantling.space.Side;
import scantling.space.Solid;

/**
 * A part with its solid. Parts that fill their boxes are judged exactly by their planes; shaped and turned ones by
 * their solids.
 */
record PlacedPart(Part part, Solid solid) {
    static PlacedPart of(Part part) {
        return new PlacedPart(part, part.solid());
    }

    String path() {
        return part.path();
    }

    Box box() {
        return part.box();
    }

    /** Whether it fills its box, so that the planes of the box tell all. */
    boolean isPlain() {
        return part.form().isPlain();
    }

    /** Whether both meet, by a face, an edge or by sharing space. */
    boolean touches(PlacedPart other) {
        return isPlain() && other.isPlain() ? boxesMeet(other) : solid.touches(other.solid);
    }

    private boolean boxesMeet(PlacedPart other) {
        for (Side side : Side.values()) {
            int compared = box().plane(side).compareTo(other.box().plane(side.opposite()));
            if (side.isFar() ? compared < 0 : compared > 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether some of it lies in the plane that another box has on a side, or past it. */
    boolean reaches(Box whole, Side side) {
        if (isPlain()) {
            int compared = box().plane(side).compareTo(whole.plane(side));
            return side.isFar() ? compared >= 0 : compared <= 0;
        }
        return solid.extent().past(Extent.of(whole), side) >= -Solid.TOLERANCE;
    }
}
