package scantling.feature;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.construct.Finding;
import scantling.measure.Dim;

/**
 * What joinery or hardware makes of an assembly.
 *
 * @param features on all parts, in the order of what asks for them
 * @param choices why each was chosen as it is
 * @param findings what will not hold, or cannot be made
 * @param fixings what is bought to hold the joints
 */
public record Features(List<Feature> features, List<Choice> choices, List<Finding> findings, List<Fixing> fixings) {
    /** Nothing at all. */
    public static final Features NONE = new Features(List.of(), List.of(), List.of());

    /**
     * Why a joint or fitting is made as it is.
     *
     * @param owner path of the joint or fitting
     * @param sentence what was chosen and why: loose tenon 6 x 40, a third of the rail's 20
     * @param numbers the numbers behind it
     * @param source the rule's source, or common practice
     */
    public record Choice(String owner, String sentence, List<Dim> numbers, String source) {
        /** Takes its own copy. */
        public Choice {
            numbers = List.copyOf(numbers);
        }
    }

    /** Takes its own copies. */
    public Features {
        features = List.copyOf(features);
        choices = List.copyOf(choices);
        findings = List.copyOf(findings);
        fixings = List.copyOf(fixings);
    }

    /** Nothing to be bought. */
    public Features(List<Feature> features, List<Choice> choices, List<Finding> findings) {
        this(features, choices, findings, List.of());
    }

    /** Both together, these first. */
    public Features and(Features others) {
        return new Features(
                joined(features, others.features),
                joined(choices, others.choices),
                joined(findings, others.findings),
                joined(fixings, others.fixings));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** All features by the path of the part they are on. */
    public Map<String, List<Feature>> byPart() {
        return features.stream().collect(Collectors.groupingBy(Feature::part));
    }
}
