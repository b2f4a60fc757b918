package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.piece.Element;
import scantling.piece.Field;
import scantling.piece.Portion;
import scantling.piece.Shape;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** A bank of drawers, one above the other with only a gap between. */
final class DrawersElement implements ElementKind {
    @Override
    public Shape shape() {
        return Shape.of(
                "drawers",
                "A bank of drawers, one above the other.",
                Field.required(
                        "rows", Field.Kind.PORTIONS, "How high the fronts are, from the top down.", "[130, 150, rest]"),
                Facing.GAP,
                DrawerMaker.fronts(),
                BoxMaker.field());
    }

    @Override
    public Box build(Element element, Site site) {
        Element fronts = element.part("fronts");
        Facing facing = Facing.of(fronts, element);
        Site in = site.inside(element.name(), site.space());
        Box faces = facing.air(site.space(), fronts.stock("of").thickness());
        Optional<List<Dim>> heights = heights(element, in, faces.extent(Axis.UP));
        heights.ifPresent(list -> stack(element, in, faces, list, facing));
        return site.space();
    }

    private static void stack(Element element, Site in, Box faces, List<Dim> heights, Facing facing) {
        Box left = faces;
        for (int i = 0; i < heights.size(); i++) {
            Box face = left.slab(Side.TOP, heights.get(i));
            Box air = in.space();
            air = i == 0 ? air : air.with(Side.TOP, face.top().plus(facing.beyond()));
            boolean last = i == heights.size() - 1;
            air = last ? air : air.with(Side.BOTTOM, face.bottom().minus(facing.beyond()));
            Site drawer = in.inside("drawer " + (i + 1), air);
            new DrawerMaker(drawer, element).make(air, face);
            left = left.with(Side.TOP, face.bottom().minus(facing.gap()));
        }
    }

    /** The heights of the fronts; nothing when they do not come out, which the site has been told. */
    private static Optional<List<Dim>> heights(Element element, Site in, Dim whole) {
        List<Portion> rows = element.portions("rows");
        Dim rest = whole.minus(element.length("gap").times(rows.size() - 1L));
        Dim fronts = rest;
        int shares = 0;
        for (Portion row : rows) {
            if (row instanceof Portion.Fixed fixed) {
                rest = rest.minus(fixed.size());
            } else if (row instanceof Portion.Shares some) {
                shares += some.count();
            }
        }
        boolean comesOut = shares > 0 ? rest.value().isPositive() : rest.value().isZero();
        if (!comesOut) {
            in.problem(
                    element.span(),
                    "The drawer fronts take %s; without the gaps there are %s."
                            .formatted(in.say(fronts.minus(rest)), in.say(fronts)),
                    "Make one row (rest), or the rows higher or lower by %s."
                            .formatted(in.say(Dim.largerOf(rest, Dim.ZERO.minus(rest)))));
            return Optional.empty();
        }
        List<Dim> heights = new ArrayList<>();
        for (Portion row : rows) {
            heights.add(height(row, rest, shares));
        }
        return Optional.of(heights);
    }

    private static Dim height(Portion row, Dim rest, int shares) {
        if (row instanceof Portion.Fixed fixed) {
            return fixed.size();
        }
        return rest.share(((Portion.Shares) row).count(), shares);
    }
}
