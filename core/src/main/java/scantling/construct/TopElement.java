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

/** A top over the whole space: solid, lipped all along, or with breadboard ends. What is left is the space under it. */
final class TopElement implements ElementKind {
    private static final Shape LIPPING = Shape.shortly(
            "lipping",
            "with",
            "Solid edging round a top.",
            Field.required("with", Field.Kind.STOCK, "What it is of; its thickness is how far it stands out.", "oak"),
            Field.choice("corners", "How it meets at the corners.", "mitred", "butted"),
            Field.choice("round", "Which edges it covers.", "front and ends", "all", "front"),
            Butting.plain("How it is joined to the core.", "glued edge", "biscuit", "dowel", "loose tenon"),
            Field.optional(
                    "proud",
                    Field.Kind.LENGTH,
                    "How far it stands above the core when it is glued on, to be planed off: the fence of the joiner"
                            + " is moved by so much between core and edging.",
                    "0.2 mm"));
    private static final Shape BREADBOARD = Shape.shortly(
            "breadboard",
            "of",
            "Boards across the ends that keep the top flat.",
            Field.required("of", Field.Kind.STOCK, "What they are of, with their width.", "oak 90"),
            Field.usual("tenon", Field.Kind.LENGTH, "30 mm", "common practice", "How far the top goes into them."));

    @Override
    public Shape shape() {
        return Shape.shortly(
                "top",
                "of",
                "A top over the space and whatever else is built in it.",
                Field.required("of", Field.Kind.STOCK, "What it is of.", "oak"),
                Field.part("lipped", Field.Kind.PART, LIPPING, "Solid edging round it.", "{with: oak}"),
                Field.part("breadboard", Field.Kind.PART, BREADBOARD, "Boards across its ends.", "{of: oak 90}"),
                Field.optional("overhang", Field.Kind.SIDES, "How far it stands out over the piece.", "{ends: 8 mm}"),
                Field.optional(
                        "inset",
                        Field.Kind.SIDES,
                        "How far what is under it stands in from its edges.",
                        "{front: 12 mm}"));
    }

    @Override
    public Box build(Element element, Site site) {
        Stock of = element.stock("of");
        Box whole = site.space().slab(Side.TOP, of.thickness());
        Box under = site.space();
        for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.FRONT, Side.BACK)) {
            whole = whole.inset(side, Dim.ZERO.minus(element.onSide("overhang", side)));
            under = under.inset(side, element.onSide("inset", side));
        }
        if (element.has("lipped") && element.has("breadboard")) {
            site.problem(element.span(), "A top has edging or breadboard ends, not both.", "Leave one of them out.");
        }
        Part top = laid(element, site, whole);
        return under.with(Side.TOP, top.box().bottom());
    }

    private static Part laid(Element element, Site site, Box whole) {
        Stock of = element.stock("of");
        Optional<Element> lipped = element.findPart("lipped");
        Optional<Element> breadboard = element.findPart("breadboard");
        if (lipped.isPresent()) {
            return new Lipping(lipped.orElseThrow(), site.inside(element.name(), whole)).build(of);
        }
        return breadboard.isPresent()
                ? withEnds(breadboard.orElseThrow(), site.inside(element.name(), whole), of)
                : placed(site.part(element.name(), of.material()), whole);
    }

    private static Part placed(PartMaker maker, Box place) {
        return maker.holding(Side.TOP).showing(Side.values()).place(place, Grain.alongLonger(place, Side.TOP));
    }

    private static Part withEnds(Element said, Site site, Stock of) {
        Stock end = said.stock("of");
        Dim tenon = said.length("tenon");
        Dim width = width(said, site, end);
        Box whole = site.space();
        Box panel = whole.inset(Side.LEFT, width.minus(tenon)).inset(Side.RIGHT, width.minus(tenon));
        Part top = placed(site.part("panel", of.material()), panel);
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Dim shoulder = side.isFar()
                    ? top.box().right().minus(tenon)
                    : top.box().left().plus(tenon);
            Box place = whole.with(side.opposite(), shoulder)
                    .with(side, side.isFar() ? shoulder.plus(width) : shoulder.minus(width));
            Lie lie = new Lie(Axis.DEEP, Axis.UP, Side.TOP, side.opposite(), Side.FRONT);
            PartMaker maker = site.part(side.word() + " breadboard end", end.material())
                    .holding(Side.TOP, Side.RIGHT)
                    .showing(Side.values());
            Part board = maker.place(place, lie);
            site.joint(Joint.Kind.MORTISE_AND_TENON, top, board, Map.of("length", tenon));
        }
        return top;
    }

    private static Dim width(Element said, Site site, Stock end) {
        Dim wanted = end.width().orElse(Dim.ZERO);
        Dim tenon = said.length("tenon");
        Dim most = site.space().extent(Axis.ACROSS).share(1, 4);
        if (wanted.compareTo(tenon) > 0 && wanted.compareTo(most) < 0) {
            return wanted;
        }
        LengthFormat format = LengthFormat.of(site.piece().unit());
        site.problem(
                said.span(),
                "Breadboard ends (%s) wide do not suit a tenon (%s) long and a top (%s) long."
                        .formatted(
                                format.formatWithUnit(wanted.value()),
                                format.formatWithUnit(tenon.value()),
                                format.formatWithUnit(
                                        site.space().extent(Axis.ACROSS).value())),
                "Write their width behind the material: breadboard: {of: oak 90 mm}.");
        return Dim.smallerOf(tenon.times(2), most);
    }
}
