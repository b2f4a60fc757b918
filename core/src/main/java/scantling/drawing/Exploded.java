package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Ledger;
import scantling.measure.LengthFormat;
import scantling.space.Axis;

/** The piece drawn apart, seen from the front, the right and above; lines along its three directions keep the scale. */
public final class Exploded {
    private static final double APART = 0.55;
    private static final double PAPER = 120;
    private static final double PAPER_CROWDED = 170;
    /** What a sheet holds beside its heading and the caption. */
    private static final double PAPER_HIGH = 190;

    /** Of units two stand on a sheet. */
    private static final double PAPER_HALF = 104;

    private static final double RADIUS = 10;
    /** With more parts than these, not every one can carry its letter. */
    private static final int CROWD = 60;

    private static final double COS = Math.cos(Math.toRadians(30));
    private static final double SIN = 0.5;
    private static final Place VIEWER = new Place(1, -1, 1);

    private Exploded() {}

    /**
     * Draws it: a piece of few parts at once, a piece of many by its units, those with the same letters once.
     *
     * @param marks letters by the paths of the parts
     */
    public static List<Drawing> all(Assembly assembly, Map<String, String> marks) {
        List<Part> parts = assembly.parts();
        if (parts.size() <= CROWD) {
            return List.of(of(parts, marks, "Drawn apart"));
        }
        Map<String, List<Part>> units = new LinkedHashMap<>();
        parts.forEach(part ->
                units.computeIfAbsent(unit(part), key -> new ArrayList<>()).add(part));
        Map<List<String>, List<String>> alike = new LinkedHashMap<>();
        // A board by itself has nothing to be drawn apart from.
        units.values().removeIf(its -> its.size() < 2);
        units.forEach((unit, its) -> alike.computeIfAbsent(letters(its, marks), key -> new ArrayList<>())
                .add(unit));
        return alike.values().stream()
                .map(names -> of(
                        units.getOrDefault(names.get(0), List.of()),
                        marks,
                        "Drawn apart: " + String.join(", ", names),
                        PAPER_HALF))
                .toList();
    }

    private static List<String> letters(List<Part> parts, Map<String, String> marks) {
        return parts.stream()
                .map(part -> marks.getOrDefault(part.path(), ""))
                .sorted()
                .toList();
    }

    /** The first two steps of its path: the run it stands in, and its place there. */
    private static String unit(Part part) {
        List<String> steps = Ledger.names(part.path());
        return String.join(Ledger.SEPARATOR, steps.subList(0, Math.max(1, Math.min(2, steps.size() - 1))));
    }

    /** Only some of the parts of a piece, drawn apart. @param marks letters by the paths of the parts */
    public static Drawing of(List<Part> parts, Map<String, String> marks, String title) {
        return of(parts, marks, title, PAPER_HIGH);
    }

    private static Drawing of(List<Part> parts, Map<String, String> marks, String title, double paperHigh) {
        List<Solid> solids = PaintOrder.of(apart(parts), VIEWER);
        Scale scale = Scale.fitting(reach(solids, Spot::x), solids.size() > CROWD ? PAPER_CROWDED : PAPER)
                .and(Scale.fitting(reach(solids, Spot::y), paperHigh));
        Sketch sketch = new Sketch(LengthFormat.MM);
        for (Solid solid : solids) {
            paint(sketch, solid, scale.unitsPerMm());
        }
        Map<Spot, String> taken = new LinkedHashMap<>();
        // Nearest first: what is seen best gets its letter first.
        for (int i = solids.size() - 1; i >= 0; i--) {
            mark(sketch, solids.get(i), solids.subList(i + 1, solids.size()), marks, scale.unitsPerMm(), taken);
        }
        return sketch.finish(title, scale);
    }

    private static double reach(List<Solid> solids, ToDoubleFunction<Spot> way) {
        DoubleSummaryStatistics all = solids.stream()
                .flatMap(solid -> solid.faces().stream())
                .flatMap(List::stream)
                .mapToDouble(place -> way.applyAsDouble(spot(place, 1)))
                .summaryStatistics();
        return solids.isEmpty() ? 1 : Math.max(1, all.getMax() - all.getMin());
    }

