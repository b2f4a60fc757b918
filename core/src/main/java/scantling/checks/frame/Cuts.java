package scantling.checks.frame;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import scantling.checks.lasting.Parts;
import scantling.feature.Feature;
import scantling.feature.Features;

/** What joinery has cut for each joint, as far as strength asks for it. */
record Cuts(Map<String, List<Feature>> byJoint) {
    static Cuts of(Features features) {
        return new Cuts(features.features().stream().collect(Collectors.groupingBy(Feature::owner)));
    }

    private Stream<Feature> of(Structure.Joined each, Feature.Kind... kinds) {
        return byJoint.getOrDefault(each.joint().path(), List.of()).stream()
                .filter(feature -> List.of(kinds).contains(feature.kind()));
    }

    private static OptionalDouble least(Stream<Feature> features, ToDoubleFunction<Feature> size) {
        return features.mapToDouble(size).min();
    }

    /** How deep the tenon goes in, mm: the shallower of what is cut in either part. */
    OptionalDouble tenonLength(Structure.Joined each) {
        return least(of(each, Feature.Kind.TENON, Feature.Kind.MORTISE), feature -> Parts.mm(feature.depth()));
    }

    /** How high all tenons of the joint are together, mm. */
    OptionalDouble tenonHeight(Structure.Joined each) {
        double[] heights = of(each, Feature.Kind.TENON, Feature.Kind.MORTISE)
                .filter(feature -> feature.part().equals(each.entering().path()))
                .mapToDouble(feature -> Math.max(
                        Parts.mm(feature.across().size()),
                        Parts.mm(feature.through().size())))
                .toArray();
        return heights.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Arrays.stream(heights).sum());
    }

    /** How many dowels or screws go into the receiving part. */
    long fasteners(Structure.Joined each) {
        return of(each, Feature.Kind.HOLE)
                .filter(feature -> feature.part().equals(each.receiving().path()))
                .count();
    }

    /** Diameter of a dowel's hole, mm. */
    OptionalDouble holeDiameter(Structure.Joined each) {
        return least(
                of(each, Feature.Kind.HOLE).filter(feature -> feature.radius().isPresent()),
                feature -> 2 * feature.radius().map(Parts::mm).orElse(0.0));
    }

    /** Depth of the shallower of a dowel's holes, mm. */
    OptionalDouble holeDepth(Structure.Joined each) {
        return least(of(each, Feature.Kind.HOLE), feature -> Parts.mm(feature.depth()));
    }
}
