package scantling.construct;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;
import scantling.piece.Element;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Builds one case, board after board; each starts at the planes of those before it. */
final class CaseBuild {
    private static final Lie FLAT = Lie.along(Axis.ACROSS, Side.TOP);

    private final Element element;
    private final Site in;
    private final List<Part> before;
    private final Optional<CaseBack> back;
    private final Stock of;
    private final Dim up;

    CaseBuild(Element element, Site site) {
        this.element = element;
        Site named = Sides.siteOf(element, site);
        in = named.with(named.space().inset(Side.FRONT, element.length("set back")));
        before = in.parts();
        back = element.findPart("back").map(said -> new CaseBack(said, in));
        of = element.stock("of");
        up = element.length("bottom up");
    }

    Box build() {
        Box outer = in.space();
        Box sides = outer.with(Side.BACK, back.map(CaseBack::sidesEnd).orElse(outer.back()));
        Box boards = outer.with(Side.BACK, back.map(CaseBack::boardsEnd).orElse(outer.back()));
        Part left = side("left side", sides.slab(Side.LEFT, of.thickness()), Side.LEFT);
        Part bottom = bottom(left, boards);
        Dim rightInside = bottom.box().right().minus(depth(up.value().isZero()));
        Box rightPlace = sides.with(Side.LEFT, rightInside).with(Side.RIGHT, rightInside.plus(of.thickness()));
        Part right = side("right side", rightPlace, Side.RIGHT);
        Box inside = new Box(
                left.box().right(),
                right.box().left(),
                outer.front(),
                boards.back(),
                bottom.box().top(),
                outer.top());
        join(bottom, up.value().isZero(), left, right);
        Feet.under(in, element, bottom);
        return closed(inside, List.of(left, right, bottom));
    }

    private Box closed(Box inside, List<Part> shell) {
        Box below = top(inside, shell.get(0), shell.get(1));
        List<Part> now = in.parts();
        now.subList(before.size(), now.size()).forEach(part -> Neighbours.screw(in, part, before));
        Box left = back.map(said -> said.build(below, shell)).orElse(below);
        if (element.is("holes", SystemCase.SYSTEM)) {
            in.drilledBySystem(new SystemCase(left, shell.get(0).path()));
        }
        return left;
    }

    private Part side(String name, Box place, Side outside) {
        return in.part(name, of.material())
                .showing(Side.LEFT, Side.RIGHT, Side.FRONT)
                .place(place, Lie.along(Axis.UP, outside));
    }

    private Part bottom(Part left, Box boards) {
        Stock stock = element.findStock("bottom").orElse(of);
        Dim depth = depth(up.value().isZero());
        Box place = boards.inset(Side.BOTTOM, up)
                .slab(Side.BOTTOM, stock.thickness())
                .with(Side.LEFT, left.box().right().minus(depth))
                .with(Side.RIGHT, boards.right().minus(of.thickness()).plus(depth));
        return in.part("bottom", stock.material()).showing(Side.TOP, Side.FRONT).place(place, FLAT);
    }

    private Box top(Box inside, Part left, Part right) {
        Optional<Stock> rails = element.findStock("top rails");
        if (rails.isPresent() || element.is("top", "rails")) {
            return rails(inside, rails.orElse(of), left, right);
        }
        if (element.is("top", "open")) {
            return inside;
        }
        Stock stock = element.findStock("top panel").orElse(of);
        Part top = in.part("top", stock.material())
                .holding(Side.TOP)
                .showing(Side.TOP, Side.BOTTOM, Side.FRONT)
                .place(housed(inside).slab(Side.TOP, stock.thickness()), FLAT);
        join(top, true, left, right);
        return inside.with(Side.TOP, top.box().bottom());
    }

    private Box rails(Box inside, Stock stock, Part left, Part right) {
        Box level = housed(inside).slab(Side.TOP, stock.thickness());
        Dim width = railWidth(stock, inside);
        Part front = rail("front top rail", stock, level.slab(Side.FRONT, width), Side.FRONT);
        Part rear = rail("back top rail", stock, level.slab(Side.BACK, width), Side.BACK);
        join(front, true, left, right);
        join(rear, true, left, right);
        return inside.with(
                Side.TOP, Dim.smallerOf(front.box().bottom(), rear.box().bottom()));
    }

    private Part rail(String name, Stock stock, Box place, Side at) {
        PartMaker maker = in.part(name, stock.material()).holding(Side.TOP).showing(Side.FRONT);
        return (at == Side.BACK ? maker.holding(Side.BACK) : maker).place(place, FLAT);
    }

    private Dim railWidth(Stock stock, Box inside) {
        Dim most = inside.extent(Axis.DEEP).half();
        Dim wanted = stock.width().orElse(most);
        if (stock.width().isPresent() && wanted.compareTo(most) <= 0) {
            return wanted;
        }
        LengthFormat format = LengthFormat.of(in.piece().unit());
        in.problem(
                element.span(),
                stock.width().isEmpty()
                        ? "The top rails have no width."
                        : "Two top rails (%s) wide do not fit in a case (%s) deep."
                                .formatted(
                                        format.formatWithUnit(wanted.value()),
                                        format.formatWithUnit(
                                                inside.extent(Axis.DEEP).value())),
                "Write them with a width that fits: top rails: %s 100 mm."
                        .formatted(stock.material().name()));
        return most;
    }

    private Box housed(Box inside) {
        Dim depth = depth(true);
        return inside.inset(Side.LEFT, Dim.ZERO.minus(depth)).inset(Side.RIGHT, Dim.ZERO.minus(depth));
    }

    /** How deep a board goes into the sides; at their very ends that is a step and may be deeper. */
    private Dim depth(boolean atEnd) {
        if (!Butting.isHoused(element)) {
            return Dim.ZERO;
        }
        return element.findLength("housed")
                .filter(this::sensible)
                .orElseGet(() -> atEnd ? UsualDepths.rabbet(of.thickness()) : UsualDepths.dado(of.thickness()));
    }

    private boolean sensible(Dim depth) {
        return !depth.value().isNegative() && depth.compareTo(of.thickness()) < 0;
    }

    private void join(Part board, boolean atEnd, Part left, Part right) {
        Dim depth = depth(atEnd);
        boolean housed = depth.value().isPositive();
        Joint.Kind let = atEnd ? Joint.Kind.RABBET : Butting.housed(element);
        for (Part side : List.of(left, right)) {
            in.joint(housed ? let : plain(), board, side, housed ? Housing.sizes(board, depth) : Map.of());
        }
        KnockDown.fix(in, element, board, List.of(left, right));
    }

    private Joint.Kind plain() {
        return Butting.isHoused(element) ? Joint.Kind.GLUED : Butting.kind(element);
    }
}
