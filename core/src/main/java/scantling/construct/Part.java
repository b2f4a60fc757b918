package scantling.construct;

import java.util.Optional;
import java.util.Set;
import scantling.measure.Dim;
import scantling.piece.Material;
import scantling.space.Box;
import scantling.space.Ends;
import scantling.space.Form;
import scantling.space.Lie;
import scantling.space.Outline;
import scantling.space.Side;
import scantling.space.Solid;
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
 * @param outline its shape seen on its face side when that is no plain rectangle
 * @param edgeOutline its shape seen on its face edge when that is none; across is there measured from the face side
 * @param ends how its ends are cut
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
        Optional<Outline> edgeOutline,
        Ends ends,
        Optional<Turn> turn,
        Set<Side> shows,
        boolean fitted) {
    /** Takes its own copy. */
    public Part {
        shows = Set.copyOf(shows);
    }

    /** A part with square ends, shaped on its face side at most. */
    public Part(
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
        this(
                path,
                material,
                length,
                width,
                thickness,
                box,
                lie,
                outline,
                Optional.empty(),
                Ends.SQUARE,
                turn,
                shows,
                fitted);
    }

    /** What makes it other than its plain box. */
    public Form form() {
        return new Form(outline, edgeOutline, ends, turn);
    }

    /** Its wood in space. @throws IllegalArgumentException when its box holds nothing */
    public Solid solid() {
        return Solid.of(box, lie, form());
    }
}
