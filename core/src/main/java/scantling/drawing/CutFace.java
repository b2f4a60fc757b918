package scantling.drawing;

import scantling.construct.Part;
import scantling.piece.Material;
import scantling.space.Axis;

/** What a part shows where the section cuts it, told by its hatch. */
enum CutFace {
    /** Solid wood, its growth rings. */
    ACROSS("solid wood, cut across its grain"),
    /** Solid wood, its long grain. */
    ALONG("solid wood, cut along its grain"),
    /** Plywood, its plies. */
    PLIES("plywood"),
    /** Fibreboard and veneered panels. */
    PANEL("fibreboard and other panels");

    private final String words;

    CutFace(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Of a part cut from front to back. */
    static CutFace of(Part part) {
        if (part.material().kind() != Material.Kind.SHEET) {
            return part.lie().length() == Axis.ACROSS ? ACROSS : ALONG;
        }
        return part.material().of().contains("ply") ? PLIES : PANEL;
    }

    void hatch(Sketch sketch, Hatch.Field field) {
        switch (this) {
            case ACROSS -> Hatch.rings(sketch, field);
            case ALONG -> Hatch.waves(sketch, field);
            case PLIES -> Hatch.plies(sketch, field);
            case PANEL -> Hatch.dots(sketch, field);
        }
    }
}
