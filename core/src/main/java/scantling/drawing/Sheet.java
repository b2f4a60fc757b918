package scantling.drawing;

import java.util.List;

/**
 * What a template may take of a sheet of paper, in millimetres.
 *
 * @param wideMm of its width
 * @param highMm of its height
 * @param overlapMm what two tiles of one template have in common
 */
public record Sheet(double wideMm, double highMm, double overlapMm) {
    /** A drawing as the tiles that it takes; itself when a sheet holds it. */
    public List<Drawing> tiles(Drawing drawing) {
        return Tiling.of(drawing, this);
    }
}
