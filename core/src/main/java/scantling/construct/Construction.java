package scantling.construct;

import scantling.measure.Ledger;
import scantling.piece.Language;
import scantling.piece.Piece;
import scantling.space.Box;
import scantling.stock.HardwareProfiles;

/** Builds a piece in the mind: from its description to its assembly. */
public final class Construction {
    private Construction() {}

    /** The elements that a piece may be built of, for the reader and its schema. */
    public static Language language() {
        return Elements.language();
    }

    /**
     * Builds a piece.
     *
     * @param piece as read
     * @param ledger what the bench and the maker say of its numbers; used up by this call
     * @param tolerances how well the shop makes sizes
     * @return the assembly, with the problems that keep it from being built as written
     */
    public static Assembly assemble(Piece piece, Ledger ledger, Tolerances tolerances) {
        return assemble(piece, ledger, tolerances, HardwareProfiles.standard());
    }

    /** The same with the shop's own slides and hinges. */
    public static Assembly assemble(Piece piece, Ledger ledger, Tolerances tolerances, HardwareProfiles hardware) {
        Works works = new Works(piece, ledger, Elements.byKey(), tolerances, hardware);
        Box whole = Box.standing(piece.width(), piece.depth(), piece.height());
        works.buildAll(piece.steps(), new Site(works, "", whole));
        works.settle();
        return works.finished();
    }
}
