package scantling.joinery;

import java.util.ArrayList;
import java.util.List;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.measure.Dim;

/**
 * The wood that a feature takes up, leaning or not, as eight corners from the marks of its part, in millimetres.
 *
 * @param corners of it
 * @param edges the directions of its edges
 */
record Slug(List<Aim.Way> corners, List<Aim.Way> edges) {
    private static final double NOTHING = 1e-9;

    static Slug of(Feature feature) {
        return feature.aim().map(aim -> leaning(feature, aim)).orElseGet(() -> square(feature));
    }

    private static Slug leaning(Feature feature, Aim aim) {
        Aim.Way middle = new Aim.Way(Row.mm(aim.along()), Row.mm(aim.across()), Row.mm(aim.through()));
        Aim.Way down = aim.way().times(Row.mm(aim.depth()));
        List<Aim.Way> corners = new ArrayList<>();
        for (Aim.Way corner : aim.corners(feature.surface())) {
            corners.add(middle.plus(corner));
            corners.add(middle.plus(corner).plus(down));
        }
        return new Slug(corners, List.of(aim.way(), aim.side(), aim.way().cross(aim.side())));
    }

    private static Slug square(Feature feature) {
        List<Aim.Way> corners = new ArrayList<>();
        for (Dim along : List.of(feature.along().from(), feature.along().to())) {
            for (Dim across : List.of(feature.across().from(), feature.across().to())) {
                for (Dim through :
                        List.of(feature.through().from(), feature.through().to())) {
                    corners.add(new Aim.Way(Row.mm(along), Row.mm(across), Row.mm(through)));
                }
            }
        }
        return new Slug(corners, List.of(new Aim.Way(1, 0, 0), new Aim.Way(0, 1, 0), new Aim.Way(0, 0, 1)));
    }

    /** How far two are apart, or how deep they are in each other, less than nothing: by the best parting plane. */
    double between(Slug other) {
        List<Aim.Way> across = new ArrayList<>(edges);
        across.addAll(other.edges);
        for (Aim.Way mine : edges) {
            other.edges.forEach(its -> across.add(mine.cross(its)));
        }
        return across.stream()
                .filter(way -> way.dot(way) > NOTHING)
                .map(Aim.Way::unit)
                .mapToDouble(way -> gap(way, other))
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private double gap(Aim.Way way, Slug other) {
        double[] mine = span(way);
        double[] its = other.span(way);
        return Math.max(mine[0] - its[1], its[0] - mine[1]);
    }

    private double[] span(Aim.Way way) {
        double[] all = corners.stream().mapToDouble(way::dot).sorted().toArray();
        return new double[] {all[0], all[all.length - 1]};
    }
}
