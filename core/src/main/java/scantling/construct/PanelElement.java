package scantling.construct;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.UnaryOperator;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Box;
import scantling.space.Side;

/** A panel that closes one side of a space, held by what bounds it. What is left is the space beside it. */
final class PanelElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.of(
                "panel",
                "A panel that closes one side of the space, held by the parts round it.",
                Field.required("of", Field.Kind.STOCK, "What it is of.", "thin ply"),
                Field.choice("on", "The side it closes.", "back", "front", "left", "right", "bottom", "top"),
                Field.usual("off", Field.Kind.LENGTH, "0 mm", "common practice", "How far from that side it stands."),
                Field.choice("held in", "How the parts round it hold it.", "groove", "rabbet", "nothing"),
                Field.optional("depth", Field.Kind.LENGTH, "How deep it goes into them.", "6 mm"),
                Field.usual(
                        "clearance",
                        Field.Kind.LENGTH,
                        "0.5 mm",
                        "common practice",
                        "The air beyond each edge in a groove."));
    }

    @Override
    public Box build(Element element, Site site) {
        Stock of = element.stock("of");
        Side on = Sides.of(element, "on");
        Box place = site.space().inset(on, element.length("off")).slab(on, of.thickness());
        Housing housing = new Housing(site, element, place);
        Arrays.stream(Side.values())
                .filter(side -> side.axis() != on.axis())
                .forEach(side -> housed(element, housing, side));
        PartMaker maker = site.part(element.name(), of.material()).showing(on, on.opposite());
        Part panel = (on.isFar() ? maker.holding(on) : maker).place(housing.box(), Grain.alongLonger(place, on));
        housing.join(panel, element.is("held in", "rabbet") ? Joint.Kind.RABBET : Joint.Kind.GROOVE, Joint.Kind.GLUED);
        return site.space().with(on, panel.box().plane(on.opposite()));
    }

    private static void housed(Element element, Housing housing, Side side) {
        Dim air = element.is("held in", "groove") ? element.length("clearance") : Dim.ZERO;
        UnaryOperator<Dim> usual = element.is("held in", "rabbet") ? UsualDepths::rabbet : UsualDepths::groove;
        if (element.is("held in", "nothing")) {
            housing.against(side);
        } else {
            Optional<Dim> depth = element.findLength("depth").map(said -> said.minus(air));
            housing.into(side, depth, thickness -> usual.apply(thickness).minus(air));
        }
    }
}
