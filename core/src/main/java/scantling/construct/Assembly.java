package scantling.construct;

import java.util.List;
import java.util.Map;
import scantling.measure.Dim;
import scantling.piece.Piece;
import scantling.piece.Problem;

/**
 * A piece built in the mind: everything it consists of, placed, with every number named.
 *
 * @param piece what it was built from
 * @param parts in the order they are built
 * @param joints in the order they are built
 * @param openings in the order they are built
 * @param fittings in the order they are built
 * @param names every named number of the piece by its path
 * @param problems why it cannot be built as written; what could be built stands beside them
 * @param findings what was built otherwise than the maker said, because it could not be so
 */
public record Assembly(
        Piece piece,
        List<Part> parts,
        List<Joint> joints,
        List<Opening> openings,
        List<Fitting> fittings,
        Map<String, Dim> names,
        List<Problem> problems,
        List<Finding> findings) {
    /** One that is built as the maker said. */
    public Assembly(
            Piece piece,
            List<Part> parts,
            List<Joint> joints,
            List<Opening> openings,
            List<Fitting> fittings,
            Map<String, Dim> names,
            List<Problem> problems) {
        this(piece, parts, joints, openings, fittings, names, problems, List.of());
    }
}
