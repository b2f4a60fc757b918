package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;

/**
 * A template at its true size: the work that one fitting needs on one surface, with the ends and edges of the part that
 * are near enough to be laid against, and the middle of every hole marked for the punch.
 */
public final class WorkTemplate {
    private static final Scale TRUE = new Scale(10);
    /** An end or edge further off than this is told by a size, not drawn. */
    private static final double NEAR_MM = 110;

    /** A template shorter than this stays in one piece. */
    private static final double LONG_MM = 170;
    /**
     * Surfaces on which what grows from the near end, or from the face edge, runs to the left when one looks at them with the
     * face edge, or the face side, below: paper laid on the wood must not be a mirror image of it.
     */
    private static final Set<Surface> RUNS_LEFT = Set.of(Surface.BACK_SIDE, Surface.FACE_EDGE, Surface.FAR_END);

    private static final double ROUND_MM = 12;
    private static final double CROSS = 9;

    private final Sketch sketch;
    private final Taken taken = new Taken();
    private final Surface surface;
    private final boolean turned;
    private final double longMm;
    private final double wideMm;
    private double rightEdge;

    private WorkTemplate(Part part, Surface surface, LengthFormat format) {
        this.sketch = new Sketch(format);
        this.surface = surface;
        this.turned = part.lie().hasNearEndRight() != RUNS_LEFT.contains(surface);
        Marked marked = new Marked(part);
        this.longMm = mm(isEnd() ? marked.width() : marked.length());
        this.wideMm = mm(isFace() ? marked.width() : marked.thickness());
    }

    /**
     * Draws it; where the work lies at both ends and none between, a template to each end.
     *
     * @param features of one part, all on one of its surfaces
     * @param title what it is of
     */
    public static List<Drawing> all(Part part, List<Feature> features, String title, LengthFormat format) {
        WorkTemplate measure = new WorkTemplate(part, features.get(0).surface(), format);
        List<Feature> near = features.stream()
                .filter(feature -> mm(measure.first(feature).to()) <= NEAR_MM)
                .toList();
        List<Feature> far = features.stream()
                .filter(feature -> measure.longMm - mm(measure.first(feature).from()) <= NEAR_MM)
                .toList();
        boolean apart = measure.longMm > LONG_MM && near.size() + far.size() == features.size();
        if (!apart || near.isEmpty() || far.isEmpty()) {
            return List.of(of(part, features, title, format));
        }
        return List.of(
                of(part, near, title + ", " + measure.sides()[0], format),
                of(part, far, title + ", " + measure.sides()[1], format));
    }

    private static Drawing of(Part part, List<Feature> features, String title, LengthFormat format) {
        WorkTemplate template = new WorkTemplate(part, features.get(0).surface(), format);
        template.edges(features);
        features.forEach(template::work);
        template.sizes(features);
        return template.sketch.finish(title, TRUE);
    }

    private boolean isEnd() {
        return surface == Surface.NEAR_END || surface == Surface.FAR_END;
    }

    private boolean isFace() {
        return surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE;
    }

    private Range first(Feature feature) {
        return isEnd() ? feature.across() : feature.along();
    }

    private Range second(Feature feature) {
        return isFace() ? feature.across() : feature.through();
    }

    private Dim firstMiddle(Feature feature) {
        return isEnd() ? feature.middleAcross() : feature.middleAlong();
    }

    private Dim secondMiddle(Feature feature) {
        return isFace() ? feature.middleAcross() : feature.middleThrough();
    }

    /** What lies where both sizes begin and end: first to the left, to the right, then below and above. */
    private String[] sides() {
        return new String[] {
            isEnd() ? "face edge" : "near end",
            isEnd() ? "back edge" : "far end",
            isFace() ? "face edge" : "face side",
            isFace() ? "back edge" : "back side"
        };
    }

