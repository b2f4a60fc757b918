package scantling.construct;

import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.space.Box;
import scantling.space.Side;

/** Legs at the upright edges of the space, with nothing between them. */
final class PostsElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.shortly(
                "posts",
                "legs",
                "Legs at the upright edges of the space.",
                LegMaker.LEGS,
                Field.choice("at", "Which edges get one.", "corners", "front", "back"),
                LegMaker.TAPERED_TO,
                LegMaker.TAPERED_OVER);
    }

    @Override
    public Box build(Element element, Site site) {
        Box space = site.space();
        Site in = site.inside(element.name(), space);
        LegMaker legs = new LegMaker(in, element, Dim.ZERO);
        for (Side deep : new Side[] {Side.FRONT, Side.BACK}) {
            if (element.is("at", "corners") || element.is("at", deep.word())) {
                Fastening.above(in, legs.make(Side.LEFT, deep, space, space.left(), space.plane(deep)));
                Fastening.above(in, legs.make(Side.RIGHT, deep, space, space.right(), space.plane(deep)));
            }
        }
        return space;
    }
}
