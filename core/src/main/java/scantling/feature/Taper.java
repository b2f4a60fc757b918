package scantling.feature;

import scantling.measure.Dim;

/**
 * How the two sides of a feature slope across its part, as those of a dovetail do. Its ranges tell it where it is widest.
 *
 * @param narrow the surface of the part toward which it grows narrower
 * @param nearer by how much the side nearer to the face edge comes in there; zero where it is straight
 * @param farther by how much the other side does
 */
public record Taper(Surface narrow, Dim nearer, Dim farther) {
    /** How much narrower it is there in all. */
    public Dim by() {
        return nearer.plus(farther);
    }
}
