package scantling.construct;

import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.space.Box;
import scantling.space.Side;

/** A frame on one side of the space. */
final class FrameElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.of(
                "frame",
                "A frame with infill, or a plain board, on one side of the space.",
                Field.choice("on", "The side it stands on.", "left", "right", "front", "back"),
                EndMaker.board(),
                FrameMaker.field(),
                InfillMaker.field());
    }

    @Override
    public Box build(Element element, Site site) {
        Side side = Sides.of(element, "on");
        Site in = site.inside(element.name(), site.space());
        return new EndMaker(in, side)
                .make(element)
                .map(inner -> site.space().with(side, inner))
                .orElse(site.space());
    }
}
