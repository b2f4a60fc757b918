package scantling.space;

import java.util.List;
import scantling.measure.Dim;

/**
 * The shape of a part seen on its face side when it is not a plain rectangle: a taper, an arch, a notch, a rounded
 * corner. A closed polygon, its corners in order; curves are given as short chords.
 *
 * @param corners at least three
 */
public record Outline(List<Corner> corners) {
    /** @param along from the near end @param across from the face edge */
    public record Corner(Dim along, Dim across) {}

    /** Takes its own copy. */
    public Outline {
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("An outline needs three corners, not (%d).".formatted(corners.size()));
        }
    }
}
