package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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

    private static final double ROUND_MM = 12;
    private static final double CROSS = 9;

    private final Sketch sketch;
    private final Taken taken = new Taken();
    private final boolean edge;
    private final boolean mirrored;
    private final double longMm;
    private final double wideMm;
    private double rightEdge;

    private WorkTemplate(Part part, Surface surface, LengthFormat format) {
        this.sketch = new Sketch(format);
        this.edge = surface == Surface.FACE_EDGE || surface == Surface.BACK_EDGE;
        this.mirrored = part.lie().hasNearEndRight();
        Marked marked = new Marked(part);
        this.longMm = marked.length().value().toMillimetres();
        this.wideMm = (edge ? marked.thickness() : marked.width()).value().toMillimetres();
    }

    /** Draws it. @param features of one part, all on one of its faces or edges @param title what it is of */
    public static Optional<Drawing> of(Part part, List<Feature> features, String title, LengthFormat format) {
        Surface surface = features.get(0).surface();
        if (surface == Surface.NEAR_END || surface == Surface.FAR_END) {
            return Optional.empty();
        }
        WorkTemplate template = new WorkTemplate(part, surface, format);
        template.edges(features);
        features.forEach(template::work);
        template.sizes(features);
        return Optional.of(template.sketch.finish(title, TRUE));
    }

    private Range second(Feature feature) {
        return edge ? feature.through() : feature.across();
    }

    private void edges(List<Feature> features) {
        double from = least(features, feature -> feature.along());
        double to = most(features, feature -> feature.along());
        double low = least(features, this::second);
        double high = most(features, this::second);
        double left = from <= NEAR_MM ? 0 : from - ROUND_MM;
        double right = longMm - to <= NEAR_MM ? longMm : to + ROUND_MM;
        double bottom = low <= NEAR_MM ? 0 : low - ROUND_MM;
        double top = wideMm - high <= NEAR_MM ? wideMm : high + ROUND_MM;
        rightEdge = Math.max(spot(left, 0).x(), spot(right, 0).x());
        side(spot(left, bottom), spot(left, top), from <= NEAR_MM, "near end");
        side(spot(right, bottom), spot(right, top), longMm - to <= NEAR_MM, "far end");
        side(spot(left, bottom), spot(right, bottom), low <= NEAR_MM, edge ? "face side" : "face edge");
        side(spot(left, top), spot(right, top), wideMm - high <= NEAR_MM, edge ? "back side" : "back edge");
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
        Spot middle = spot(mm(feature.along().middle()), mm(second(feature).middle()));
        if (feature.kind() == Feature.Kind.HOLE) {
            double radius = mm(feature.along().size()) / 2 * TRUE.unitsPerMm();
            sketch.circle(middle, radius, Sketch.EDGE);
            sketch.line(middle.shifted(-radius - CROSS, 0), middle.shifted(radius + CROSS, 0), Sketch.HAIR);
            sketch.line(middle.shifted(0, -radius - CROSS), middle.shifted(0, radius + CROSS), Sketch.HAIR);
            return;
        }
        Hatch.Field field = Fold.box(
                spot(mm(feature.along().from()), mm(second(feature).from())),
                spot(mm(feature.along().to()), mm(second(feature).to())));
        double radius = feature.radius().map(r -> mm(r) * TRUE.unitsPerMm()).orElse(0.0);
        sketch.edge(Rounded.corners(field, radius), Sketch.EDGE, false);
    }

    /** Every place once along and once across, as running sizes. */
    private void sizes(List<Feature> features) {
        Running running = new Running(sketch, taken);
        double low = least(features, this::second);
        double bottom = low <= NEAR_MM ? 0 : low - ROUND_MM;
        double from = least(features, feature -> feature.along());
        double zero = from <= NEAR_MM ? 0 : from - ROUND_MM;
        running.level(
                distinct(features.stream().map(f -> f.along().middle()).toList()),
                spot(zero, 0).x(),
                spot(0, bottom).y() + 14,
                dim -> spot(mm(dim), 0).x());
        running.upright(
                distinct(features.stream().map(f -> second(f).middle()).toList()),
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
        double x = mirrored ? longMm - along : along;
        return new Spot(x * TRUE.unitsPerMm(), -second * TRUE.unitsPerMm());
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