    private static List<Solid> apart(List<Part> parts) {
        List<Solid> solids = parts.stream().map(Solid::of).toList();
        Place middle = new Place(middle(solids, Axis.ACROSS), middle(solids, Axis.DEEP), middle(solids, Axis.UP));
        return solids.stream()
                .map(solid -> solid.moved(solid.centre().plus(middle, -1), APART))
                .toList();
    }

    private static double middle(List<Solid> solids, Axis axis) {
        double least =
                solids.stream().mapToDouble(solid -> solid.least(axis)).min().orElse(0);
        double most =
                solids.stream().mapToDouble(solid -> solid.most(axis)).max().orElse(0);
        return (least + most) / 2;
    }

    private static void paint(Sketch sketch, Solid solid, double units) {
        for (List<Place> face : solid.faces()) {
            if (Solid.faces(face, VIEWER)) {
                sketch.shape(face.stream().map(place -> spot(place, units)).toList(), Sketch.EDGE);
            }
        }
    }

    /** Sets the mark where the part is seen: in the middle of a face, or else toward one of its corners. */
    private static void mark(
            Sketch sketch,
            Solid solid,
            List<Solid> before,
            Map<String, String> marks,
            double units,
            Map<Spot, String> taken) {
        String mark = marks.getOrDefault(solid.part().path(), "");
        // In a crowd each letter stands once.
        if (mark.isEmpty() || marks.size() > CROWD && taken.containsValue(mark)) {
            return;
        }
        List<Spot> free = places(solid, units).stream()
                .filter(place -> taken.keySet().stream().noneMatch(other -> isNear(other, place)))
                .toList();
        free.stream()
                .filter(place -> before.stream().noneMatch(other -> covers(other, place, units)))
                .findFirst()
                .or(() ->
                        marks.size() > CROWD ? Optional.empty() : free.stream().findFirst())
                .ifPresent(spot -> {
                    taken.put(spot, mark);
                    sketch.circle(spot, RADIUS, Sketch.FINE);
                    sketch.words(spot.shifted(0, 4), mark, 11.5, Mark.Anchor.MIDDLE);
                });
    }

    private static boolean isNear(Spot one, Spot other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y()) < 2 * RADIUS + 1;
    }

    private static List<Spot> places(Solid solid, double units) {
        List<Spot> places = new ArrayList<>();
        for (double toward : List.of(0.0, 0.35, 0.6, 0.85)) {
            solid.faces().stream()
                    .filter(face -> Solid.faces(face, VIEWER))
                    .sorted(Comparator.comparingDouble(
                            face -> -Solid.normal(face).dot(VIEWER)))
                    .forEach(face -> {
                        Place sum = face.stream().reduce(new Place(0, 0, 0), (a, b) -> a.plus(b, 1));
                        Place middle = new Place(0, 0, 0).plus(sum, (1 - toward) / face.size());
                        face.forEach(corner -> places.add(spot(middle.plus(corner, toward), units)));
                    });
        }
        return places;
    }

    private static boolean covers(Solid solid, Spot spot, double units) {
        return solid.faces().stream()
                .filter(face -> Solid.faces(face, VIEWER))
                .anyMatch(face ->
                        holds(face.stream().map(place -> spot(place, units)).toList(), spot));
    }

    /** Whether a polygon holds a spot: a line from it to the right crosses the edge an odd number of times. */
    private static boolean holds(List<Spot> polygon, Spot spot) {
        boolean inside = false;
        for (int i = 0; i < polygon.size(); i++) {
            Spot a = polygon.get(i);
            Spot b = polygon.get((i + 1) % polygon.size());
            boolean spans = a.y() > spot.y() != b.y() > spot.y();
            if (spans && spot.x() < a.x() + (spot.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private static Spot spot(Place place, double units) {
        return new Spot(
                (place.across() + place.deep()) * COS * units,
                -(place.up() + (place.deep() - place.across()) * SIN) * units);
    }
}
