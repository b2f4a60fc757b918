package scantling.drawing;

import java.util.List;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Surface;
import scantling.feature.WorkGroup;
import scantling.measure.LengthFormat;

/**
 * One part as it lies on the bench: its face side up, its face edge toward you. Its near end is then at the
 * left, or at the right for the other one of a mirrored pair. Edges, ends and the back side are laid flat around it where
 * there is work on them. Everything is dimensioned from the three marks.
 */
public final class PartDrawing {
    private static final double BOTH_NAMES = 116;
    private static final double STEP = 26;

    private final Sketch sketch;
    private final Taken taken = new Taken();
    private final Running running;
    private final WorkNumbers numbers;
    private final Part part;
    private final Scale scale;
    private final List<WorkGroup> work;
    private final Fold fold;
    private final WorkPlaces places;
    private final Worked worked;
    private final Contours contours;

    private PartDrawing(Part part, List<WorkGroup> work, LengthFormat format) {
        this.part = part;
        this.work = work;
        this.sketch = new Sketch(format);
        this.running = new Running(sketch, taken);
        this.numbers = new WorkNumbers(sketch, taken);
        PartLayout layout = PartLayout.of(part, work, running);
        this.scale = layout.scale();
        this.fold = layout.fold();
        this.places = layout.places();
        this.worked = new Worked(fold, scale);
        this.contours = new Contours(sketch, fold, part, scale);
    }

    /** Draws a part. @param work what is done to it @param title what stands under it */
    public static Drawing of(Part part, List<WorkGroup> work, String title, LengthFormat format) {
        PartDrawing drawing = new PartDrawing(part, work, format);
        drawing.surfaces();
        drawing.hiddenWork();
        drawing.work();
        drawing.marks();
        drawing.sizes();
        drawing.runs();
        drawing.numbered();
        return drawing.sketch.finish(title, drawing.scale);
    }

    private void surfaces() {
        contours.outline(Surface.FACE_SIDE);
        if (fold.shows(Surface.BACK_SIDE)) {
            contours.outline(Surface.BACK_SIDE);
            Hatch.Field back = fold.field(Surface.BACK_SIDE);
            words(new Spot(back.left(), back.top() - 6), "back side, face edge away from you", 10.5, Mark.Anchor.START);
        }
        for (Surface surface : List.of(Surface.FACE_EDGE, Surface.BACK_EDGE, Surface.NEAR_END, Surface.FAR_END)) {
            if (fold.shows(surface)) {
                contours.folded(surface);
            }
        }
        if (fold.shows(Surface.BACK_EDGE)) {
            Hatch.Field edge = fold.field(Surface.BACK_EDGE);
            words(new Spot(edge.left() + 2, edge.bottom() + 13), "back edge", 10.5, Mark.Anchor.START);
        }
    }

    private void words(Spot spot, String words, double size, Mark.Anchor anchor) {
        sketch.words(spot, words, size, anchor);
        taken.take(Taken.words(spot, words, size, anchor));
    }

    /** What is worked from elsewhere, as it would be seen through the face side. */
    private void hiddenWork() {
        for (WorkGroup group : work) {
            Surface surface = group.sample().surface();
            if (surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE) {
                continue;
            }
            for (Feature feature : group.features()) {
                sketch.edge(worked.corners(feature, Surface.FACE_SIDE), Sketch.FINE, !feature.isLeft());
            }
        }
    }

    private void work() {
        for (WorkGroup group : work) {
            for (Feature feature : group.features()) {
                Hatch.Field field = worked.field(feature, feature.surface());
                taken.take(field);
                worked.end(feature)
                        .ifPresent(end -> sketch.line(worked.middle(feature, feature.surface()), end, Sketch.HAIR));
                if (feature.kind() == Feature.Kind.HOLE) {
                    double radius = feature.radius().map(places::units).orElse(0.0);
                    sketch.circle(worked.middle(feature, feature.surface()), Math.max(radius, 1.2), Sketch.EDGE);
                } else {
                    sketch.edge(worked.corners(feature, feature.surface()), Sketch.EDGE, false);
                    if (!feature.isLeft() && feature.aim().isEmpty()) {
                        Hatch.slant(sketch, worked.inner(feature, feature.surface()), 7);
                    }
                }
            }
        }
    }

    /** The loop on the face side, running out at the face edge, and the caret on that edge. */
    private void marks() {
        double x = fold.length() * 0.5;
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
        if (fold.width() > 30) {
            sketch.path(loop, Sketch.OUTLINE);
        }
        boolean right = fold.mirrored();
        // Too short for both: the near end is where the heading of all drawings says.
        if (fold.length() > BOTH_NAMES) {
            words(
                    new Spot(right ? fold.length() - 2 : 2, 12),
                    "near end",
                    10.5,
                    right ? Mark.Anchor.END : Mark.Anchor.START);
        }
        words(
                new Spot(right ? 2 : fold.length() - 2, 12),
                "face edge",
                10.5,
                right ? Mark.Anchor.START : Mark.Anchor.END);
    }

    private void sizes() {
        Dimension.level(sketch, 0, fold.length(), fold.top(), fold.top() - STEP * 0.9, part.length());
        Dimension.upright(sketch, 0, -fold.width(), fold.left(), fold.left() - STEP, part.width());
    }

    private void runs() {
        runsOf(PartLayout.front(work), Surface.FACE_SIDE, fold.bottom());
        runThrough(Surface.FACE_EDGE, false);
        runThrough(Surface.BACK_EDGE, true);
        List<WorkGroup> behind = PartLayout.on(Surface.BACK_SIDE, work);
        if (!behind.isEmpty()) {
            runsOf(behind, Surface.BACK_SIDE, fold.field(Surface.BACK_SIDE).bottom());
        }
    }

    private void runsOf(List<WorkGroup> groups, Surface surface, double bottom) {
        running.level(
                places.alongs(groups, fold.length()),
                fold.spot(surface, 0, 0, 0).x(),
                bottom,
                dim -> fold.spot(surface, places.units(dim), 0, 0).x());
        boolean face = surface == Surface.FACE_SIDE;
        running.upright(
                places.acrosses(groups, fold.width()),
                fold.spot(surface, 0, 0, 0).y(),
                face ? fold.right() : fold.field(surface).right(),
                face,
                dim -> fold.spot(surface, 0, places.units(dim), 0).y());
    }

    /** Sizes from the face side on an edge that is laid flat. */
    private void runThrough(Surface surface, boolean upward) {
        running.upright(
                places.throughs(PartLayout.on(surface, work), fold.thick()),
                fold.spot(surface, 0, 0, 0).y(),
                fold.length(),
                upward,
                dim -> fold.spot(surface, 0, 0, places.units(dim)).y());
    }

    private void numbered() {
        for (WorkGroup group : work) {
            Feature first = group.sample();
            numbers.write(String.valueOf(group.number()), worked.field(first, first.surface()));
        }
    }
}
