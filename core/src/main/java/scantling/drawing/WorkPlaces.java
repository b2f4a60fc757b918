package scantling.drawing;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import scantling.feature.Aim;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Surface;
import scantling.feature.WorkGroup;
import scantling.measure.Dim;
import scantling.measure.Length;

/**
 * Where the work on a part is placed, for its running sizes: each place once, from the smallest.
 *
 * @param scale of the drawing
 */
record WorkPlaces(Scale scale) {
    private static final double SMALL = 0.01;
    /** More running figures than this for the length of a part would stand far from their places. */
    private static final double CROWD = 1.25;

    /** The same for its width, beside which there is more room, and a little of it even for a lath. */
    private static final double CROWD_UPRIGHT = 1.8;

    private static final double LEAST_ROOM = 60;

    /** From the near end; where these crowd, only the first and the last of each kind. @param length in drawing units */
    List<Dim> alongs(List<WorkGroup> groups, double length) {
        List<Dim> all = allAlongs(groups, length);
        if (isUncrowded(all, length)) {
            return all;
        }
        return allAlongs(limits(groups), length);
    }

    private static List<WorkGroup> limits(List<WorkGroup> groups) {
        return groups.stream()
                .map(group -> new WorkGroup(
                        group.number(), List.of(group.sample(), group.features().get(group.count() - 1))))
                .toList();
    }

    /** Whether all places along the part can be told. */
    boolean tellsAll(List<WorkGroup> groups, double length) {
        return isUncrowded(allAlongs(groups, length), length);
    }

    private static boolean isUncrowded(List<Dim> dims, double length) {
        return dims.size() * (Sketch.TEXT + 4) <= length * CROWD;
    }

    private List<Dim> allAlongs(List<WorkGroup> groups, double length) {
        return places(groups, Feature::along, Aim::along, WorkPlaces::isPlacedAlong, length);
    }

    /** From the face edge; where these crowd, only the first and the last of each kind. */
    List<Dim> acrosses(List<WorkGroup> groups, double width) {
        List<Dim> all = places(groups, Feature::across, Aim::across, WorkPlaces::isPlacedAcross, width);
        return all.size() * (Sketch.TEXT + 4) <= Math.max(width, LEAST_ROOM) * CROWD_UPRIGHT
                ? all
                : places(limits(groups), Feature::across, Aim::across, WorkPlaces::isPlacedAcross, width);
    }

    /** From the face side. */
    List<Dim> throughs(List<WorkGroup> groups, double thick) {
        return places(groups, Feature::through, Aim::through, feature -> true, thick);
    }

    /** On an end the length of a tenon is where its shoulder is; the depth of a hole is no place on the face. */
    private static boolean isPlacedAlong(Feature feature) {
        boolean onEnd = feature.surface() == Surface.NEAR_END || feature.surface() == Surface.FAR_END;
        return !onEnd || feature.isLeft();
    }

    private static boolean isPlacedAcross(Feature feature) {
        boolean onEdge = feature.surface() == Surface.FACE_EDGE || feature.surface() == Surface.BACK_EDGE;
        return !onEdge || feature.isLeft();
    }

    /** Tails and fingers are nothing at a small scale; sockets are what they leave, and have no sizes of their own. */
    static boolean isFine(WorkGroup group) {
        return group.sample().kind() == Feature.Kind.PIN;
    }

    private List<Dim> places(
            List<WorkGroup> groups,
            Function<Feature, Range> range,
            Function<Aim, Dim> aimed,
            Predicate<Feature> placed,
            double most) {
        boolean pins = groups.stream().anyMatch(WorkPlaces::isFine);
        Map<Length, Dim> all = new TreeMap<>();
        groups.stream()
                .flatMap(group -> group.features().stream())
                .filter(placed)
                .filter(feature -> !pins || feature.kind() != Feature.Kind.SOCKET)
                .flatMap(feature -> feature.aim()
                        .filter(aim -> !feature.isLeft())
                        .map(aim -> List.of(aimed.apply(aim)).stream())
                        .orElseGet(() -> places(feature, range.apply(feature)).stream()))
                .filter(dim -> units(dim) > SMALL && units(dim) < most - SMALL)
                .forEach(dim -> all.putIfAbsent(dim.value(), dim));
        return List.copyOf(all.values());
    }

    /** A hole and a slot are set out by their middle, all else by where it begins and ends. */
    private static Collection<Dim> places(Feature feature, Range range) {
        boolean byMiddle = feature.kind() == Feature.Kind.HOLE || feature.kind() == Feature.Kind.SLOT;
        return byMiddle ? List.of(range.middle()) : List.of(range.from(), range.to());
    }

    double units(Dim dim) {
        return dim.value().toMillimetres() * scale.unitsPerMm();
    }
}
