package scantling.construct;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;
import scantling.space.Turn;

/** A board or glued-up panel on one side of a space; what is left is the space less its thickness. */
final class BoardElement implements ElementKind {
    private static final Box NO_WOOD = new Box(Dim.ZERO, Dim.ZERO, Dim.ZERO, Dim.ZERO, Dim.ZERO, Dim.ZERO);

    @Override
    public Shape shape() {
        return Shape.of(
                "board",
                "A board on one side of the space; what comes after is built in what it leaves.",
                Field.required(
                        "of", Field.Kind.STOCK, "What it is of, with a width when it does not fill the side.", "oak"),
                Field.choice("on", "The side it lies on.", "bottom", "top", "left", "right", "front", "back"),
                Field.usual("off", Field.Kind.LENGTH, "0 mm", "common practice", "How far from that side it stands."),
                Field.optional("inset", Field.Kind.SIDES, "How far it stands in from other sides.", "{front: 10 mm}"),
                Field.optional("over", Field.Kind.SIDES, "How far it stands out over other sides.", "{front: 10 mm}"),
                Field.choice("grain", "Which way its grain runs.", "longest", "across", "deep", "up"),
                Field.choice(
                        "against",
                        "Where it lies when it is narrower than the side.",
                        "back",
                        "front",
                        "top",
                        "bottom"),
                Butting.field("How its ends meet what bounds the space."),
                Field.usual("housed", Field.Kind.LENGTH, "0 mm", "common practice", "How deep its ends are let in."),
                Field.optional(
                        "lean",
                        Field.Kind.ANGLE,
                        "How far an upright board leans, its top toward the side it lies on and past it; its lower"
                                + " outer edge stays, so give it room with off.",
                        "12°"));
    }

    @Override
    public Box build(Element element, Site site) {
        Side on = Sides.of(element, "on");
        Stock of = element.stock("of");
        Box slab =
                narrowed(element, site.space().inset(on, element.length("off")).slab(on, of.thickness()), on);
        Lie lie = lie(element, slab, on);
        List<Part> before = site.parts();
        Housing housing = housed(element, site, slab, lie);
        PartMaker maker = site.part(element.name(), of.material()).showing(Side.values());
        element.findAngle("lean").ifPresent(degrees -> lean(element, site, on, housing.box(), degrees, maker));
        Part board = (on.isFar() ? maker.holding(on) : maker).place(housing.box(), lie);
        housing.join(board, Butting.housed(element), plain(element));
        before.stream()
                .filter(part -> housing.isApart(part) && touch(part, board))
                .forEach(part -> site.joint(plain(element), board, part, Map.of(), NO_WOOD));
        return site.space().with(on, board.box().plane(on.opposite()));
    }

    private static boolean touch(Part one, Part other) {
        return one.form().isPlain() && other.form().isPlain()
                ? Neighbours.touches(one.box(), other.box())
                : !one.box().isEmpty() && !other.box().isEmpty() && one.solid().touches(other.solid());
    }

    /** About its lower outer edge, so that it dips into nothing below it. */
    private static void lean(Element element, Site site, Side on, Box box, double degrees, PartMaker maker) {
        if (on.axis() == Axis.UP) {
            site.problem(
                    element.span(), "A board that lies flat cannot lean.", "Put it on the back, front, left or right.");
            return;
        }
        Axis about = on.axis() == Axis.DEEP ? Axis.ACROSS : Axis.DEEP;
        // Positive turns take DEEP toward UP and UP toward ACROSS: backward is negative, to the right positive.
        double sense = on.isFar() == (about == Axis.DEEP) ? 1 : -1;
        Dim edge = box.plane(on);
        maker.turned(
                about == Axis.ACROSS
                        ? new Turn(about, sense * degrees, edge, box.bottom())
                        : new Turn(about, sense * degrees, box.bottom(), edge));
    }

    private static Joint.Kind plain(Element element) {
        return Butting.isHoused(element) ? Joint.Kind.GLUED : Butting.kind(element);
    }

    private static Housing housed(Element element, Site site, Box slab, Lie lie) {
        Housing housing = new Housing(site, element, slab);
        Dim depth = element.length("housed");
        Side near = Side.of(lie.length(), false);
        return depth.value().isPositive()
                ? housing.into(near, Optional.of(depth), UsualDepths::dado)
                        .into(near.opposite(), Optional.of(depth), UsualDepths::dado)
                : housing;
    }

    private static Box narrowed(Element element, Box slab, Side on) {
        Box box = slab;
        for (Side side : Side.values()) {
            if (side.axis() != on.axis()) {
                box = box.inset(side, element.onSide("inset", side).minus(element.onSide("over", side)));
            }
        }
        Side against = Sides.of(element, "against");
        boolean narrow = element.stock("of").width().isPresent() && against.axis() != on.axis();
        return narrow ? box.slab(against, element.stock("of").width().orElseThrow()) : box;
    }

    private static Lie lie(Element element, Box box, Side on) {
        for (Axis axis : Axis.values()) {
            if (element.is("grain", axis.name().toLowerCase(Locale.ROOT)) && axis != on.axis()) {
                return Lie.along(axis, on);
            }
        }
        return Grain.alongLonger(box, on);
    }
}
