package scantling.cutting;

import scantling.measure.Length;

/**
 * One size to be cut, one or many times.
 *
 * @param name what is written on the piece
 * @param length along the grain, which is along the stock's length
 * @param width across the grain; for sticks it is not looked at
 * @param count how many
 * @param turn whether it may lie across the stock, because it has no grain to match
 * @param row parts of one row are cut one after the other along the grain, in the order of the job, so that the grain runs
 *     through them; empty for a part alone
 * @param beside parts, or rows of parts, with the same word are cut side by side across the grain, in the order of the job,
 *     so that the figure goes on from one to the next; empty for a part alone
 * @param glued whether its copies are strips or layers glued into one, better taken from one piece of stock
 */
public record CutPart(
        String name, Length length, Length width, int count, boolean turn, String row, String beside, boolean glued) {
    public CutPart {
        if (!length.isPositive() || width.isNegative() || count < 1) {
            throw new IllegalArgumentException(
                    "Part (%s) of (%s) by (%s), count (%d): sizes and count must be positive."
                            .formatted(name, length, width, count));
        }
    }

    /** A part that is in no row. */
    public CutPart(String name, Length length, Length width, int count, boolean turn) {
        this(name, length, width, count, turn, "", "", false);
    }

    /** A part whose copies are not glued into one. */
    public CutPart(String name, Length length, Length width, int count, boolean turn, String row) {
        this(name, length, width, count, turn, row, "", false);
    }

    /** A part for a stick: only its length counts. */
    public static CutPart stick(String name, Length length, int count) {
        return new CutPart(name, length, Length.ZERO, count, false);
    }

    /** The same, another number of times. */
    public CutPart times(int many) {
        return new CutPart(name, length, width, many, turn, row, beside, glued);
    }

    /** The same, in a row or in none. */
    public CutPart inRow(String other) {
        return new CutPart(name, length, width, count, turn, other, beside, glued);
    }

    /** The same, side by side with others or with none. */
    public CutPart lyingBeside(String other) {
        return new CutPart(name, length, width, count, turn, row, other, glued);
    }

    /** The same, its copies to be glued into one. */
    public CutPart asStrips() {
        return new CutPart(name, length, width, count, turn, row, beside, true);
    }
}