    private void edges(List<Feature> features) {
        double from = least(features, this::first);
        double to = most(features, this::first);
        double low = least(features, this::second);
        double high = most(features, this::second);
        double left = from <= NEAR_MM ? 0 : from - ROUND_MM;
        double right = longMm - to <= NEAR_MM ? longMm : to + ROUND_MM;
        double bottom = low <= NEAR_MM ? 0 : low - ROUND_MM;
        double top = wideMm - high <= NEAR_MM ? wideMm : high + ROUND_MM;
        rightEdge = Math.max(spot(left, 0).x(), spot(right, 0).x());
        String[] names = sides();
        side(spot(left, bottom), spot(left, top), from <= NEAR_MM, names[0]);
        side(spot(right, bottom), spot(right, top), longMm - to <= NEAR_MM, names[1]);
        side(spot(left, bottom), spot(right, bottom), low <= NEAR_MM, names[2]);
        side(spot(left, top), spot(right, top), wideMm - high <= NEAR_MM, names[3]);
    }

    /** An edge of the part is a line with its name; a mere end of the template is dashed. */
    private void side(Spot from, Spot to, boolean real, String name) {
        if (!real) {
            sketch.dashed(from, to, Sketch.HAIR);
            return;
        }
        sketch.line(from, to, Sketch.OUTLINE);
        boolean level = from.y() == to.y();
        Spot middle = new Spot((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        Spot spot = level ? middle.shifted(0, -4) : middle.shifted(4, 0);
        sketch.words(spot, name, 10.5, Mark.Anchor.START);
        taken.take(Taken.words(spot, name, 10.5, Mark.Anchor.START));
    }

    private void work(Feature feature) {
        Spot middle = spot(mm(firstMiddle(feature)), mm(secondMiddle(feature)));
        if (feature.kind() == Feature.Kind.HOLE) {
            double radius = feature.radius().map(r -> mm(r) * TRUE.unitsPerMm()).orElse(0.0);
            sketch.circle(middle, radius, Sketch.EDGE);
            sketch.line(middle.shifted(-radius - CROSS, 0), middle.shifted(radius + CROSS, 0), Sketch.HAIR);
            sketch.line(middle.shifted(0, -radius - CROSS), middle.shifted(0, radius + CROSS), Sketch.HAIR);
            return;
        }
        Hatch.Field field = Fold.box(
                spot(mm(first(feature).from()), mm(second(feature).from())),
                spot(mm(first(feature).to()), mm(second(feature).to())));
        double radius = feature.radius().map(r -> mm(r) * TRUE.unitsPerMm()).orElse(0.0);
        sketch.edge(Rounded.corners(field, radius), Sketch.EDGE, false);
    }

    /** Every place once along and once across, as running sizes. */
    private void sizes(List<Feature> features) {
        Running running = new Running(sketch, taken);
        double low = least(features, this::second);
        double bottom = low <= NEAR_MM ? 0 : low - ROUND_MM;
        double from = least(features, this::first);
        double zero = from <= NEAR_MM ? 0 : from - ROUND_MM;
        running.level(
                distinct(features.stream().map(this::firstMiddle).toList()),
                spot(zero, 0).x(),
                spot(0, bottom).y() + 14,
                dim -> spot(mm(dim), 0).x());
        running.upright(
                distinct(features.stream().map(this::secondMiddle).toList()),
                spot(0, bottom).y(),
                rightEdge,
                true,
                dim -> spot(0, mm(dim)).y());
    }

    private static List<Dim> distinct(List<Dim> dims) {
        List<Dim> all = new ArrayList<>();
        dims.stream().sorted(Comparator.naturalOrder()).forEach(dim -> {
            if (all.isEmpty() || !all.get(all.size() - 1).value().equals(dim.value())) {
                all.add(dim);
            }
        });
        return all;
    }

    private static double least(List<Feature> features, Function<Feature, Range> range) {
        return features.stream()
                .mapToDouble(f -> mm(range.apply(f).from()))
                .min()
                .orElse(0);
    }

    private static double most(List<Feature> features, Function<Feature, Range> range) {
        return features.stream().mapToDouble(f -> mm(range.apply(f).to())).max().orElse(0);
    }

    private Spot spot(double along, double second) {
        double x = turned ? longMm - along : along;
        return new Spot(x * TRUE.unitsPerMm(), -second * TRUE.unitsPerMm());
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
