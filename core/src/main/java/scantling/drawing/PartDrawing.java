package scantling.drawing;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;

/**
 * One part as it lies on the bench: its face side up, its face edge toward you. Its near end is then at the
 * left, or at the right for the other one of a mirrored pair. Everything taken from it or left on it is dimensioned from those three marks.
 */
public final class PartDrawing {
    private static final double PAPER_LONG = 118;
    private static final double PAPER_WIDE = 42;
    private static final double STEP = 26;

    private final Sketch sketch;
    private final Part part;
    private final Scale scale;
    private final boolean mirrored;
    private final double length;
    private final double width;

    private PartDrawing(Part part, LengthFormat format) {
        this.part = part;
        this.sketch = new Sketch(format);
        Marked marked = new Marked(part);
        double longMm = Math.max(marked.along(part.box()).to().value().toMillimetres(), 1);
        double wideMm = Math.max(marked.across(part.box()).to().value().toMillimetres(), 1);
        this.scale = Scale.fitting(longMm, PAPER_LONG).and(Scale.fitting(wideMm, PAPER_WIDE));
        this.mirrored = marked.isMirrored();
        this.length = longMm * scale.unitsPerMm();
        this.width = wideMm * scale.unitsPerMm();
    }

    /** Draws a part of an assembly. @param title what stands under it */
    public static Drawing of(Assembly assembly, Part part, String title, LengthFormat format) {
        PartDrawing drawing = new PartDrawing(part, format);
        List<Region> regions = Region.of(assembly, part);
        drawing.outline();
        regions.forEach(drawing::region);
        drawing.marks();
        drawing.sizes();
        drawing.running(regions);
        return drawing.sketch.finish(title, drawing.scale);
    }

    private void outline() {
        List<Spot> spots = new Marked(part)
                .corners().stream()
                        .map(corner -> spot(corner.along(), corner.across()))
                        .toList();
        sketch.shape(spots, Sketch.OUTLINE);
    }

    private void region(Region region) {
        Spot from = spot(region.along().from(), region.across().from());
        Spot to = spot(region.along().to(), region.across().to());
        List<Spot> edge = List.of(from, new Spot(to.x(), from.y()), to, new Spot(from.x(), to.y()));
        boolean hidden = !region.isSeen();
        sketch.edge(edge, Sketch.EDGE, hidden);
        if (region.removed() && !hidden) {
            Hatch.slant(
                    sketch,
                    new Hatch.Field(
                            Math.min(from.x(), to.x()),
                            Math.min(from.y(), to.y()),
                            Math.max(from.x(), to.x()),
                            Math.max(from.y(), to.y())),
                    7);
        }
    }

    /** The loop on the face side, running out at the face edge, and the caret on that edge. */
    private void marks() {
        double x = length * 0.5;
        sketch.path(List.of(new Spot(x - 6, -0.5), new Spot(x, -10), new Spot(x + 6, -0.5)), Sketch.OUTLINE);
        List<Spot> loop = List.of(
                new Spot(x, -10),
                new Spot(x + 1, -17),
                new Spot(x + 5, -23),
                new Spot(x + 10, -25),
                new Spot(x + 14, -22),
                new Spot(x + 13, -17),
                new Spot(x + 8, -14),
                new Spot(x, -14));
        if (width > 30) {
            sketch.path(loop, Sketch.OUTLINE);
        }
        sketch.words(new Spot(x + 12, 11), "face edge", 10.5, Mark.Anchor.START);
        sketch.words(
                new Spot(mirrored ? length - 2 : 2, 11),
                "near end",
                10.5,
                mirrored ? Mark.Anchor.END : Mark.Anchor.START);
    }

    private void sizes() {
        Dimension.level(sketch, 0, length, -width, -width - STEP * 0.9, part.length());
        Dimension.upright(sketch, 0, -width, 0, -STEP, part.width());
    }

    /** Running sizes from the near end below the part and from the face edge at its right, each from a small circle. */
    private void running(List<Region> regions) {
        Set<Dim> alongs = new LinkedHashSet<>();
        Set<Dim> acrosses = new LinkedHashSet<>();
        for (Region region : regions) {
            alongs.add(region.along().from());
            alongs.add(region.along().to());
            acrosses.add(region.across().from());
            acrosses.add(region.across().to());
        }
        runAlong(fromTheLeft(inside(alongs, length)));
        runAcross(inside(acrosses, width));
    }

    private List<Dim> inside(Set<Dim> dims, double most) {
        return dims.stream()
                .filter(dim -> units(dim) > 0.01 && units(dim) < most - 0.01)
                .sorted()
                .toList();
    }

    private List<Dim> fromTheLeft(List<Dim> rising) {
        return mirrored ? rising.stream().sorted(Comparator.reverseOrder()).toList() : rising;
    }

    private void runAlong(List<Dim> dims) {
        if (dims.isEmpty()) {
            return;
        }
        double y = 24;
        double zero = fromLeft(0);
        sketch.circle(new Spot(zero, y), 2.5, Sketch.EDGE);
        double clear = Double.NEGATIVE_INFINITY;
        for (Dim dim : dims) {
            double x = fromLeft(units(dim));
            double at = Math.max(x, clear);
            sketch.line(new Spot(x, 3), new Spot(x, y + 3), Sketch.HAIR);
            sketch.line(new Spot(x, y + 3), new Spot(at, y + 11), Sketch.HAIR);
            sketch.line(new Spot(x - 3, y + 3), new Spot(x + 3, y - 3), 1.5);
            sketch.figure(new Spot(at, y + 13 + sketch.width(dim) / 2), dim, true);
            clear = at + Sketch.TEXT + 4;
        }
        double far = fromLeft(units(dims.get(mirrored ? 0 : dims.size() - 1)));
        sketch.line(new Spot(zero + (mirrored ? -2.5 : 2.5), y), new Spot(far, y), Sketch.FINE);
    }

    private void runAcross(List<Dim> dims) {
        if (dims.isEmpty()) {
            return;
        }
        double x = length + 14;
        sketch.circle(new Spot(x, 0), 2.5, Sketch.EDGE);
        double clear = Double.POSITIVE_INFINITY;
        for (Dim dim : dims) {
            double y = -units(dim);
            double at = Math.min(y, clear);
            sketch.line(new Spot(length + 3, y), new Spot(x + 3, y), Sketch.HAIR);
            sketch.line(new Spot(x + 3, y), new Spot(x + 11, at), Sketch.HAIR);
            sketch.line(new Spot(x - 3, y + 3), new Spot(x + 3, y - 3), 1.5);
            sketch.figure(new Spot(x + 14 + sketch.width(dim) / 2, at + 4), dim, false);
            clear = at - Sketch.TEXT - 5;
        }
        sketch.line(new Spot(x, -2.5), new Spot(x, -units(dims.get(dims.size() - 1))), Sketch.FINE);
    }

    private Spot spot(Dim along, Dim across) {
        return new Spot(fromLeft(units(along)), -units(across));
    }

    private double fromLeft(double along) {
        return mirrored ? length - along : along;
    }

    private double units(Dim dim) {
        return dim.value().toMillimetres() * scale.unitsPerMm();
    }
}
