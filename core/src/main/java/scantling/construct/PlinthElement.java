package scantling.construct;

import java.util.List;
import java.util.Map;
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

/** A plinth: four boards on edge under the piece, set back. What is left is the space above it. */
final class PlinthElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.shortly(
                "plinth",
                "of",
                "Four boards on edge for the piece to stand on.",
                Field.required("of", Field.Kind.STOCK, "What it is of; the width is its height.", "ply 100"),
                Field.optional("set back", Field.Kind.SIDES, "How far it stands in under the piece.", "{front: 50 mm}"),
                Butting.plain(
                        "How its corners meet.",
                        "dowel",
                        "biscuit",
                        "butt and screw",
                        "pocket screw",
                        "glued edge",
                        "mitre with biscuit",
                        "mitre with spline",
                        "auto"));
    }

    @Override
    public Box build(Element element, Site site) {
        Stock of = element.stock("of");
        if (of.width().isEmpty()) {
            site.problem(
                    element.span(),
                    "The plinth has no height.",
                    "Write it behind its material: plinth: %s 100 mm."
                            .formatted(of.material().name()));
            return site.space();
        }
        Box stand = site.space();
        for (Side side : Side.values()) {
            stand = stand.inset(side, element.onSide("set back", side));
        }
        Dim boards = of.thickness().times(2);
        if (stand.extent(Axis.ACROSS).compareTo(boards) <= 0
                || stand.extent(Axis.DEEP).compareTo(boards) <= 0) {
            LengthFormat format = LengthFormat.of(site.piece().unit());
            site.problem(
                    element.span(),
                    "Two plinth boards (%s) thick do not fit in what the set back leaves."
                            .formatted(format.formatWithUnit(of.thickness().value())),
                    "Set it back by less.");
            return site.space();
        }
        return boards(
                element,
                site.inside(element.name(), stand.slab(Side.BOTTOM, of.width().orElseThrow())),
                site);
    }

    private static Box boards(Element element, Site in, Site outer) {
        Dim thickness = element.stock("of").thickness();
        Box stand = in.space();
        List<Part> before = in.parts();
        Part front = board(element, in, "front", stand.slab(Side.FRONT, thickness), Axis.ACROSS, Side.FRONT);
        Part back = board(element, in, "back", stand.slab(Side.BACK, thickness), Axis.ACROSS, Side.BACK);
        boolean mitred = Butting.kind(element).isMitred();
        Box between = stand.with(
                        Side.FRONT, mitred ? front.box().front() : front.box().back())
                .with(Side.BACK, mitred ? back.box().back() : back.box().front());
        Part left = board(element, in, "left end", between.slab(Side.LEFT, thickness), Axis.DEEP, Side.LEFT);
        Box last = between.with(
                Side.RIGHT, Dim.smallerOf(front.box().right(), back.box().right()));
        Part right = board(element, in, "right end", last.slab(Side.RIGHT, thickness), Axis.DEEP, Side.RIGHT);
        for (Part end : List.of(left, right)) {
            in.joint(Butting.kind(element), end, front, Map.of());
            in.joint(Butting.kind(element), end, back, Map.of());
        }
        List.of(front, back, left, right).forEach(part -> Neighbours.screw(in, part, before));
        return outer.space().with(Side.BOTTOM, front.box().top());
    }

    private static Part board(Element element, Site in, String name, Box place, Axis along, Side face) {
        PartMaker maker = in.part(name, element.stock("of").material()).showing(face);
        return (face.isFar() ? maker.holding(face) : maker).place(place, Lie.along(along, face));
    }
}
