package scantling.construct;

import java.util.Optional;
import java.util.Set;
import scantling.measure.Dim;
import scantling.piece.Material;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Outline;
import scantling.space.Side;
import scantling.space.Turn;

/**
 * One finished wooden thing with one grain direction, placed in the piece. Its box holds all of its wood, tenons and
 * tongues too; where that enters another part a {@link Joint} says so.
 *
 * @param path its name, unique in the piece: {@code left end / top rail}
 * @param material what it is of
 * @param length along the grain, named {@code path / length}
 * @param width across the grain, named {@code path / width}
 * @param thickness through it, named {@code path / thickness}
 * @param box where it is
 * @param lie how it lies there, and its marks
 * @param outline its shape when it is no plain rectangle
 * @param turn when it is splayed or raked out of its box
 * @param shows the sides that are seen when the piece stands finished
 * @param fitted whether it is left long and cut to fit its place
 */
public record Part(
        String path,
        Material material,
        Dim length,
        Dim width,
        Dim thickness,
        Box box,
        Lie lie,
        Optional<Outline> outline,
        Optional<Turn> turn,
        Set<Side> shows,
        boolean fitted) {
    /** Takes its own copy. */
    public Part {
        shows = Set.copyOf(shows);
    }
}
