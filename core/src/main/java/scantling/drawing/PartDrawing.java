package scantling.drawing;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import scantling.construct.Part;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Surface;
import scantling.feature.WorkGroup;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/**
 * One part as it lies on the bench: its face side up, its face edge toward you. Its near end is then at the
 * left, or at the right for the other one of a mirrored pair. Edges, ends and the back side are laid flat around it where
 * there is work on them. Everything is dimensioned from the three marks.
 */
public final class PartDrawing {
    private static final double PAPER_LONG = 108;
    private static final double PAPER_WIDE = 30;
    private static final double PAPER_UPRIGHT = 60;
    private static final double BOTH_NAMES = 116;
    private static final double STEP = 26;
    private static final double SMALL = 0.01;
    /** More running figures than this for the length of a part would stand far from their places. */
    private static final double CROWD = 1.25;

    private final Sketch sketch;
    private final Taken taken = new Taken();
    private final Running running;
    private final WorkNumbers numbers;
    private final Part part;
    private final Scale scale;
    private final List<WorkGroup> work;
    private final Fold fold;
    private final Worked worked;
    private final Contours contours;

    private PartDrawing(Part part, List<WorkGroup> work, LengthFormat format) {
        this.part = part;
        this.work = work;
        this.sketch = new Sketch(format);
        this.running = new Running(sketch, taken);
        this.numbers = new WorkNumbers(sketch, taken);
        Marked marked = new Marked(part);
        this.scale = Scale.fitting(Math.max(mm(marked.length()), 1), PAPER_LONG)
                .and(Scale.fitting(
                        Math.max(mm(marked.width()), 1),
                        marked.width().compareTo(marked.length()) > 0
                                        || work.stream().anyMatch(PartDrawing::isFine)
                                ? PAPER_UPRIGHT
                                : PAPER_WIDE));
        Set<Surface> shown = EnumSet.of(Surface.FACE_SIDE);
        work.forEach(group -> shown.add(group.sample().surface()));
        if (Profile.isMoreThanOutline(part)) {
            shown.add(Surface.FACE_EDGE);
        }
        Fold flat = new Fold(
                Math.max(units(marked.length()), 1),
                Math.max(units(marked.width()), 1),
                units(marked.thickness()),
                part.lie().hasNearEndRight(),
                shown,
                0);
        double room = running.room(alongs(front(), flat));
        this.fold =
                new Fold(flat.length(), flat.width(), flat.thick(), flat.mirrored(), shown, flat.bottom() + room + 40);
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
                    double radius = feature.radius().map(this::units).orElse(0.0);
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
        runsOf(front(), Surface.FACE_SIDE, fold.bottom());
        runThrough(Surface.FACE_EDGE, false);
        runThrough(Surface.BACK_EDGE, true);
        List<WorkGroup> behind = on(Surface.BACK_SIDE);
        if (!behind.isEmpty()) {
            runsOf(behind, Surface.BACK_SIDE, fold.field(Surface.BACK_SIDE).bottom());
        }
    }

    private void runsOf(List<WorkGroup> groups, Surface surface, double bottom) {
        running.level(
                alongs(groups, fold),
                fold.spot(surface, 0, 0, 0).x(),
                bottom,
                dim -> fold.spot(surface, units(dim), 0, 0).x());
        boolean face = surface == Surface.FACE_SIDE;
        List<Dim> acrosses = places(groups, Feature::across, Aim::across, PartDrawing::isPlacedAcross, fold.width());
        running.upright(
                acrosses,
                fold.spot(surface, 0, 0, 0).y(),
                face ? fold.right() : fold.length(),
                face,
                dim -> fold.spot(surface, 0, units(dim), 0).y());
    }

    /** Sizes from the face side on an edge that is laid flat. */
    private void runThrough(Surface surface, boolean upward) {
        List<WorkGroup> on = work.stream()
                .filter(group -> group.sample().surface() == surface)
                .toList();
        List<Dim> throughs = places(on, Feature::through, Aim::through, feature -> true, fold.thick());
        running.upright(
                throughs,
                fold.spot(surface, 0, 0, 0).y(),
                fold.length(),
                upward,
                dim -> fold.spot(surface, 0, 0, units(dim)).y());
    }

    private List<WorkGroup> on(Surface surface) {
        return work.stream()
                .filter(group -> group.sample().surface() == surface)
                .toList();
    }

    private List<WorkGroup> front() {
        return work.stream()
                .filter(group -> group.sample().surface() != Surface.BACK_SIDE)
                .toList();
    }

    private List<Dim> alongs(List<WorkGroup> groups, Fold flat) {
        List<Dim> all = places(groups, Feature::along, Aim::along, PartDrawing::isPlacedAlong, flat.length());
        if (all.size() * (Sketch.TEXT + 4) <= flat.length() * CROWD) {
            return all;
        }
        List<WorkGroup> limits = groups.stream()
                .map(group -> new WorkGroup(
                        group.number(), List.of(group.sample(), group.features().get(group.count() - 1))))
                .toList();
        return places(limits, Feature::along, Aim::along, PartDrawing::isPlacedAlong, flat.length());
    }

    /** Tails and fingers are nothing at a small scale. */
    private static boolean isFine(WorkGroup group) {
        return group.sample().kind() == Feature.Kind.PIN;
    }

    /** Sockets are what pins leave: the sizes of both would be the same. */
    private boolean isTold(Feature feature) {
        return feature.kind() != Feature.Kind.SOCKET || work.stream().noneMatch(PartDrawing::isFine);
    }

    /** On an end the length of a tenon is where its shoulder is; the depth of a hole is no place on the face. */
    private static boolean isPlacedAlong(Feature feature) {
        boolean onEnd = feature.surface() == Surface.NEAR_END || feature.surface() == Surface.FAR_END;
        return !onEnd || feature.isLeft();
    }

    private static boolean isPlacedAcross(Feature feature) {
        boolean onEdge = feature.surface() == Surface.FACE_EDGE || feature.surface() == Surface.BACK_EDGE;
        return !onEdge || feature.isLeft();
    }

    private List<Dim> places(
            List<WorkGroup> groups,
            Function<Feature, Range> range,
            Function<Aim, Dim> aimed,
            Predicate<Feature> placed,
            double most) {
        Map<Length, Dim> all = new TreeMap<>();
        groups.stream()
                .flatMap(group -> group.features().stream())
                .filter(placed)
                .filter(this::isTold)
                .flatMap(feature -> feature.aim()
                        .filter(aim -> !feature.isLeft())
                        .map(aim -> List.of(aimed.apply(aim)).stream())
                        .orElseGet(() -> places(feature, range.apply(feature)).stream()))
                .filter(dim -> units(dim) > SMALL && units(dim) < most - SMALL)
                .forEach(dim -> all.putIfAbsent(dim.value(), dim));
        return List.copyOf(all.values());
    }

    /** A hole and a slot are set out by their middle, all else by where it begins and ends. */
    private static Collection<Dim> places(Feature feature, Range range) {
        boolean byMiddle = feature.kind() == Feature.Kind.HOLE || feature.kind() == Feature.Kind.SLOT;
        return byMiddle ? List.of(range.middle()) : List.of(range.from(), range.to());
    }

    private void numbered() {
        for (WorkGroup group : work) {
            Feature first = group.sample();
            numbers.write(String.valueOf(group.number()), worked.field(first, first.surface()));
        }
    }

    private double units(Dim dim) {
        return mm(dim) * scale.unitsPerMm();
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
