package scantling.checks.lasting;

import scantling.construct.Part;
import scantling.measure.Dim;

/**
 * A board that lies flat between supports.
 *
 * @param part which
 * @param span clear, exact
 * @param shelf the same as a beam with its ends lying free
 * @param turning what its joints make of the turning of its ends, N mm for each radian; nothing where it lies free
 */
record Spanned(Part part, Dim span, Shelf shelf, double turning) {
    /** Sizes that differ by less make no other shelf, mm. */
    private static final double ALIKE = 20;

    /** The same with its ends as its joints hold them. */
    Shelf held() {
        return turning(turning);
    }

    /** The same with ends that cannot turn at all. */
    Shelf fast() {
        return turning(Double.POSITIVE_INFINITY);
    }

    private Shelf turning(double each) {
        return shelf.held(new Ends(each, shelf.ends().past(), shelf.ends().takes()));
    }

    boolean isHeld() {
        return turning > 0;
    }

    /** Boards that sag alike whatever they are called; spans within a few millimetres are one. */
    String likeness() {
        return String.join(
                "|",
                part.material().of(),
                part.thickness().value().toString(),
                String.valueOf(Math.round(shelf.span() / ALIKE)),
                String.valueOf(Math.round(turning)),
                shelf.pins().toString(),
                shelf.lippings().toString());
    }
}
