package scantling.construct;

import java.util.Locale;
import java.util.Map;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Shape;
import scantling.piece.Stock;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Slats side by side with even gaps: a back, an open side, a bed, a duckboard. */
final class SlatsElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.of(
                "slats",
                "Slats side by side with even gaps between them.",
                Field.required("of", Field.Kind.STOCK, "What they are of, with their width.", "oak 45"),
                Field.required("count", Field.Kind.COUNT, "How many.", "7"),
                Field.choice(
                        "on", "The side of the space they lie at.", "back", "front", "left", "right", "bottom", "top"),
                Field.choice("run", "Which way each one runs.", "up", "across", "deep"),
                Field.usual(
                        "housed",
                        Field.Kind.LENGTH,
                        "0 mm",
                        "common practice",
                        "How deep their ends are let into what they run between."),
                Field.choice(
                        "joint", "How their ends are fastened when they are not let in.", "butt and screw", "dowel"));
    }

    @Override
    public Box build(Element element, Site site) {
        Box space = site.space();
        Site in = site.inside(element.name(), space);
        Side side = Sides.of(element, "on");
        Axis along = Axis.valueOf(element.text("run").toUpperCase(Locale.ROOT));
        if (along == side.axis()) {
            in.problem(
                    element.span(),
                    "Slats on the %s cannot run %s.".formatted(side.word(), element.text("run")),
                    "Let them run along that side.");
            return space;
        }
        Stock stock = element.stock("of");
        Dim width = Widths.of(in, element, "of");
        int count = element.count("count");
        Axis step = along.third(side.axis());
        Dim free = space.extent(step).minus(width.times(count));
        if (count < 1 || free.value().isNegative()) {
            in.problem(
                    element.span(),
                    "%d slats %s wide do not go into %s.".formatted(count, in.say(width), in.say(space.extent(step))),
                    "Take fewer or narrower ones.");
            return space;
        }
        Dim gap = in.name("gap", free.share(1, count + 1L));
        Box row = space.slab(side, stock.thickness());
        Side from = Side.of(step, false);
        for (int i = 0; i < count; i++) {
            Dim at = gap.times(i + 1L).plus(width.times(i));
            slat(element, in, row.inset(from, at).slab(from, width), new Lay(along, side, i + 1));
        }
        return space.inset(side, stock.thickness());
    }

    /** @param along which way it runs @param side where it lies @param number its number */
    private record Lay(Axis along, Side side, int number) {}

    private static void slat(Element element, Site in, Box air, Lay lay) {
        Side near = Side.of(lay.along(), false);
        Dim outward = Dim.ZERO.minus(element.length("housed"));
        Part slat = in.part("slat " + lay.number(), element.stock("of").material())
                .holding(lay.side())
                .showing(lay.side())
                .place(air.inset(near, outward).inset(near.opposite(), outward), Lie.along(lay.along(), lay.side()));
        boolean housed = element.length("housed").value().isPositive();
        Joint.Kind plain = element.is("joint", "dowel") ? Joint.Kind.DOWEL : Joint.Kind.SCREW;
        Joint.Kind kind = housed ? Joint.Kind.DADO : plain;
        Map<String, Dim> sizes = housed ? Map.of("depth", element.length("housed")) : Map.of();
        Holders.join(in, slat, near, kind, sizes);
        Holders.join(in, slat, near.opposite(), kind, sizes);
    }
}
