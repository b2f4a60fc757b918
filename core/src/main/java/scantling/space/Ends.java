package scantling.space;

/**
 * Both ends of a part. Its length is from long point to long point, so that its box holds all of its wood.
 *
 * @param near at the near end
 * @param far at the far end
 */
public record Ends(EndCut near, EndCut far) {
    /** Cut off square. */
    public static final Ends SQUARE = new Ends(EndCut.SQUARE, EndCut.SQUARE);

    /** Whether both are square. */
    public boolean areSquare() {
        return near.isSquare() && far.isSquare();
    }
}
