package scantling.feature;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.measure.Dim;

/**
 * Features of one part that are the same but for where they are: one line of its sheet, one number on its drawing.
 *
 * @param number on the drawing, from 1
 * @param features at least one, in their order
 */
public record WorkGroup(int number, List<Feature> features) {
    /** Takes its own copy. */
    public WorkGroup {
        features = List.copyOf(features);
    }

    /** Groups the features of one part; those that a machine makes with the same setting stand together. */
    public static List<WorkGroup> of(List<Feature> onOnePart) {
        Map<String, Map<String, List<Feature>>> bySetting = new LinkedHashMap<>();
        for (Feature feature : onOnePart) {
            bySetting
                    .computeIfAbsent(feature.surface() + feature.setting().key(), key -> new LinkedHashMap<>())
                    .computeIfAbsent(shape(feature), key -> new ArrayList<>())
                    .add(feature);
        }
        List<WorkGroup> groups = new ArrayList<>();
        bySetting
                .values()
                .forEach(shapes -> shapes.values().forEach(same -> groups.add(new WorkGroup(groups.size() + 1, same))));
        return List.copyOf(groups);
    }

    /** Any of them. */
    public Feature sample() {
        return features.get(0);
    }

    /** How many there are. */
    public int count() {
        return features.size();
    }

    private static String shape(Feature feature) {
        return String.join(
                " ",
                feature.kind().words(),
                size(feature.along()),
                size(feature.across()),
                size(feature.through()),
                feature.radius().map(radius -> radius.value().toString()).orElse(""),
                feature.taper()
                        .map(taper -> "%s %s %s"
                                .formatted(
                                        taper.narrow(),
                                        taper.nearer().value(),
                                        taper.farther().value()))
                        .orElse(""),
                feature.aim()
                        .map(aim -> "%s %s %s %s"
                                .formatted(
                                        aim.depth().value(),
                                        aim.length().value(),
                                        aim.width().value(),
                                        Arrays.toString(aim.leans(feature.surface()))))
                        .orElse(""));
    }

    private static String size(Range range) {
        return range.size().value().toString();
    }

    /** What it measures over its surface, larger first: the diameter of a hole, else two sizes. */
    public List<Dim> sizes() {
        Feature feature = sample();
        if (feature.kind() == Feature.Kind.HOLE) {
            return List.of(feature.aim()
                    .map(Aim::length)
                    .orElseGet(() -> feature.inPlane().get(0).size()));
        }
        if (feature.aim().isPresent()) {
            return List.of(feature.aim().get().length(), feature.aim().get().width());
        }
        List<Range> plane = feature.inPlane();
        Dim first = plane.get(0).size();
        Dim second = plane.get(1).size();
        return first.compareTo(second) >= 0 ? List.of(first, second) : List.of(second, first);
    }

    /** The radius of its ends or corners; of a hole its diameter says it. */
    public Optional<Dim> radius() {
        return sample().kind() == Feature.Kind.HOLE ? Optional.empty() : sample().radius();
    }
}
