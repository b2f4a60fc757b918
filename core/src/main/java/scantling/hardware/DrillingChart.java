package scantling.hardware;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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

    /** What holes that one bit and one stop make have in common. */
    private record Key(Surface surface, String machine, String bit, Dim diameter, Dim depth) {}

    /**
     * The chart of a part. The fence stands where it serves most holes: as a rule at the edge, and at the end for holes that
     * stand in a line across the part.
     *
     * @param features of any parts; those of others, and what is no round hole, are left out
     */
    public static DrillingChart of(Part part, List<Feature> features) {
        Map<Key, List<Feature>> alike = features.stream()
                .filter(feature -> feature.part().equals(part.path()))
                .filter(feature ->
                        feature.kind() == Feature.Kind.HOLE && feature.radius().isPresent())
                .collect(Collectors.groupingBy(DrillingChart::key, LinkedHashMap::new, Collectors.toList()));
        List<Row> rows = new ArrayList<>();
        alike.forEach((key, holes) -> rows.addAll(rows(key, holes)));
        return new DrillingChart(
                part,
                rows.stream()
                        .sorted(Comparator.comparing(Row::surface)
                                .thenComparing(Row::bit)
                                .thenComparing(Row::depth)
                                .thenComparing(Row::fenceAt, Comparator.comparing(at -> at == Surface.NEAR_END))
                                .thenComparing(Row::fence))
                        .toList());
    }

    private static Key key(Feature hole) {
        return new Key(
                hole.surface(),
                hole.setting().machine(),
                hole.setting().tool(),
                hole.radius().map(radius -> radius.times(2)).orElse(Dim.ZERO),
                hole.depth());
    }

    /** Line by line, the longest first, until no hole is left. */
    private static List<Row> rows(Key key, List<Feature> holes) {
        Surface usual = isWide(key.surface()) ? Surface.FACE_EDGE : Surface.FACE_SIDE;
        Surface other = isEnd(key.surface()) ? Surface.FACE_EDGE : Surface.NEAR_END;
        List<Feature> left = new ArrayList<>(holes);
        List<Row> rows = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Feature> along = longest(left, usual);
            List<Feature> across = longest(left, other);
            boolean turned = across.size() > along.size();
            List<Feature> line = turned ? across : along;
            rows.add(turned ? row(key, line, other, usual) : row(key, line, usual, other));
            left.removeAll(line);
        }
        return rows;
    }

    /** The most holes that stand as far from a mark as each other. */
    private static List<Feature> longest(List<Feature> holes, Surface mark) {
        return holes.stream()
                .collect(Collectors.groupingBy(
                        hole -> middle(hole, mark).value(), LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .reduce((most, next) -> next.size() > most.size() ? next : most)
                .orElse(List.of());
    }

    private static Row row(Key key, List<Feature> line, Surface fenceAt, Surface from) {
        return new Row(
                key.surface(),
                key.machine(),
                key.bit(),
                key.diameter(),
                key.depth(),
                middle(line.get(0), fenceAt),
                fenceAt,
                from,
                line.stream()
                        .map(hole -> new Hole(middle(hole, from), hole))
                        .sorted(Comparator.comparing(Hole::at))
                        .toList());
    }

    private static boolean isEnd(Surface surface) {
        return surface == Surface.NEAR_END || surface == Surface.FAR_END;
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
