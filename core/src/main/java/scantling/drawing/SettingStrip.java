package scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.WorkGroup;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/**
 * A setting-out strip at its true size: everything that is placed along a part, on one strip of paper that is laid on the
 * part from its near end and squared across.
 */
public final class SettingStrip {
    private static final double HIGH = 96;
    private static final double SMALL = 10.5;
    private static final double TICK = 40;
    private static final Scale TRUE = new Scale(10);
    private static final int WORTH_IT = 2;
    /** What is longer than this runs along the strip, and stands nowhere. */
    private static final double MARK = 120;

    private static final double END = 3;

    private SettingStrip() {}

    /** Draws it; nothing for a part with fewer than two places to set out. @param title what it is of */
    public static Optional<Drawing> of(Part part, List<WorkGroup> work, String title, LengthFormat format) {
        Map<Length, Place> places = places(work, part.length());
        return places.size() < WORTH_IT ? Optional.empty() : Optional.of(draw(part, places, title, format));
    }

    /** The same as the tiles that have something on them. */
    public static List<Drawing> tiles(Part part, List<WorkGroup> work, String title, LengthFormat format, Sheet sheet) {
        return of(part, work, title, format).stream()
                .flatMap(whole -> Tiling.along(whole, spots(whole, units(part.length())), sheet).stream())
                .toList();
    }

    /** Where the near end and all places stand, and their figures, which may be moved on; the far end is told by its size. */
    private static List<Double> spots(Drawing whole, double length) {
        return whole.marks().stream()
                .map(SettingStrip::reach)
                .filter(reach -> reach.right() - reach.left() < MARK && reach.right() < length - END)
                .flatMap(reach -> Stream.of(reach.left(), reach.right()))
                .toList();
    }

    /** A figure stands turned: it is as wide as its type is high. */
    private static Hatch.Field reach(Mark mark) {
        return mark instanceof Mark.Figure figure
                ? new Hatch.Field(
                        figure.spot().x() - Sketch.TEXT,
                        figure.spot().y(),
                        figure.spot().x(),
                        figure.spot().y())
                : Reach.of(mark);
    }

    private static Drawing draw(Part part, Map<Length, Place> places, String title, LengthFormat format) {
        Sketch sketch = new Sketch(format);
        double length = units(part.length());
        sketch.line(new Spot(0, 0), new Spot(length, 0), Sketch.OUTLINE);
        end(sketch, 0, "near end", Mark.Anchor.START);
        end(sketch, length, "far end", Mark.Anchor.END);
        Taken taken = new Taken();
        places.values().forEach(place -> place(sketch, taken, place));
        List<Dim> dims =
                new ArrayList<>(places.values().stream().map(Place::dim).toList());
        dims.add(part.length());
        new Running(sketch, taken).level(dims, 0, TICK - 24, dim -> units(dim));
        return sketch.finish(title, TRUE);
    }

    /** A place along the part. @param dim from the near end @param numbers of the work it belongs to */
    private record Place(Dim dim, TreeSet<Integer> numbers) {}

    private static Map<Length, Place> places(List<WorkGroup> work, Dim length) {
        Map<Length, Place> places = new TreeMap<>();
        for (WorkGroup group : work) {
            for (Feature feature : group.features()) {
                for (Dim dim : limits(feature)) {
                    if (dim.value().isPositive() && dim.compareTo(length) < 0) {
                        places.computeIfAbsent(dim.value(), key -> new Place(dim, new TreeSet<>()))
                                .numbers()
                                .add(group.number());
                    }
                }
            }
        }
        return places;
    }

    private static List<Dim> limits(Feature feature) {
        Range along = feature.along();
        if (feature.aim().isPresent()) {
            return List.of(feature.middleAlong());
        }
        return switch (feature.surface()) {
            case NEAR_END, FAR_END -> feature.isLeft() ? List.of(along.from(), along.to()) : List.of();
            default ->
                feature.kind() == Feature.Kind.HOLE || feature.kind() == Feature.Kind.SLOT
                        ? List.of(feature.middleAlong())
                        : List.of(along.from(), along.to());
        };
    }

    private static void end(Sketch sketch, double x, String words, Mark.Anchor anchor) {
        sketch.line(new Spot(x, -TICK), new Spot(x, HIGH), Sketch.OUTLINE);
        sketch.words(new Spot(anchor == Mark.Anchor.START ? x + 4 : x - 4, -TICK - 2), words, SMALL, anchor);
    }

    /** A line across, and above it the numbers of its work, moved on where others stand. */
    private static void place(Sketch sketch, Taken taken, Place place) {
        double x = units(place.dim());
        sketch.line(new Spot(x, -TICK / 2), new Spot(x, TICK), Sketch.EDGE);
        String numbers =
                String.join(" ", place.numbers().stream().map(String::valueOf).toList());
        Spot spot = new Spot(x, -TICK / 2 - 4);
        while (!taken.isClear(Taken.words(spot, numbers, SMALL, Mark.Anchor.MIDDLE))) {
            spot = spot.shifted(2, 0);
        }
        taken.take(Taken.words(spot, numbers, SMALL, Mark.Anchor.MIDDLE));
        sketch.words(spot, numbers, SMALL, Mark.Anchor.MIDDLE);
    }

    private static double units(Dim dim) {
        return dim.value().toMillimetres() * TRUE.unitsPerMm();
    }
}
