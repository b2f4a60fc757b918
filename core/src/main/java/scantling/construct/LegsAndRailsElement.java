package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Four legs joined by rails at the top: the base of a table, a desk, a stool. */
final class LegsAndRailsElement implements ElementKind {
    @Override
    public Shape shape() {
        Field[] joint = RailJoint.fields(
                "mortise and tenon", "haunched mortise and tenon", "loose tenon", "dowel", "pocket screw", "auto");
        return Shape.of(
                "legs and rails",
                "Four legs joined by rails under the top of the space.",
                LegMaker.LEGS,
                Field.required("rails", Field.Kind.STOCK, "What the rails are of, with their width.", "oak 100"),
                Field.choice(
                        "rails on",
                        "The sides that get a rail.",
                        "all sides",
                        "back and ends",
                        "front and back",
                        "ends"),
                Field.usual(
                        "rail set back",
                        Field.Kind.LENGTH,
                        "0 mm",
                        "common practice",
                        "How far the face of a rail lies behind the outer face of the legs."),
                LegMaker.TAPERED_TO,
                LegMaker.TAPERED_OVER,
                LegMaker.SPLAY,
                joint[0],
                joint[1],
                Bolts.BOLTED);
    }

    @Override
    public Box build(Element element, Site site) {
        Site in = site.inside(element.name(), site.space());
        Dim width = Widths.of(in, element, "rails");
        LegMaker legs = new LegMaker(in, element, width);
        if (!fits(element, in, legs, width)) {
            return site.space();
        }
        return element.has("splay")
                ? new SplayedBase(element, in, legs).build(width)
                : new Base(element, in, legs, joint(element, in, legs)).build(site.space(), width);
    }

    /** Whether a side gets a rail. */
    static boolean hasRail(Element said, Side side) {
        return switch (said.text("rails on")) {
            case "all sides" -> true;
            case "back and ends" -> side != Side.FRONT;
            case "ends" -> side.axis() == Axis.ACROSS;
            default -> side.axis() == Axis.DEEP;
        };
    }

    /** Where rails meet in a leg, their tenons end before they touch. */
    private static RailJoint joint(Element element, Site in, LegMaker legs) {
        Dim through = Dim.smallerOf(legs.width(), legs.thickness());
        boolean meet = element.is("rails on", "all sides") || element.is("rails on", "back and ends");
        Dim other = element.length("rail set back").plus(element.stock("rails").thickness());
        return RailJoint.of(in, element, through, meet ? through.minus(other) : through);
    }

    private static boolean fits(Element element, Site in, LegMaker legs, Dim rail) {
        Box air = in.space();
        boolean fits = legs.width().times(2).compareTo(air.extent(Axis.ACROSS)) < 0
                && legs.thickness().times(2).compareTo(air.extent(Axis.DEEP)) < 0
                && rail.compareTo(air.extent(Axis.UP)) < 0;
        if (!fits) {
            in.problem(
                    element.span(),
                    "Legs of %s and rails %s high do not go into %s by %s, %s high."
                            .formatted(
                                    in.say(legs.width()),
                                    in.say(rail),
                                    in.say(air.extent(Axis.ACROSS)),
                                    in.say(air.extent(Axis.DEEP)),
                                    in.say(air.extent(Axis.UP))),
                    "Make them smaller, or the piece larger.");
        }
        return fits;
    }

    /** One base being built, around from the left front leg. */
    private record Base(Element said, Site in, LegMaker legs, RailJoint joint) {
        Box build(Box air, Dim railWidth) {
            Box high = air.slab(Side.TOP, railWidth);
            List<Part> rails = new ArrayList<>();
            Part leftFront = legs.make(Side.LEFT, Side.FRONT, air, air.left(), air.front());
            Dim right = far(Side.FRONT, leftFront, high, rails);
            Part rightFront = legs.make(Side.RIGHT, Side.FRONT, air, right, air.front());
            Dim back = far(Side.LEFT, leftFront, high, rails);
            Part leftBack = legs.make(Side.LEFT, Side.BACK, air, air.left(), back);
            Part rightBack = legs.make(Side.RIGHT, Side.BACK, air, right, back);
            Box between = high.with(Side.RIGHT, right).with(Side.BACK, back);
            far(Side.BACK, leftBack, between, rails);
            far(Side.RIGHT, rightFront, between, rails);
            List<Part> all = List.of(leftFront, rightFront, leftBack, rightBack);
            rails.forEach(rail -> join(rail, all));
            return left(air, all, rails);
        }

        /** Makes the rail of a side, if it gets one. @return the outer plane of the leg at its far end */
        private Dim far(Side side, Part from, Box air, List<Part> rails) {
            Axis along = side.axis() == Axis.ACROSS ? Axis.DEEP : Axis.ACROSS;
            Side far = Side.of(along, true);
            if (!hasRail(said, side)) {
                return air.plane(far);
            }
            Dim leg = along == Axis.ACROSS ? legs.width() : legs.thickness();
            Box box = air.with(far.opposite(), from.box().plane(far).minus(joint.adds()))
                    .with(far, air.plane(far).minus(leg).plus(joint.adds()))
                    .inset(side, said.length("rail set back"))
                    .slab(side, said.stock("rails").thickness());
            Part rail = in.part(side.word() + " rail", said.stock("rails").material())
                    .holding(side, Side.TOP)
                    .showing(side)
                    .place(box, Lie.along(along, side));
            rails.add(rail);
            return rail.box().plane(far).minus(joint.adds()).plus(leg);
        }

        private void join(Part rail, List<Part> all) {
            Side near = Side.of(rail.lie().length(), false);
            for (Side end : new Side[] {near, near.opposite()}) {
                Holders.at(in, rail.box(), end).stream()
                        .filter(part -> all.stream().anyMatch(leg -> leg.path().equals(part.path())))
                        .forEach(leg -> {
                            in.joint(joint.kind(), rail, leg, joint.sizes());
                            Bolts.fix(in, said, rail, leg, end);
                        });
            }
            Fastening.above(in, rail);
        }

        private static Box left(Box air, List<Part> legs, List<Part> rails) {
            Box space = air.with(Side.LEFT, legs.get(0).box().right())
                    .with(Side.RIGHT, legs.get(1).box().left());
            for (Part rail : rails) {
                Side side = rail.lie().faceSide();
                space = side.axis() == Axis.DEEP ? space.with(side, rail.box().plane(side.opposite())) : space;
            }
            return space;
        }
    }
}
