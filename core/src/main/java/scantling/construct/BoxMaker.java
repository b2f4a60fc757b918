package scantling.construct;

import java.util.List;
import java.util.Map;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Material;
import scantling.piece.Shape;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Makes the box of a drawer: two sides, front and back between them, a floor in a groove of all four. */
final class BoxMaker {
    private static final String DOWEL = "dowel";
    private static final String HALF_BLIND = "half-blind dovetail";

    private final Site in;
    private final Element said;
    private final Slides slides;
    private final Material material;
    private final Dim thickness;

    /** @param drawer what it belongs to @param said the fields of {@link #field} */
    BoxMaker(Site drawer, Element said, Slides slides) {
        in = drawer.inside("box", drawer.space());
        this.said = said;
        this.slides = slides;
        material = said.stock("of").material();
        thickness = material.thickness();
    }

    /** What can be said of drawer boxes. */
    static Field field() {
        Shape shape = Shape.shortly(
                "box",
                "of",
                "The boxes behind drawer fronts.",
                Field.required("of", Field.Kind.STOCK, "What the four sides are of.", "box"),
                Field.required("floor", Field.Kind.STOCK, "What the floor is of.", "floor"),
                Slides.RUNS_ON,
                Slides.LENGTH,
                Field.optional(
                        "height",
                        Field.Kind.LENGTH,
                        "How high the box is; as high as its slide and opening allow when not said.",
                        "100 mm"),
                Field.choice(
                        "corners",
                        "How the corners of the box are joined; behind a half-blind front the back is dovetailed"
                                + " through.",
                        DOWEL,
                        "rabbet",
                        "dovetail",
                        "half-blind dovetail",
                        "box joint"),
                Field.usual(
                        "groove",
                        Field.Kind.LENGTH,
                        "6 mm",
                        "common practice",
                        "How deep the groove for the floor is."),
                Field.usual(
                        "floor clearance",
                        Field.Kind.LENGTH,
                        "0.5 mm",
                        "common practice",
                        "How much short of the bottom of its groove the floor ends, at each edge."));
        return Field.part("box", Field.Kind.PART, shape, "The boxes behind the fronts.", "{of: box, floor: floor}")
                .butRequired();
    }

    /** Makes it. @param opening width of the opening @param room how deep and how high it is @return the box's front first */
    List<Part> make(Dim opening, Box room) {
        Dim inside = in.name("inside width", slides.insideWidth(opening, thickness));
        if (!fits(inside)) {
            return List.of();
        }
        Dim lap = lap();
        Dim leftAt = room.left().plus(slides.beside(thickness));
        Box sides = room.inset(Side.FRONT, blind());
        Part left = side(Side.LEFT, sides.with(Side.LEFT, leftAt).slab(Side.LEFT, thickness));
        Dim from = left.box().right().minus(lap);
        Box between = room.with(Side.LEFT, from)
                .with(Side.RIGHT, from.plus(inside).plus(lap.times(2)))
                .with(Side.BACK, left.box().back());
        Part front = across(Side.FRONT, between);
        // The opening rules, not a front that came out wrong: that one is trimmed or made anew.
        Part back = across(Side.BACK, between);
        Dim rightAt = between.right().minus(lap);
        Box rightAir = sides.with(Side.LEFT, rightAt).with(Side.RIGHT, rightAt.plus(thickness));
        Part right = side(Side.RIGHT, rightAir);
        List<Part> walls = List.of(front, left, right, back);
        List.of(left, right).forEach(side -> List.of(front, back).forEach(end -> corner(end, side, lap)));
        return List.of(front, left, right, back, floor(walls));
    }

    private boolean fits(Dim inside) {
        boolean wide = inside.value().isPositive();
        if (!wide) {
            in.problem(
                    said.span(),
                    "The drawer box would be %s wide inside.".formatted(in.say(inside)),
                    "Make the opening wider.");
        }
        Dim groove = said.length("groove");
        boolean deep = groove.compareTo(thickness) < 0;
        if (!deep) {
            in.problem(
                    said.span(),
                    "A groove %s deep goes through a side %s thick.".formatted(in.say(groove), in.say(thickness)),
                    "Make it half as deep as the side is thick.");
        }
        return wide && deep;
    }

    private Part side(Side side, Box air) {
        return in.part(side.word() + " side", material).place(air, Lie.along(Axis.DEEP, side));
    }

    private Part across(Side side, Box air) {
        return in.part(side.word(), material)
                .holding(side)
                .place(air.slab(side, thickness), Lie.along(Axis.ACROSS, side));
    }

    /** How far front and back reach into the sides: not at all, half way, or to their outer faces. */
    private Dim lap() {
        return switch (said.text("corners")) {
            case DOWEL -> Dim.ZERO;
            case "rabbet" -> thickness.half();
            default -> thickness;
        };
    }

    /** What a half-blind front keeps before the tails. */
    private Dim blind() {
        return said.is("corners", HALF_BLIND) ? Fittings.of("half-blind front", "left before the tails") : Dim.ZERO;
    }

    private void corner(Part end, Part side, Dim lap) {
        if (lap.equals(thickness)) {
            boolean front = end.lie().faceSide() == Side.FRONT;
            in.joint(through(front), end, side, Map.of());
        } else if (said.is("corners", DOWEL)) {
            in.joint(Joint.Kind.DOWEL, end, side, Map.of("diameter", Fittings.of("dowelled corner", "diameter")));
        } else {
            in.joint(Joint.Kind.RABBET, end, side, Map.of("depth", lap, "width", end.thickness()));
        }
    }

    private Joint.Kind through(boolean front) {
        if (said.is("corners", "box joint")) {
            return Joint.Kind.BOX_JOINT;
        }
        return front && said.is("corners", HALF_BLIND) ? Joint.Kind.HALF_BLIND : Joint.Kind.DOVETAIL;
    }

    /** @param walls front, left, right, back */
    private Part floor(List<Part> walls) {
        Material sheet = said.stock("floor").material();
        Dim grow = said.length("groove").minus(said.length("floor clearance"));
        Box air = new Box(
                        walls.get(1).box().right().minus(grow),
                        walls.get(2).box().left().plus(grow),
                        walls.get(0).box().back().minus(grow),
                        walls.get(3).box().front().plus(grow),
                        walls.get(0).box().bottom(),
                        walls.get(0).box().top())
                .inset(Side.BOTTOM, slides.floorUp())
                .slab(Side.BOTTOM, sheet.thickness());
        Part floor = in.part("floor", sheet).place(air, Lie.along(Axis.ACROSS, Side.TOP));
        Map<String, Dim> sizes = Map.of("depth", said.length("groove"), "width", sheet.thickness());
        walls.forEach(wall -> in.joint(Joint.Kind.GROOVE, floor, wall, sizes));
        return floor;
    }
}
