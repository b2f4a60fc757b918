package scantling.space;

/**
 * How a part lies in its box: which way its grain runs, which way its thickness, and where the marks are that a bench
 * puts on it. Every slot and hole is dimensioned from those marks.
 *
 * @param length the direction of the grain
 * @param thickness the direction through the part
 * @param faceSide the wide side that is marked as true, across the thickness
 * @param faceEdge the edge that is marked as true, across the width
 * @param nearEnd the end that lengths are measured from
 */
public record Lie(Axis length, Axis thickness, Side faceSide, Side faceEdge, Side nearEnd) {
    /** Checks that the marks are on the sides they can be on. */
    public Lie {
        if (faceSide.axis() != thickness || nearEnd.axis() != length || faceEdge.axis() != length.third(thickness)) {
            throw new IllegalArgumentException("A part along (%s), thick (%s), cannot be marked on (%s, %s, %s)."
                    .formatted(length, thickness, faceSide, faceEdge, nearEnd));
        }
    }

    /** The direction across the grain. */
    public Axis width() {
        return length.third(thickness);
    }

    /**
     * Whether the near end is at the right when the face side is up and the face edge toward you; the other of a
     * mirrored pair has it at the left.
     */
    public boolean hasNearEndRight() {
        boolean swapped = (length.ordinal() + 1) % 3 != width().ordinal();
        boolean turned = nearEnd.isFar() ^ faceEdge.isFar() ^ !faceSide.isFar();
        return swapped ^ turned;
    }

    /** Along one direction and thick in another, marked on a face; edge marked toward front or bottom, near end left, front or bottom. */
    public static Lie along(Axis length, Side faceSide) {
        Axis width = length.third(faceSide.axis());
        return new Lie(length, faceSide.axis(), faceSide, Side.of(width, false), Side.of(length, false));
    }
}
