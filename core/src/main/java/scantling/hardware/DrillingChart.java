package scantling.hardware;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Surface;
import scantling.measure.Dim;

/**
 * All holes of one part in the order in which they are drilled: a row for each setting of bit, depth stop and fence, so
 * that each is set once, and in it the distances to drill at.
 *
 * @param part the part
 * @param rows by surface, bit, depth and fence
 */
public record DrillingChart(Part part, List<Row> rows) {
    /** Takes its own copy. */
    public DrillingChart {
        rows = List.copyOf(rows);
    }

    /**
     * One setting.
     *
     * @param surface the surface that is drilled
     * @param machine what it is drilled with
     * @param bit what is in it, with its size in words
     * @param diameter of the hole
     * @param depth that the stop is set to
     * @param fence how far the middles of the holes are from {@code fenceAt}
     * @param fenceAt the mark that the fence is set from
     * @param from the mark that the holes' distances are from
     * @param holes in the order of their distances
     */
    public record Row(
            Surface surface,
            String machine,
            String bit,
            Dim diameter,
            Dim depth,
            Dim fence,
            Surface fenceAt,
            Surface from,
            List<Hole> holes) {
        /** Takes its own copy. */
        public Row {
            holes = List.copyOf(holes);
        }
    }

    /**
     * One hole of a row.
     *
     * @param at its middle from the row's {@code from}
     * @param feature itself
     */
    public record Hole(Dim at, Feature feature) {}

    /** What holes of one row have in common. */
    private record Key(Surface surface, String machine, String bit, Dim diameter, Dim depth, Dim fence) {}

    /**
     * The chart of a part.
     *
     * @param features of any parts; those of others, and what is no round hole, are left out
     */
    public static DrillingChart of(Part part, List<Feature> features) {
        Map<Key, List<Hole>> rows = new LinkedHashMap<>();
        features.stream()
                .filter(feature -> feature.part().equals(part.path()))
                .filter(feature ->
                        feature.kind() == Feature.Kind.HOLE && feature.radius().isPresent())
                .forEach(hole -> rows.computeIfAbsent(key(hole), key -> new ArrayList<>())
                        .add(new Hole(middle(hole, from(hole.surface())), hole)));
        return new DrillingChart(
                part,
                rows.entrySet().stream()
                        .map(entry -> row(entry.getKey(), entry.getValue()))
                        .sorted(Comparator.comparing(Row::surface)
                                .thenComparing(Row::bit)
                                .thenComparing(Row::depth)
                                .thenComparing(Row::fence))
                        .toList());
    }

    private static Key key(Feature hole) {
        return new Key(
                hole.surface(),
                hole.setting().machine(),
                hole.setting().tool(),
                hole.radius().map(radius -> radius.times(2)).orElse(Dim.ZERO),
                hole.depth(),
                middle(hole, fenceAt(hole.surface())));
    }

    private static Row row(Key key, List<Hole> holes) {
        return new Row(
                key.surface(),
                key.machine(),
                key.bit(),
                key.diameter(),
                key.depth(),
                key.fence(),
                fenceAt(key.surface()),
                from(key.surface()),
                holes.stream().sorted(Comparator.comparing(Hole::at)).toList());
    }

    /** The mark that the fence stands at: the face edge for the wide sides, the face side for edges and ends. */
    private static Surface fenceAt(Surface surface) {
        return isWide(surface) ? Surface.FACE_EDGE : Surface.FACE_SIDE;
    }

    /** The mark that distances along the fence are from. */
    private static Surface from(Surface surface) {
        return surface == Surface.NEAR_END || surface == Surface.FAR_END ? Surface.FACE_EDGE : Surface.NEAR_END;
    }

    private static boolean isWide(Surface surface) {
        return surface == Surface.FACE_SIDE || surface == Surface.BACK_SIDE;
    }

    private static Dim middle(Feature hole, Surface mark) {
        return switch (mark) {
            case NEAR_END, FAR_END -> hole.middleAlong();
            case FACE_EDGE, BACK_EDGE -> hole.middleAcross();
            case FACE_SIDE, BACK_SIDE -> hole.middleThrough();
        };
    }
}
