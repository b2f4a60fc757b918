package scantling.cutting;

import scantling.measure.Length;

/** What becomes of one piece of wood: it is cut in two edge to edge, or it is a part, or it is left over. */
public sealed interface CutTree {
    /**
     * One cut right through.
     *
     * @param direction which way the saw runs
     * @param position the fence setting: the size of the first piece, measured from the reference edge (or end) to the cut
     * @param first the piece between reference edge and cut
     * @param second the piece beyond the kerf
     */
    record Cut(CutDirection direction, Length position, CutTree first, CutTree second) implements CutTree {}

    /** A finished part. */
    record Part(PlacedPart placed) implements CutTree {}

    /**
     * What is left over.
     *
     * @param keep large enough to go back to the rack
     */
    record Offcut(Length x, Length y, Length length, Length width, boolean keep) implements CutTree {}

    /** Nothing left beyond the cut: the saw turned it to dust. */
    record Nothing() implements CutTree {}
}
