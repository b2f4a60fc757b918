package scantling.construct;

import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** The boards and rails that stand between rows and columns. */
final class Dividers {
    private Dividers() {}

    /** A board that fills its place from front to back. @param face the side its face looks to */
    static Part whole(Element element, Site site, Stock of, Box place, Side face) {
        return between(element, site, "divider", of, place.inset(Side.FRONT, element.length("set back")), face);
    }

    /** A board from side to side, between a space and the one behind it. */
    static Part across(Element element, Site site, Stock of, Box place) {
        Housing housing = new Housing(site, element, place);
        for (Side end : new Side[] {Side.LEFT, Side.RIGHT}) {
            housing = Butting.isHoused(element)
                    ? housing.into(end, element.findLength("housed"), UsualDepths::dado)
                    : housing.against(end);
        }
        Part part = site.part("divider", of.material())
                .showing(Side.FRONT)
                .place(housing.box(), Grain.alongLonger(housing.box(), Side.FRONT));
        housing.join(part, Joint.Kind.DADO, Butting.isHoused(element) ? Joint.Kind.GLUED : Butting.kind(element));
        return part;
    }

    /** A rail at the front. */
    static Part rail(Element element, Site site, Stock of, Box place) {
        Dim width = of.width().orElseGet(() -> {
            site.problem(element.span(), "The rail has no width.", "Write one behind its material: rail: oak 60 mm.");
            return place.extent(Axis.DEEP);
        });
        Box front = place.inset(Side.FRONT, element.length("set back")).slab(Side.FRONT, width);
        return between(element, site, "rail", of, front, Side.TOP);
    }

    private static Part between(Element element, Site site, String name, Stock of, Box place, Side face) {
        Side near = face.axis() == Axis.UP ? Side.LEFT : Side.BOTTOM;
        Housing housing = new Housing(site, element, place);
        for (Side end : new Side[] {near, near.opposite()}) {
            housing = Butting.isHoused(element)
                    ? housing.into(end, element.findLength("housed"), UsualDepths::dado)
                    : housing.against(end);
        }
        PartMaker maker = site.part(name, of.material()).showing(face, face.opposite(), Side.FRONT);
        Part part = (face.isFar() ? maker.holding(face) : maker).place(housing.box(), Lie.along(near.axis(), face));
        housing.join(
                part, Butting.housed(element), Butting.isHoused(element) ? Joint.Kind.GLUED : Butting.kind(element));
        return part;
    }
}
