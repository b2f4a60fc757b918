package scantling.space;

import java.util.Optional;

/**
 * What makes a part other than the plain box it lies in.
 *
 * @param outline its shape seen on its face side
 * @param edgeOutline its shape seen on its face edge; across is there measured from the face side
 * @param ends how its ends are cut
 * @param turn how it is turned out of its box
 */
public record Form(Optional<Outline> outline, Optional<Outline> edgeOutline, Ends ends, Optional<Turn> turn) {
    /** A plain box. */
    public static final Form PLAIN = new Form(Optional.empty(), Optional.empty(), Ends.SQUARE, Optional.empty());

    /** Whether the planes of the box tell all. */
    public boolean isPlain() {
        return outline.isEmpty() && edgeOutline.isEmpty() && ends.areSquare() && turn.isEmpty();
    }
}
