package scantling.construct;

import java.util.List;
import java.util.Locale;
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

/** One part placed by numbers: for whatever no other element says. The space stays as it is. */
final class LooseElement implements ElementKind {
    private static final Shape AT = Shape.of(
            "at",
            "Where its left front lower corner is, from that of the space.",
            Field.usual("across", Field.Kind.LENGTH, "0 mm", "common practice", "From the left."),
            Field.usual("deep", Field.Kind.LENGTH, "0 mm", "common practice", "From the front."),
            Field.usual("up", Field.Kind.LENGTH, "0 mm", "common practice", "From the bottom."));

    @Override
    public Shape shape() {
        return Shape.of(
                "loose",
                "One part of a size of its own, put where you say.",
                Field.required("of", Field.Kind.STOCK, "What it is of; the width may stand behind it.", "oak 60"),
                Field.part("at", Field.Kind.PART, AT, "Where its left front lower corner is.", "{across: 20 mm}"),
                Field.required("length", Field.Kind.LENGTH, "Along its grain.", "600 mm"),
                Field.optional("width", Field.Kind.LENGTH, "Across its grain.", "60 mm"),
                Field.choice("along", "Which way its grain runs.", "across", "deep", "up"),
                Field.choice("thick", "Which way it is thick.", "up", "deep", "across"),
                Field.optional(
                        "outline", Field.Kind.OUTLINE, "Its shape, corner by corner.", "[[0, 0], [600, 0], [500, 60]]"),
                Butting.plain(
                        "How it meets what it touches.",
                        "glued edge",
                        "butt and screw",
                        "dowel",
                        "dado",
                        "groove",
                        "rabbet",
                        "carried"));
    }

    @Override
    public Box build(Element element, Site site) {
        Axis along = axis(element, "along");
        Axis thick = axis(element, "thick");
        Stock of = element.stock("of");
        if (along == thick) {
            site.problem(element.span(), "Its grain cannot run through its thickness.", "Change 'along' or 'thick'.");
            return site.space();
        }
        if (of.width().isEmpty() && element.findLength("width").isEmpty()) {
            site.problem(element.span(), "The part has no width.", "Write: width: 60 mm.");
            return site.space();
        }
        Dim width = element.findLength("width").or(of::width).orElseThrow();
        Box place = sized(corner(element, site), along, element.length("length"));
        place = sized(place, along.third(thick), width);
        place = sized(place, thick, of.thickness());
        List<Part> before = site.parts();
        PartMaker maker = site.part(element.name(), of.material()).showing(Side.values());
        element.findOutline("outline").ifPresent(maker::shaped);
        Part part = maker.place(place, Lie.along(along, face(thick)));
        site.standsAlone(part);
        join(element, site, part, before);
        site.later(() -> joinLater(element, site, part, before));
        return site.space();
    }

    private static Side face(Axis thick) {
        return Side.of(thick, thick == Axis.UP);
    }

    private static Box sized(Box box, Axis axis, Dim size) {
        return box.with(Side.of(axis, true), box.plane(Side.of(axis, false)).plus(size));
    }

    private static Box corner(Element element, Site site) {
        Box corner = site.space();
        for (Axis axis : Axis.values()) {
            Side near = Side.of(axis, false);
            Dim from = element.findPart("at")
                    .map(at -> at.length(axis.name().toLowerCase(Locale.ROOT)))
                    .orElse(Dim.ZERO);
            corner = corner.inset(near, from);
        }
        return corner;
    }

    private static Axis axis(Element element, String key) {
        return Axis.valueOf(element.text(key).toUpperCase(Locale.ROOT));
    }

    private static void join(Element element, Site site, Part part, List<Part> before) {
        Neighbours.fasten(site, part, before, Butting.kind(element));
        for (Part other : before) {
            if (Neighbours.overlaps(part.box(), other.box())) {
                if (enters(element)) {
                    enter(element, site, part, other);
                } else {
                    stands(element, site, part, other, depth(part.box().meet(other.box()), other));
                }
            }
        }
    }

    private static boolean enters(Element element) {
        return List.of(Joint.Kind.DADO, Joint.Kind.GROOVE, Joint.Kind.RABBET).contains(Butting.kind(element));
    }

    private static void enter(Element element, Site site, Part part, Part other) {
        Dim depth = depth(part.box().meet(other.box()), other);
        site.joint(Butting.kind(element), part, other, Map.of("depth", depth));
    }

    /** To what is built after it, it is joined by its own word as well, whatever that would have said of itself. */
    private static void joinLater(Element element, Site site, Part part, List<Part> before) {
        List<Part> after = site.parts().stream()
                .filter(other -> !other.path().equals(part.path()))
                .filter(other ->
                        before.stream().noneMatch(earlier -> earlier.path().equals(other.path())))
                .filter(other -> !site.isAlone(other))
                .toList();
        after.stream()
                .filter(other -> Neighbours.touches(part.box(), other.box()))
                .forEach(other -> site.partFrom(part, other));
        Neighbours.fasten(site, part, after, Butting.kind(element));
        if (enters(element)) {
            after.stream()
                    .filter(other -> Neighbours.overlaps(part.box(), other.box()) && !site.areJoined(part, other))
                    .forEach(other -> enter(element, site, part, other));
        }
    }

    private static Dim depth(Box wood, Part receiving) {
        return wood.extent(receiving.lie().thickness());
    }

    private static void stands(Element element, Site site, Part part, Part other, Dim depth) {
        LengthFormat format = LengthFormat.of(site.piece().unit());
        site.problem(
                element.span(),
                "(%s) stands (%s) inside (%s)."
                        .formatted(part.path(), format.formatWithUnit(depth.value()), other.path()),
                "Move it, or say how it is let in: joint: dado.");
    }
}
