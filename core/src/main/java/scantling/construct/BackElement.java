package scantling.construct;

import java.util.List;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Box;
import scantling.space.Side;

/** A board laid on the back of whatever is built in the space. */
final class BackElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.shortly(
                "back",
                "of",
                "A back over the whole space, laid on whatever else is built in it.",
                Field.required("of", Field.Kind.STOCK, "What it is of.", "thin ply"),
                Field.optional("inset", Field.Kind.SIDES, "How far it stands in from the sides.", "{bottom: 20 mm}"),
                Butting.plain("How it is fastened.", "butt and screw", "glued edge"));
    }

    @Override
    public Box build(Element element, Site site) {
        Stock of = element.stock("of");
        Box place = site.space().slab(Side.BACK, of.thickness());
        for (Side side : Side.values()) {
            place = side.axis() == Side.BACK.axis() ? place : place.inset(side, element.onSide("inset", side));
        }
        List<Part> before = site.parts();
        Part back = site.part(element.name(), of.material())
                .holding(Side.BACK)
                .showing(Side.FRONT)
                .place(place, Grain.alongLonger(place, Side.FRONT));
        Neighbours.fasten(site, back, before, Butting.kind(element));
        return site.space().with(Side.BACK, back.box().front());
    }
}
