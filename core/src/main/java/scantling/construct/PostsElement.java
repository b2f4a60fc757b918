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
                "Legs at the upright edges of the space; the space left is between them.",
                LegMaker.LEGS,
                Field.choice("at", "Which edges get one.", "corners", "front", "back"),
                LegMaker.TAPERED_TO,
                LegMaker.TAPERED_OVER,
                LegMaker.SPLAY);
    }

    @Override
    public Box build(Element element, Site site) {
        Box space = site.space();
        Site in = site.inside(element.name(), space);
        LegMaker legs = new LegMaker(in, element, Dim.ZERO);
        Box left = space;
        for (Side deep : new Side[] {Side.FRONT, Side.BACK}) {
            if (element.is("at", "corners") || element.is("at", deep.word())) {
                left = left.with(Side.LEFT, leg(element, in, legs, Side.LEFT, deep))
                        .with(Side.RIGHT, leg(element, in, legs, Side.RIGHT, deep));
            }
        }
        return left;
    }

    /** @return the plane of its inner face, at the top */
    private static Dim leg(Element element, Site in, LegMaker legs, Side across, Side deep) {
        Box space = in.space();
        if (element.has("splay")) {
            LegMaker.Leaning leg = legs.makeLeaning(across, deep, space);
            Box top = leg.splay().top(space, across, deep);
            Fastening.above(in, leg.part(), top);
            return top.plane(across.opposite());
        } else {
            Part leg = legs.make(across, deep, space, space.plane(across), space.plane(deep));
            Fastening.above(in, leg);
            return leg.box().plane(across.opposite());
        }
    }
}
