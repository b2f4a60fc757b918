package scantling.finishing;

import java.util.List;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.space.Side;

/**
 * One of the six surfaces of a part, by what becomes of it. All areas in square metres.
 *
 * @param part whose
 * @param surface which
 * @param show open and seen
 * @param inside open and seen when looking in
 * @param hidden open, and seen by nobody
 * @param covered under another part, without glue
 * @param glued under another part, with glue
 * @param glueMarks where the glue goes, to be kept bare
 */
public record Face(
        Part part,
        Surface surface,
        double show,
        double inside,
        double hidden,
        double covered,
        double glued,
        List<Patch> glueMarks) {
    /** A rectangle on a face, millimetres from its marks: along from the near end (or across an end), across from the face edge or side. */
    public record Patch(double alongFrom, double alongTo, double acrossFrom, double acrossTo) {}

    /** Takes its own copy. */
    public Face {
        glueMarks = List.copyOf(glueMarks);
    }

    /** Which way of the piece it looks. */
    public Side side() {
        return surface.side(part.lie());
    }

    /** What a finish can reach once the piece is together. */
    public double open() {
        return show + inside + hidden;
    }

    /** All of it. */
    public double whole() {
        return open() + covered + glued;
    }

    /** Whether it is an end: across the grain. */
    public boolean isEnd() {
        return surface == Surface.NEAR_END || surface == Surface.FAR_END;
    }

    /** Whether it is a long edge. */
    public boolean isEdge() {
        return surface == Surface.FACE_EDGE || surface == Surface.BACK_EDGE;
    }

    /** What most of it is. */
    public Seen seen() {
        double unseen = hidden + covered;
        double most = Math.max(Math.max(show, inside), Math.max(unseen, glued));
        if (most == show) {
            return Seen.SHOW;
        }
        if (most == inside) {
            return Seen.INSIDE;
        }
        return most == glued ? Seen.GLUE : Seen.HIDDEN;
    }
}
