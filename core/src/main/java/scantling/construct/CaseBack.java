package scantling.construct;

import java.util.List;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Box;
import scantling.space.Side;

/** The back of a case: in a rabbet of the sides, in a groove all round, or laid on. */
final class CaseBack {
    static final Shape SHAPE = Shape.shortly(
            "back",
            "of",
            "A back for a case.",
            Field.required("of", Field.Kind.STOCK, "What it is of.", "thin ply"),
            Field.choice("in", "How the case holds it.", "rabbet", "groove", "laid on"),
            Field.optional("depth", Field.Kind.LENGTH, "How deep it goes into the boards around it.", "9 mm"),
            Field.usual(
                    "set in",
                    Field.Kind.LENGTH,
                    "12 mm",
                    "common practice",
                    "How far a back in a groove stands in from the back of the sides."),
            Field.usual(
                    "clearance",
                    Field.Kind.LENGTH,
                    "0.5 mm",
                    "common practice",
                    "The air in a groove beyond each edge of the back."));

    private final Element said;
    private final Site in;
    private final Stock of;
    private final Box outer;

    CaseBack(Element said, Site in) {
        this.said = said;
        this.in = in;
        of = said.stock("of");
        outer = in.space();
    }

    /** Where the sides end. */
    Dim sidesEnd() {
        return said.is("in", "laid on") ? outer.back().minus(of.thickness()) : outer.back();
    }

    /** Where the boards between the sides end: before the back, so that a rabbet need be cut in the sides only. */
    Dim boardsEnd() {
        return said.is("in", "groove") ? outer.back() : outer.back().minus(of.thickness());
    }

    /** Builds it. @param inside the case without it @param shell left side, right side, bottom @return the inside before it */
    Box build(Box inside, List<Part> shell) {
        Part back = said.is("in", "groove") ? inGroove(inside, shell) : over(shell);
        return inside.with(Side.BACK, Dim.smallerOf(inside.back(), back.box().front()));
    }

    private Part over(List<Part> shell) {
        boolean laid = said.is("in", "laid on");
        Part left = shell.get(0);
        Part right = shell.get(1);
        Dim depth = laid ? left.thickness() : depth(UsualDepths.rabbet(left.thickness()), left.thickness());
        Dim front = laid ? left.box().back() : shell.get(2).box().back();
        Box place = new Box(
                left.box().right().minus(depth),
                right.box().left().plus(depth),
                front,
                front.plus(of.thickness()),
                shell.get(2).box().bottom(),
                outer.top());
        Part back = place(place);
        if (!laid) {
            List.of(left, right).forEach(side -> in.joint(Joint.Kind.RABBET, back, side, Housing.sizes(back, depth)));
        }
        Neighbours.fasten(in, back, others(back), Joint.Kind.SCREW);
        return back;
    }

    private Part inGroove(Box inside, List<Part> shell) {
        Dim thickness = shell.get(0).thickness();
        Dim depth = depth(UsualDepths.groove(thickness), thickness);
        Dim plane = outer.back().minus(said.length("set in"));
        Box place = inside.with(Side.BACK, plane).slab(Side.BACK, of.thickness());
        Dim tongue = depth.minus(said.length("clearance"));
        for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.BOTTOM, Side.TOP)) {
            place = Neighbours.at(in.parts(), place, side).isEmpty()
                    ? place
                    : place.inset(side, Dim.ZERO.minus(tongue));
        }
        Part back = place(place);
        in.parts().stream()
                .filter(part -> part != back && Neighbours.overlaps(part.box(), back.box()))
                .forEach(part -> in.joint(Joint.Kind.GROOVE, back, part, Housing.sizes(back, depth)));
        return back;
    }

    private Part place(Box place) {
        return in.part("back", of.material()).showing(Side.FRONT).place(place, Grain.alongLonger(place, Side.FRONT));
    }

    private List<Part> others(Part back) {
        return in.parts().stream().filter(part -> part != back).toList();
    }

    private Dim depth(Dim usual, Dim thickness) {
        Dim depth = said.findLength("depth").orElse(usual);
        if (depth.value().isPositive() && depth.compareTo(thickness) < 0) {
            return depth;
        }
        in.problem(
                said.span(),
                "The back cannot go (%s) into sides (%s) thick.".formatted(depth.value(), thickness.value()),
                "Half of their thickness is usual for a rabbet, a third for a groove.");
        return usual;
    }
}
