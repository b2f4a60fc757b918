package scantling.piece;

import java.util.List;
import java.util.Optional;

/**
 * What became of reading a text.
 *
 * @param piece there only when nothing is wrong
 * @param problems everything that is wrong, in the order of the text
 */
public record ReadResult(Optional<Piece> piece, List<Problem> problems) {
    /** Takes its own copy. */
    public ReadResult {
        problems = List.copyOf(problems);
    }
}
