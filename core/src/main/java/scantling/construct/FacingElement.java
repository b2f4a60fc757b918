package scantling.construct;

import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.space.Box;

/** Turns a space round: what is built in it looks to another side. For runs round a corner, islands, beds. */
final class FacingElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.of(
                "facing",
                "What is built in the space looks another way: its left, right, front and back are those of one who"
                        + " stands on that side.",
                Field.choice("to", "The side it looks to.", "right", "left", "back"),
                Field.required("build", Field.Kind.STEPS, "What is built in it.", "[case: ply]"));
    }

    @Override
    public Box build(Element element, Site site) {
        Site in = Sides.siteOf(element, site);
        Quarter quarter = new Quarter(Sides.of(element, "to"), in.space());
        return quarter.of(in.buildTurned(element.parts("build"), quarter));
    }
}
