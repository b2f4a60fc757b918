package scantling.construct;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** A frame on the front of whatever else is built in the space. What is built in its opening is said with it. */
final class FaceFrameElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.of(
                "face frame",
                "Stiles and rails on the front of whatever else is built in the space.",
                Field.required("stiles", Field.Kind.STOCK, "The uprights, with their width.", "oak 45"),
                Field.optional("top rail", Field.Kind.STOCK, "The upper rail, if not like the stiles.", "oak 60"),
                Field.optional("bottom rail", Field.Kind.STOCK, "The lower rail, if not like the stiles.", "oak 60"),
                Butting.plain(
                        "How rails meet stiles.",
                        "loose tenon",
                        "mortise and tenon",
                        "haunched mortise and tenon",
                        "dowel",
                        "biscuit",
                        "pocket screw",
                        "auto"),
                Field.usual(
                        "tenon", Field.Kind.LENGTH, "30 mm", "common practice", "How far a tenon of the rail goes in."),
                Field.optional("build", Field.Kind.STEPS, "What is built in its opening.", "[doors: {count: 2}]"));
    }

    @Override
    public Box build(Element element, Site site) {
        Stock stiles = element.stock("stiles");
        Stock top = element.findStock("top rail").orElse(stiles);
        Stock bottom = element.findStock("bottom rail").orElse(stiles);
        Box space = site.space();
        Optional<Dim> rails = top.width().flatMap(a -> bottom.width().map(a::plus));
        if (rails.isEmpty() || stiles.width().isEmpty()) {
            site.problem(element.span(), "The face frame needs widths.", "Write them behind the material: oak 45 mm.");
            return space;
        }
        if (tooWide(element, site, "stiles", stiles.width().orElseThrow().times(2), Axis.ACROSS)
                || tooWide(element, site, "rails", rails.orElseThrow(), Axis.UP)) {
            return space;
        }
        Site in = site.inside(element.name(), space.slab(Side.FRONT, stiles.thickness()));
        Box opening = frame(element, in, List.of(stiles, top, bottom)).with(Side.BACK, space.back());
        site.with(opening).buildAll(element.parts("build"));
        return space.with(Side.FRONT, in.space().back());
    }

    private static boolean tooWide(Element element, Site site, String word, Dim widths, Axis axis) {
        Dim room = site.space().extent(axis);
        LengthFormat format = LengthFormat.of(site.piece().unit());
        if (widths.compareTo(room) < 0) {
            return false;
        }
        site.problem(
                element.span(),
                "The %s together (%s) are wider than their frame (%s)."
                        .formatted(word, format.formatWithUnit(widths.value()), format.formatWithUnit(room.value())),
                "Make them narrower.");
        return true;
    }

    private static Box frame(Element element, Site in, List<Stock> stock) {
        Box whole = in.space();
        Dim tenon = List.of(Joint.Kind.MORTISE_AND_TENON, Joint.Kind.HAUNCHED).contains(Butting.kind(element))
                ? element.length("tenon")
                : Dim.ZERO;
        Dim stileWidth = stock.get(0).width().orElseThrow();
        Part left = stick(in, "left stile", stock.get(0), whole.slab(Side.LEFT, stileWidth), Axis.UP);
        Box between = new Box(
                left.box().right().minus(tenon),
                whole.right().minus(stileWidth).plus(tenon),
                whole.front(),
                whole.back(),
                whole.bottom(),
                whole.top());
        Part top = stick(in, "top rail", stock.get(1), rail(between, Side.TOP, stock.get(1)), Axis.ACROSS);
        Part bottom = stick(in, "bottom rail", stock.get(2), rail(between, Side.BOTTOM, stock.get(2)), Axis.ACROSS);
        Box planned = new Box(
                left.box().right(),
                bottom.box().right().minus(tenon),
                whole.front(),
                whole.back(),
                bottom.box().top(),
                top.box().bottom());
        // Measured, the right stile stands where the opening ends, whatever the rails were to be.
        Box opening = Site.follow(in.opening("opening", planned), planned, planned);
        Dim shoulder = opening.right();
        Box rightPlace = whole.with(Side.LEFT, shoulder).with(Side.RIGHT, shoulder.plus(stileWidth));
        Part right = stick(in, "right stile", stock.get(0), rightPlace, Axis.UP);
        for (Part rail : List.of(top, bottom)) {
            join(element, in, rail, left, tenon);
            join(element, in, rail, right, tenon);
        }
        return opening;
    }

    private static Box rail(Box between, Side side, Stock stock) {
        return between.slab(side, stock.width().orElseThrow());
    }

    private static Part stick(Site in, String name, Stock stock, Box place, Axis along) {
        PartMaker maker = in.part(name, stock.material()).showing(Side.FRONT);
        return (name.equals("top rail") ? maker.holding(Side.TOP) : maker).place(place, Lie.along(along, Side.FRONT));
    }

    private static void join(Element element, Site in, Part rail, Part stile, Dim tenon) {
        in.joint(Butting.kind(element), rail, stile, tenon.value().isZero() ? Map.of() : Map.of("length", tenon));
    }
}
