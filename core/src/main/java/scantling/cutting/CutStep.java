package scantling.cutting;

import scantling.measure.Length;

/**
 * One numbered cut. Pieces are labelled with numbers: 3 is cut into 3.1 and 3.2.
 *
 * @param number the order of cutting on this piece of stock, from 1
 * @param piece the label of what is cut
 * @param direction which way the saw runs
 * @param fence the setting, from the reference edge or end
 * @param newSetting whether the fence must be moved for this cut
 * @param first what the piece between fence and blade is
 * @param second what the piece beyond the blade is
 */
public record CutStep(
        int number,
        String piece,
        CutDirection direction,
        Length fence,
        boolean newSetting,
        String first,
        String second) {
    /** Whether this only takes off a factory edge or a checked end, so that the piece keeps its label. */
    public boolean isTrim() {
        return first.equals(piece);
    }
}
