package scantling.piece;

import java.util.List;
import java.util.Optional;

/**
 * What became of an edit.
 *
 * @param text the new text; there only when it reads
 * @param problems why it was not edited
 */
public record EditResult(Optional<String> text, List<Problem> problems) {
    /** Takes its own copy. */
    public EditResult {
        problems = List.copyOf(problems);
    }

    static EditResult refused(Problem problem) {
        return new EditResult(Optional.empty(), List.of(problem));
    }
}
