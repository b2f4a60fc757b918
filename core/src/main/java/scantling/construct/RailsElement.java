package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Rails from left to right between what stands there: front rails, stretchers, rails under a top. */
final class RailsElement implements ElementKind {
    @Override
    public Shape shape() {
        Field[] joint = RailJoint.fields(
                "dowel", "loose tenon", "mortise and tenon", "biscuit", "butt and screw", "pocket screw", "auto");
        return Shape.shortly(
                "rails",
                "of",
                "Rails from left to right between what stands there; the space left is above the low ones and under"
                        + " the high ones.",
                Field.required("of", Field.Kind.STOCK, "What they are of, with their width.", "oak 60"),
                Field.choice("on", "Where they run.", "front and back", "front", "back", "middle"),
                Field.choice("lie", "Whether they stand on edge or lie flat.", "upright", "flat"),
                Field.optional(
                        "at",
                        Field.Kind.LENGTHS,
                        "How far the underside of each is above the bottom of the space; under the top when not said.",
                        "[150 mm]"),
                Field.usual(
                        "set back",
                        Field.Kind.LENGTH,
                        "0 mm",
                        "common practice",
                        "How far a rail lies behind the front or back of the space."),
                joint[0],
                joint[1]);
    }

    @Override
    public Box build(Element element, Site site) {
        Box space = site.space();
        Site in = site.inside(element.name(), space);
        Stock stock = element.stock("of");
        Dim width = Widths.of(in, element, "of");
        boolean flat = element.is("lie", "flat");
        Dim high = flat ? stock.thickness() : width;
        List<Part> made = new ArrayList<>();
        for (Dim at : heights(element, space, high)) {
            Box air = space.inset(Side.BOTTOM, at).slab(Side.BOTTOM, high);
            if (at.plus(high).compareTo(space.extent(Axis.UP)) > 0) {
                in.problem(
                        element.span(),
                        "A rail %s high at %s stands out of a space %s high."
                                .formatted(in.say(high), in.say(at), in.say(space.extent(Axis.UP))),
                        "Set it lower.");
                continue;
            }
            for (Side side : sides(element)) {
                Box lane = lane(element, air, side, flat ? width : stock.thickness());
                made.add(rail(element, in, lane, flat ? Side.TOP : side, name(element, side)));
            }
        }
        return left(space, made);
    }

    private static List<Dim> heights(Element element, Box space, Dim high) {
        List<Dim> said = element.lengths("at");
        return said.isEmpty() ? List.of(space.extent(Axis.UP).minus(high)) : said;
    }

    private static List<Side> sides(Element element) {
        return switch (element.text("on")) {
            case "front and back" -> List.of(Side.FRONT, Side.BACK);
            case "back" -> List.of(Side.BACK);
            default -> List.of(Side.FRONT);
        };
    }

    private static String name(Element element, Side side) {
        return (element.is("on", "middle") ? "middle" : side.word()) + " rail";
    }

    private static Box lane(Element element, Box air, Side side, Dim deep) {
        Box from = element.is("on", "middle")
                ? air.inset(side, air.extent(Axis.DEEP).minus(deep).half())
                : air.inset(side, element.length("set back"));
        return from.slab(side, deep);
    }

    private static Part rail(Element element, Site in, Box lane, Side face, String name) {
        List<Part> left = Holders.at(in, lane, Side.LEFT);
        List<Part> right = Holders.at(in, lane, Side.RIGHT);
        if (left.isEmpty() || right.isEmpty()) {
            in.problem(
                    element.span(),
                    "The %s has nothing to be joined to on the %s.".formatted(name, left.isEmpty() ? "left" : "right"),
                    "Build what it stands between first, or move it to where that stands.");
        }
        RailJoint joint = RailJoint.of(in, element, room(in, left, right));
        Box box = lane.inset(Side.LEFT, Dim.ZERO.minus(joint.adds())).inset(Side.RIGHT, Dim.ZERO.minus(joint.adds()));
        Part rail = in.part(name, element.stock("of").material())
                .holding(face)
                .showing(face)
                .place(box, Lie.along(Axis.ACROSS, face));
        left.forEach(part -> in.joint(joint.kind(), rail, part, joint.sizes()));
        right.forEach(part -> in.joint(joint.kind(), rail, part, joint.sizes()));
        Fastening.above(in, rail);
        return rail;
    }

    /** How thick what it goes into is, where that is thinnest. */
    private static Dim room(Site in, List<Part> left, List<Part> right) {
        Dim room = in.space().extent(Axis.ACROSS);
        List<Part> all = new ArrayList<>(left);
        all.addAll(right);
        for (Part part : all) {
            room = Dim.smallerOf(room, part.box().extent(Axis.ACROSS));
        }
        return room;
    }

    /** Rails above the middle bound the space from above, those below it from below. */
    private static Box left(Box space, List<Part> rails) {
        Dim middle = space.bottom().plus(space.extent(Axis.UP).half());
        Box left = space;
        for (Part rail : rails) {
            if (rail.box().bottom().compareTo(middle) >= 0) {
                left = left.with(Side.TOP, Dim.smallerOf(rail.box().bottom(), left.top()));
            } else {
                left = left.with(Side.BOTTOM, Dim.largerOf(rail.box().top(), left.bottom()));
            }
        }
        return left;
    }
}
