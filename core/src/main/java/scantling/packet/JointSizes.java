package scantling.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.construct.Joint;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.WorkGroup;

/** What a joint takes from both of its parts, in few words: 2 × mortise 57 × 6, 23 deep. */
final class JointSizes {
    private static final int MANY = 4;

    private final Figures figures;
    private final Map<String, List<Feature>> byOwner;

    JointSizes(Features features, Figures figures) {
        this.figures = figures;
        this.byOwner = features.features().stream().collect(Collectors.groupingBy(Feature::owner));
    }

    /** As markup; what the piece says of it where nothing is cut. */
    String of(Joint joint) {
        List<Feature> its = byOwner.getOrDefault(joint.path(), List.of());
        if (its.isEmpty()) {
            return figures.sizes(joint.sizes());
        }
        Map<String, Integer> alike = new LinkedHashMap<>();
        for (String part : List.of(joint.entering(), joint.receiving())) {
            List<Feature> onPart =
                    its.stream().filter(feature -> feature.part().equals(part)).toList();
            WorkGroup.of(onPart).forEach(group -> alike.merge(words(group), group.count(), Integer::sum));
        }
        if (alike.size() > MANY) {
            return byKind(its);
        }
        List<String> words = new ArrayList<>();
        alike.forEach((what, count) -> words.add(count == 1 ? what : count + " × " + what));
        return String.join("; ", words);
    }

    /** Tails, pins and their sockets are many sizes: the sheets of both parts have them. */
    private static String byKind(List<Feature> its) {
        Map<String, Integer> kinds = new LinkedHashMap<>();
        its.forEach(feature -> kinds.merge(feature.kind().words(), 1, Integer::sum));
        return kinds.entrySet().stream()
                .map(kind -> kind.getValue() + " × " + kind.getKey())
                .collect(Collectors.joining(", "));
    }

    private String words(WorkGroup group) {
        Feature sample = group.sample();
        String sizes = group.sizes().stream().map(figures::of).collect(Collectors.joining(" × "));
        return "%s <span class=\"keep\">%s,</span> <span class=\"keep\">%s %s</span>"
                .formatted(sample.kind().words(), sizes, figures.of(sample.depth()), sample.isLeft() ? "long" : "deep");
    }
}
