package scantling.construct;

import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.space.Box;
import scantling.space.Side;

/**
 * How fronts and doors lie before a space: inset, with a gap all round, or overlay, lapping over its edges.
 *
 * @param inset whether they lie in it
 * @param gap between one and the next, and all round when inset
 * @param lap how far an overlay one reaches over the edges
 */
record Facing(boolean inset, Dim gap, Dim lap) {
    static final Field SET = Field.choice(
            "set", "Whether it lies in the opening or before it, lapping over the edges.", "inset", "overlay");
    static final Field GAP = Field.usual(
            "gap",
            Field.Kind.LENGTH,
            "2 mm",
            "common practice",
            "The gap between one and the next, and all round when inset.");
    static final Field LAP = Field.usual(
            "overlay",
            Field.Kind.LENGTH,
            "16 mm",
            "common practice",
            "How far it laps over the edges of the opening when it is set overlay.");

    /** As said. @param set where {@code set} and {@code overlay} stand @param gap where {@code gap} stands */
    static Facing of(Element set, Element gap) {
        return new Facing(set.is("set", "inset"), gap.length("gap"), set.length("overlay"));
    }

    /** How far inside the space's edge the faces begin; negative when they lap over it. */
    Dim edge() {
        return inset ? gap : Dim.ZERO.minus(lap);
    }

    /** The slab in which faces of a thickness lie, edges and all. */
    Box air(Box space, Dim thickness) {
        Box all = space;
        for (Side side : new Side[] {Side.LEFT, Side.RIGHT, Side.BOTTOM, Side.TOP}) {
            all = all.inset(side, edge());
        }
        Dim front = inset ? space.front() : space.front().minus(thickness);
        return all.with(Side.FRONT, front).with(Side.BACK, front.plus(thickness));
    }

    /** How far from the face the opening of its own goes, toward a neighbour. */
    Dim beyond() {
        return inset ? gap : gap.half();
    }
}
