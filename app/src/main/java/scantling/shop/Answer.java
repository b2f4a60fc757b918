package scantling.shop;

import java.util.List;
import scantling.piece.Problem;

/** What the shop says to an act. */
public sealed interface Answer {
    /** Taken, and safe on the disk. The same when it was taken before. */
    record Taken(Recorded act) implements Answer {}

    /**
     * The text was changed by somebody else meanwhile; nothing was written.
     *
     * @param mine what was sent
     * @param base what it was made from
     * @param theirs what stands there now
     */
    record Stale(String mine, Revision base, Revision theirs) implements Answer {}

    /**
     * It cannot be done; nothing was written.
     *
     * @param sentence why
     * @param remedy what to do; may be empty
     * @param problems what is wrong in a text, with lines and columns
     */
    record Refused(String sentence, String remedy, List<Problem> problems) implements Answer {
        /** Takes its own copy. */
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /** An earlier act of the same device has not arrived; send from {@code expected} on. */
    record OutOfTurn(long expected) implements Answer {}
}
