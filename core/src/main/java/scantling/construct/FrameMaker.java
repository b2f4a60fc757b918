package scantling.construct;

import java.util.ArrayList;
import java.util.List;
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

/** Makes a standing frame of two stiles and rails, with infill, that shows its face toward one side. */
final class FrameMaker {
    private final Site in;
    private final Side out;
    private final Element said;
    private final Axis along;
    private final Side near;
    private final Side far;

    /** @param in what it is named after @param out the side its face shows toward @param said the fields of {@link #field} */
    FrameMaker(Site in, Side out, Element said) {
        this.in = in;
        this.out = out;
        this.said = said;
        along = out.axis() == Axis.ACROSS ? Axis.DEEP : Axis.ACROSS;
        near = Side.of(along, false);
        far = Side.of(along, true);
    }

    /** What can be said of a frame. */
    static Field field() {
        Field[] joint = RailJoint.fields(
                "loose tenon",
                "mortise and tenon",
                "haunched mortise and tenon",
                "dowel",
                "biscuit",
                "half-lap",
                "bridle",
                "pocket screw",
                "auto");
        Shape shape = Shape.of(
                "frame",
                "Two stiles with rails between them.",
                Field.required("stiles", Field.Kind.STOCK, "What the uprights are of, with their width.", "leg 40"),
                Field.required("top rail", Field.Kind.STOCK, "What the top rail is of, with its width.", "cherry 60"),
                Field.required(
                        "bottom rail", Field.Kind.STOCK, "What the bottom rail is of, with its width.", "cherry 80"),
                Field.optional(
                        "middle rails",
                        Field.Kind.STOCK,
                        "What the rails between top and bottom are of, with their width.",
                        "cherry 50"),
                Field.usual(
                        "middle rail count",
                        Field.Kind.COUNT,
                        "1",
                        "common practice",
                        "How many middle rails, spaced evenly; counts only where they are said."),
                Field.usual(
                        "bottom rail up",
                        Field.Kind.LENGTH,
                        "0 mm",
                        "common practice",
                        "How far the bottom rail is above the foot of the stiles, which then stand as legs."),
                Field.usual(
                        "rails set back",
                        Field.Kind.LENGTH,
                        "0 mm",
                        "common practice",
                        "How far the face of the rails lies behind the face of the stiles."),
                joint[0],
                joint[1]);
        return Field.part(
                "frame",
                Field.Kind.PART,
                shape,
                "A frame of stiles and rails.",
                "{stiles: leg 40, top rail: cherry 60, bottom rail: cherry 80}");
    }

    /** A frame as it stands. @param stiles near and far @param rails from the bottom up @param panels from the bottom up @param inner the plane of its back */
    record Framed(List<Part> stiles, List<Part> rails, List<Part> panels, Dim inner) {
        List<Part> parts() {
            List<Part> all = new ArrayList<>(stiles);
            all.addAll(rails);
            all.addAll(panels);
            return all;
        }
    }

    /** Makes it in air that has the frame's face on its outer side; nothing when it cannot be, which the site has been told. */
    Optional<Framed> make(Box air, Optional<Element> infill) {
        Stock stiles = said.stock("stiles");
        Dim width = Widths.of(in, said, "stiles");
        RailJoint joint = RailJoint.of(in, said, width);
        if (!fits(air, width)) {
            return Optional.empty();
        }
        Part first = stile(stiles, air.slab(near, width), near);
        Box between = air.with(near, first.box().plane(far).minus(joint.adds()))
                .with(far, air.plane(far).minus(width).plus(joint.adds()));
        List<Part> rails = rails(between);
        Dim secondAt = rails.get(0).box().plane(far).minus(joint.adds());
        Box secondAir = air.with(near, secondAt).with(far, secondAt.plus(width));
        Part second = stile(stiles, secondAir, far);
        List<Part> uprights = List.of(first, second);
        rails.forEach(rail -> uprights.forEach(stile -> in.joint(joint.kind(), rail, stile, joint.sizes())));
        List<Part> panels = infill.map(fill -> new InfillMaker(in, out, fill).make(uprights, rails))
                .orElse(List.of());
        return Optional.of(new Framed(uprights, rails, panels, inner(first, rails)));
    }

    private boolean fits(Box air, Dim stile) {
        Dim clear = air.extent(along).minus(stile.times(2));
        Dim rails = Widths.of(in, said, "top rail")
                .plus(Widths.of(in, said, "bottom rail"))
                .plus(said.length("bottom rail up"))
                .plus(middles()
                        .map(w -> w.times(said.count("middle rail count")))
                        .orElse(Dim.ZERO));
        return fits(clear.value().isPositive(), "Two stiles", stile.times(2), "wide", air.extent(along))
                & fits(rails.compareTo(air.extent(Axis.UP)) < 0, "The rails", rails, "high", air.extent(Axis.UP));
    }

    private boolean fits(boolean so, String what, Dim take, String way, Dim whole) {
        if (!so) {
            in.problem(
                    said.span(),
                    "%s take %s of a frame that is %s %s.".formatted(what, in.say(take), in.say(whole), way),
                    "Make them narrower, or the frame larger.");
        }
        return so;
    }

    private Optional<Dim> middles() {
        return said.findStock("middle rails").map(stock -> Widths.of(in, said, "middle rails"));
    }

    private Part stile(Stock stock, Box air, Side at) {
        return in.part(at.word() + " stile", stock.material())
                .holding(out)
                .showing(out)
                .place(air.slab(out, stock.thickness()), Lie.along(Axis.UP, out));
    }

    private List<Part> rails(Box between) {
        Dim foot = said.length("bottom rail up");
        Box low = between.inset(Side.BOTTOM, foot);
        Part bottom = rail("bottom rail", "bottom rail", low.slab(Side.BOTTOM, Widths.of(in, said, "bottom rail")));
        Box same = between.with(far, bottom.box().plane(far));
        Part top = rail("top rail", "top rail", same.slab(Side.TOP, Widths.of(in, said, "top rail")));
        List<Part> all = new ArrayList<>(List.of(bottom));
        middles().ifPresent(width -> all.addAll(middles(same, bottom, top, width)));
        all.add(top);
        return all;
    }

    private List<Part> middles(Box between, Part bottom, Part top, Dim width) {
        int count = said.count("middle rail count");
        Dim start = bottom.box().top();
        Dim clear = top.box().bottom().minus(start).minus(width.times(count));
        List<Part> made = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            Dim at = start.plus(clear.share(i, count + 1L)).plus(width.times(i - 1L));
            String name = count == 1 ? "middle rail" : "middle rail " + i;
            made.add(rail(name, "middle rails", between.with(Side.BOTTOM, at).slab(Side.BOTTOM, width)));
        }
        return made;
    }

    private Part rail(String name, String field, Box air) {
        Stock stock = said.stock(field);
        Box box = air.inset(out, said.length("rails set back")).slab(out, stock.thickness());
        PartMaker maker = in.part(name, stock.material()).holding(out).showing(out);
        return (name.equals("top rail") ? maker.holding(Side.TOP) : maker).place(box, Lie.along(along, out));
    }

    private Dim inner(Part stile, List<Part> rails) {
        Side back = out.opposite();
        Dim deepest = stile.box().plane(back);
        for (Part rail : rails) {
            Dim plane = rail.box().plane(back);
            if (back.isFar() ? plane.compareTo(deepest) > 0 : plane.compareTo(deepest) < 0) {
                deepest = plane;
            }
        }
        return deepest;
    }
}
