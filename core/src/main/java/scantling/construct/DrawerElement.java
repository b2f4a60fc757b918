package scantling.construct;

import scantling.piece.Element;
import scantling.piece.Shape;
import scantling.space.Box;

/** One drawer in the space. */
final class DrawerElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.of("drawer", "One drawer in the space.", DrawerMaker.fronts(), Facing.GAP, BoxMaker.field());
    }

    @Override
    public Box build(Element element, Site site) {
        Element fronts = element.part("fronts");
        Facing facing = Facing.of(fronts, element);
        Site in = site.inside(element.name(), site.space());
        Box face = facing.air(site.space(), fronts.stock("of").thickness());
        if (face.isEmpty()) {
            in.problem(
                    element.span(),
                    "The drawer has no room: its front would be smaller than nothing.",
                    "Make the space larger.");
        } else {
            new DrawerMaker(in, element).make(site.space(), face);
        }
        return site.space();
    }
}
