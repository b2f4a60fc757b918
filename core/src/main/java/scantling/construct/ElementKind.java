package scantling.construct;

import scantling.piece.Element;
import scantling.piece.Shape;
import scantling.space.Box;

/** One kind of element: what can be said about it, and what it builds in a space. */
interface ElementKind {
    /** What can be said about it. */
    Shape shape();

    /**
     * Builds it. What cannot be built is reported to the site, and as much as makes sense is built all the same.
     *
     * @param element what the maker said
     * @param site where, and whom to tell of parts, joints, openings, fittings and problems
     * @return the space that is left for what comes after
     */
    Box build(Element element, Site site);
}
