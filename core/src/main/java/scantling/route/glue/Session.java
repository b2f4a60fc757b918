package scantling.route.glue;

import java.util.List;
import java.util.Set;
import scantling.measure.Length;
import scantling.space.Axis;

/**
 * What is put together in one go: a glue-up with its clamps, or, where nothing is glued, a putting together.
 *
 * @param name the sub-assembly it makes
 * @param parts paths of all parts that are together after it
 * @param closings what is put to what, in order
 * @param along the direction in which the clamps press
 * @param glued paths of the joints that are glued
 * @param minutes from the first joint spread to the last closed
 * @param clamps how many are needed at once
 * @param clampLength how long they must be at least
 * @param cauls whether some joint is long enough to want cauls
 * @param square metres of glued joint
 */
public record Session(
        String name,
        Set<String> parts,
        List<Closing> closings,
        Axis along,
        List<String> glued,
        double minutes,
        int clamps,
        Length clampLength,
        boolean cauls,
        double square) {
    /** Takes its own copies. */
    public Session {
        closings = List.copyOf(closings);
        glued = List.copyOf(glued);
    }

    /** Whether glue is spread. */
    public boolean isGlueUp() {
        return !glued.isEmpty();
    }
}
