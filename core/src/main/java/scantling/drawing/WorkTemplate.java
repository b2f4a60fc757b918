package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    /** Work further apart than this stands on templates of its own. */
    private static final double LONG_MM = 170;
    /**
     * Surfaces on which what grows from the near end, or from the face edge, runs to the left when one looks at them with the
     * face edge, or the face side, below: paper laid on the wood must not be a mirror image of it.
     */
    private static final Set<Surface> RUNS_LEFT = Set.of(Surface.BACK_SIDE, Surface.FACE_EDGE, Surface.FAR_END);

    /** A template higher or wider than this has its sizes on it, where there is room for them and this much more. */
    private static final double TALL_MM = 185;

    private static final double WIDE_MM = 150;
    private static final double BAND_MM = 4;
    private static final double UNITS = Scale.UNITS_PER_MM;

    private static final double EVEN_MM = 0.2;
    private static final double CROSS = 9;

    private final LengthFormat format;
    private final Sketch sketch;
    private final Taken taken = new Taken();
    private final EdgeLine lines;
    private final Surface surface;
    private final boolean turned;
    private final double longMm;
    private final double wideMm;
    private double rightEdge;

    private WorkTemplate(Part part, Surface surface, LengthFormat format) {
        this.format = format;
        this.sketch = new Sketch(format);
        this.lines = new EdgeLine(sketch, taken);
        this.surface = surface;
        this.turned = part.lie().hasNearEndRight() != RUNS_LEFT.contains(surface);
        Marked marked = new Marked(part);
        this.longMm = mm(isEnd() ? marked.width() : marked.length());
        this.wideMm = mm(isFace() ? marked.width() : marked.thickness());
    }

    /**
     * Draws it; where the work lies at two ends or two edges and none between, a template to each.
     *
     * @param features of one part, all on one of its surfaces
     * @param title what it is of
     */
    public static List<Laid> laid(Part part, List<Feature> features, String title, LengthFormat format) {
        WorkTemplate measure = new WorkTemplate(part, features.get(0).surface(), format);
        List<Laid> drawings = new ArrayList<>();
        measure.apart(features, measure::first, measure.longMm, 0)
                .forEach((end, some) -> measure.apart(some, measure::second, measure.wideMm, 2).entrySet().stream()
                        .filter(few -> features.size() == 1 || measure.isOfUse(few.getValue()))
                        .forEach(few -> drawings.add(of(part, few.getValue(), title, end, few.getKey(), format))));
        return List.copyOf(drawings);
    }

    /** The same without how they are laid on. */
    static List<Drawing> all(Part part, List<Feature> features, String title, LengthFormat format) {
        return laid(part, features, title, format).stream().map(Laid::drawing).toList();
    }

    /** A hole by itself far from both ends is found with the strip of the part; its template would have nothing to lie on. */
    private boolean isOfUse(List<Feature> features) {
        Reached reached = field(features).first();
        return features.size() > 1 || reached.isHeld();
    }

    /** In clusters that lie far from each other, by what each is near to. */
    private Map<String, List<Feature>> apart(
            List<Feature> features, Function<Feature, Range> range, double whole, int side) {
        List<Feature> sorted = features.stream()
                .sorted(Comparator.comparing(feature -> range.apply(feature).from()))
                .toList();
        List<List<Feature>> clusters = new ArrayList<>();
        double reached = 0;
        for (Feature feature : sorted) {
            if (clusters.isEmpty() || mm(range.apply(feature).from()) - reached > LONG_MM) {
                clusters.add(new ArrayList<>());
            }
            clusters.get(clusters.size() - 1).add(feature);
            reached = Math.max(reached, mm(range.apply(feature).to()));
        }
        Map<String, List<Feature>> named = new LinkedHashMap<>();
        clusters.forEach(
                cluster -> named.put(clusters.size() == 1 ? "" : ", " + place(cluster, range, whole, side), cluster));
        return named;
    }

    private String place(List<Feature> cluster, Function<Feature, Range> range, double whole, int side) {
        if (Reached.least(cluster, range) <= Reached.NEAR_MM) {
            return sides()[side];
        }
        return whole - Reached.most(cluster, range) <= Reached.NEAR_MM
                ? sides()[side + 1]
                : "from "
                        + format.formatWithUnit(
                                range.apply(cluster.get(0)).middle().value());
    }

    private static Laid of(
            Part part, List<Feature> features, String title, String end, String edge, LengthFormat format) {
        WorkTemplate template = new WorkTemplate(part, features.get(0).surface(), format);
        Field field = template.field(features);
        features.forEach(template::keepClear);
        template.middle(features, field);
        template.edges(field);
        features.forEach(template::work);
        template.sizes(features, field);
        Optional<Dim> from = template.from(features, field);
        String place = end.isEmpty()
                ? from.map(dim -> ", from " + format.formatWithUnit(dim.value()))
                        .orElse("")
                : end;
        return new Laid(template.sketch.finish(title + place + edge, TRUE), from);
    }

    /** How far from the near end it begins, where nothing on it says so. */
    private Optional<Dim> from(List<Feature> features, Field field) {
        return isEnd() || field.first().isHeld() || isEven(features)
                ? Optional.empty()
                : features.stream().map(this::firstMiddle).min(Comparator.naturalOrder());
    }

    /** What of the surface a template shows. */
    private record Field(Reached first, Reached second) {}

    private Field field(List<Feature> features) {
        return new Field(
                Reached.of(Reached.least(features, this::first), Reached.most(features, this::first), longMm),
                Reached.of(Reached.least(features, this::second), Reached.most(features, this::second), wideMm));
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

    private void edges(Field field) {
        Reached first = field.first();
        Reached second = field.second();
        rightEdge = Math.max(spot(first.from(), 0).x(), spot(first.to(), 0).x());
        String[] names = sides();
        side(spot(first.from(), second.from()), spot(first.from(), second.to()), first.fromReal(), names[0]);
        side(spot(first.to(), second.from()), spot(first.to(), second.to()), first.toReal(), names[1]);
        side(spot(first.from(), second.from()), spot(first.to(), second.from()), second.fromReal(), names[2]);
        side(spot(first.from(), second.to()), spot(first.to(), second.to()), second.toReal(), names[3]);
    }

    /** Whether it lies even about the middle of the part. */
    private boolean isEven(List<Feature> features) {
        return Math.abs(Reached.least(features, this::first) + Reached.most(features, this::first) - longMm) < EVEN_MM;
    }

    /** Work that is far from both ends but even about the middle is laid on by the middle. */
    private void middle(List<Feature> features, Field field) {
        if (isEven(features) && !field.first().isHeld()) {
            lines.middle(
                    spot(longMm / 2, field.second().from()),
                    spot(longMm / 2, field.second().to()));
        }
    }

    /** An edge of the part is a line with its name; a mere end of the template is dashed. */
    private void side(Spot from, Spot to, boolean real, String name) {
        if (real) {
            lines.edge(from, to, name, from.y() != to.y() && from.x() == rightEdge);
        } else {
            sketch.dashed(from, to, Sketch.HAIR);
        }
    }

    /** Nothing is written over work. */
    private void keepClear(Feature feature) {
        Spot middle = spot(mm(firstMiddle(feature)), mm(secondMiddle(feature)));
        double around = feature.kind() == Feature.Kind.HOLE
                ? feature.radius().map(r -> mm(r) * TRUE.unitsPerMm()).orElse(0.0) + CROSS
                : 0;
        Hatch.Field box = box(feature);
        taken.take(
                around == 0
                        ? box
                        : new Hatch.Field(
                                middle.x() - around, middle.y() - around, middle.x() + around, middle.y() + around));
    }

    private Hatch.Field box(Feature feature) {
        return Fold.box(
                spot(mm(first(feature).from()), mm(second(feature).from())),
                spot(mm(first(feature).to()), mm(second(feature).to())));
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
        double radius = feature.radius().map(r -> mm(r) * TRUE.unitsPerMm()).orElse(0.0);
        sketch.edge(Rounded.corners(box(feature), radius), Sketch.EDGE, false);
    }

    /** Every place once along and once across, as running sizes: beside the template, or on it where a sheet is too small. */
    private void sizes(List<Feature> features, Field field) {
        Running running = new Running(sketch, taken);
        Spot corner = spot(field.first().from(), field.second().from());
        List<Dim> firsts =
                Running.distinct(features.stream().map(this::firstMiddle).toList());
        List<Dim> seconds =
                Running.distinct(features.stream().map(this::secondMiddle).toList());
        Clear.Band high = Clear.band(field.second().from(), field.second().to(), features, this::second);
        Clear.Band wide = Clear.band(field.first().from(), field.first().to(), features, this::first);
        boolean below = high.whole() <= TALL_MM || high.size() * UNITS < running.room(firsts) + UNITS * BAND_MM;
        boolean beside = wide.whole() <= WIDE_MM || wide.size() * UNITS < running.side(seconds) + UNITS * BAND_MM;
        running.from(field.first().fromReal())
                .level(
                        firsts,
                        corner.x(),
                        below ? corner.y() + 14 : spot(0, high.to()).y() + 4,
                        dim -> spot(mm(dim), 0).x());
        running.from(field.second().fromReal())
                .upright(
                        seconds,
                        corner.y(),
                        beside
                                ? rightEdge
                                : Math.min(
                                        spot(wide.from(), 0).x(),
                                        spot(wide.to(), 0).x()),
                        true,
                        dim -> spot(0, mm(dim)).y());
    }

    private Spot spot(double along, double second) {
        double x = turned ? longMm - along : along;
        return new Spot(x * TRUE.unitsPerMm(), -second * TRUE.unitsPerMm());
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
