package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import scantling.construct.Assembly;
import scantling.measure.LengthFormat;
import scantling.space.Axis;

/** The piece drawn apart, seen from the front, the right and above; lines along its three directions keep the scale. */
public final class Exploded {
    private static final double APART = 0.55;
    private static final double PAPER = 150;
    private static final double COS = Math.cos(Math.toRadians(30));
    private static final double SIN = 0.5;
    private static final Place VIEWER = new Place(1, -1, 1);

    private Exploded() {}

    /** Draws it. @param marks letters by the paths of the parts */
    public static Drawing of(Assembly assembly, Map<String, String> marks) {
        List<Solid> solids = inOrder(apart(assembly));
        double reach = solids.stream()
                        .flatMap(s -> s.faces().stream())
                        .flatMap(List::stream)
                        .mapToDouble(p -> spot(p, 1).x())
                        .max()
                        .orElse(1)
                - solids.stream()
                        .flatMap(s -> s.faces().stream())
                        .flatMap(List::stream)
                        .mapToDouble(p -> spot(p, 1).x())
                        .min()
                        .orElse(0);
        Scale scale = Scale.fitting(Math.max(reach, 1), PAPER);
        Sketch sketch = new Sketch(LengthFormat.MM);
        for (Solid solid : solids) {
            paint(sketch, solid, scale.unitsPerMm());
        }
        solids.forEach(solid -> mark(sketch, solid, marks, scale.unitsPerMm()));
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

    private static void mark(Sketch sketch, Solid solid, Map<String, String> marks, double units) {
        List<Place> widest = solid.faces().stream()
                .filter(face -> Solid.faces(face, VIEWER))
                .max(Comparator.comparingDouble(face -> Solid.normal(face).dot(VIEWER)))
                .orElse(solid.faces().get(0));
        Place sum = widest.stream().reduce(new Place(0, 0, 0), (a, b) -> a.plus(b, 1));
        Spot spot = spot(new Place(0, 0, 0).plus(sum, 1.0 / widest.size()), units);
        String mark = marks.getOrDefault(solid.part().path(), "");
        if (!mark.isEmpty()) {
            sketch.circle(spot, 10, Sketch.FINE);
            sketch.words(spot.shifted(0, 4), mark, 11.5, "middle");
        }
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
