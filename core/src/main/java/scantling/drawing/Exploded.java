package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Assembly;
import scantling.measure.LengthFormat;
import scantling.space.Axis;

/** The piece drawn apart, seen from the front, the right and above; lines along its three directions keep the scale. */
public final class Exploded {
    private static final double APART = 0.55;
    private static final double PAPER = 120;
    private static final double PAPER_CROWDED = 170;
    private static final double RADIUS = 10;
    /** With more parts than these, not every one can carry its letter. */
    private static final int CROWD = 60;

    private static final double COS = Math.cos(Math.toRadians(30));
    private static final double SIN = 0.5;
    private static final Place VIEWER = new Place(1, -1, 1);

    private Exploded() {}

    /** Draws it. @param marks letters by the paths of the parts */
    public static Drawing of(Assembly assembly, Map<String, String> marks) {
        List<Solid> solids = inOrder(apart(assembly));
        DoubleSummaryStatistics level = solids.stream()
                .flatMap(solid -> solid.faces().stream())
                .flatMap(List::stream)
                .mapToDouble(place -> spot(place, 1).x())
                .summaryStatistics();
        double reach = solids.isEmpty() ? 1 : level.getMax() - level.getMin();
        Scale scale = Scale.fitting(Math.max(reach, 1), solids.size() > CROWD ? PAPER_CROWDED : PAPER);
        Sketch sketch = new Sketch(LengthFormat.MM);
        for (Solid solid : solids) {
            paint(sketch, solid, scale.unitsPerMm());
        }
        Map<Spot, String> taken = new LinkedHashMap<>();
        // Nearest first: what is seen best gets its letter first.
        for (int i = solids.size() - 1; i >= 0; i--) {
            mark(sketch, solids.get(i), solids.subList(i + 1, solids.size()), marks, scale.unitsPerMm(), taken);
        }
        return sketch.finish("Drawn apart", scale);
    }

    private static List<Solid> apart(Assembly assembly) {
        Place middle = new Place(
                assembly.piece().width().value().toMillimetres() / 2,
                assembly.piece().depth().value().toMillimetres() / 2,
                assembly.piece().height().value().toMillimetres() / 2);
        return assembly.parts().stream()
                .map(Solid::of)
                .map(solid -> solid.moved(solid.centre().plus(middle, -1), APART))
                .toList();
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

    /** Farthest first: whatever nothing else must precede, the first of those in building order. */
    private static List<Solid> inOrder(List<Solid> solids) {
        List<Solid> left = new ArrayList<>(solids);
        List<Solid> order = new ArrayList<>();
        while (!left.isEmpty()) {
            Solid next = left.stream()
                    .filter(solid -> left.stream().noneMatch(other -> other != solid && isBehind(other, solid)))
                    .findFirst()
                    .orElseGet(() -> left.stream()
                            .min(Comparator.comparingDouble(
                                    solid -> solid.centre().dot(VIEWER)))
                            .orElseThrow());
            left.remove(next);
            order.add(next);
        }
        return order;
    }

    /** Whether a plane parts them with the first on the far side, and none with the first on the near side. */
    private static boolean isBehind(Solid first, Solid second) {
        return isParted(first, second) && !isParted(second, first);
    }

    private static boolean isParted(Solid behind, Solid before) {
        return behind.most(Axis.ACROSS) <= before.least(Axis.ACROSS)
                || behind.least(Axis.DEEP) >= before.most(Axis.DEEP)
                || behind.most(Axis.UP) <= before.least(Axis.UP);
    }
}
