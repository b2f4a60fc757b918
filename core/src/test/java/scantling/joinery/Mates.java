package scantling.joinery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.space.Side;

/**
 * A judge that shares no code with joinery: lays every feature back into space from its part's marks in plain
 * millimetres and looks whether what belongs together meets there.
 */
final class Mates {
    static final double TOLERANCE = 0.001;
    private static final Set<Feature.Kind> STANDING = Set.of(Feature.Kind.TENON, Feature.Kind.TONGUE, Feature.Kind.PIN);
    private static final Set<Feature.Kind> CHANNELS =
            Set.of(Feature.Kind.DADO, Feature.Kind.GROOVE, Feature.Kind.RABBET);

    private final Map<String, Part> parts;
    private final Features features;
    private final List<String> mismatches = new ArrayList<>();

    private Mates(Assembly assembly, Features features) {
        parts = assembly.parts().stream().collect(Collectors.toMap(Part::path, part -> part));
        this.features = features;
    }

    /** What does not meet, in words; empty when all does. */
    static List<String> mismatches(Assembly assembly, Features features) {
        Mates mates = new Mates(assembly, features);
        features.features().forEach(mates::inside);
        mates.pairs().values().forEach(mates::pair);
        assembly.joints().forEach(mates::channel);
        return mates.mismatches;
    }

    /** How many features have a mate on the other part. */
    static long pairs(Assembly assembly, Features features) {
        return new Mates(assembly, features)
                .pairs().values().stream().filter(all -> all.size() == 2).count();
    }

    private Part part(String path) {
        return Objects.requireNonNull(parts.get(path), path);
    }

    private Map<String, List<Feature>> pairs() {
        return features.features().stream()
                .collect(Collectors.groupingBy(
                        feature -> feature.path().substring(0, feature.path().lastIndexOf(" in ")),
                        LinkedHashMap::new,
                        Collectors.toList()));
    }

    private void inside(Feature feature) {
        Part part = part(feature.part());
        if (!Space.of(part.box()).holds(Space.of(feature, part))) {
            mismatches.add(feature.path() + " is not in its part");
        }
    }

    private void pair(List<Feature> pair) {
        if (pair.size() != 2) {
            return;
        }
        Feature one = pair.get(0);
        Feature two = pair.get(1);
        Space a = Space.of(one, part(one.part()));
        Space b = Space.of(two, part(two.part()));
        boolean fits = one.taper().isPresent() || two.taper().isPresent()
                ? slopesAlike(one, two) && a.holds(b) && b.holds(a)
                : STANDING.contains(one.kind())
                        ? b.holds(a)
                        : STANDING.contains(two.kind())
                                ? a.holds(b)
                                : one.kind() == Feature.Kind.MITRE
                                        ? a.holds(b) && b.holds(a)
                                        : abut(a, b, one) || isMitred(one) && diagonal(a, b);
        if (!fits) {
            mismatches.add(one.path() + " and " + two.path() + " do not meet");
        }
    }

    /** Both are as wide as each other at either end of their slope. */
    private boolean slopesAlike(Feature one, Feature two) {
        double[] a = trapezoid(one);
        double[] b = trapezoid(two);
        return a.length == b.length
                && java.util.stream.IntStream.range(0, a.length).allMatch(i -> Math.abs(a[i] - b[i]) <= TOLERANCE);
    }

    /** From plane to plane in space: where it is widest and from where to where, where it is narrowest and likewise. */
    double[] trapezoid(Feature feature) {
        Part part = part(feature.part());
        Space box = Space.of(feature, part);
        if (feature.taper().isEmpty()) {
            return new double[0];
        }
        scantling.feature.Taper taper = feature.taper().get();
        Side narrow = taper.narrow().side(part.lie());
        int axis = narrow.axis().ordinal();
        int run = part.lie().faceEdge().axis().ordinal();
        double nearer = taper.nearer().value().toMillimetres();
        double farther = taper.farther().value().toMillimetres();
        boolean turned = part.lie().faceEdge().isFar();
        return new double[] {
            narrow.isFar() ? box.low()[axis] : box.high()[axis],
            box.low()[run],
            box.high()[run],
            narrow.isFar() ? box.high()[axis] : box.low()[axis],
            box.low()[run] + (turned ? farther : nearer),
            box.high()[run] - (turned ? nearer : farther)
        };
    }

    /** What dovetails leave of a corner's height uncovered, or cover twice, at their ends and at the baseline. */
    static double uncovered(Assembly assembly, Features features, double height) {
        Mates mates = new Mates(assembly, features);
        double outside = 0;
        double inside = 0;
        double outer = Double.NaN;
        for (Feature each : features.features()) {
            if (each.kind() == Feature.Kind.PIN) {
                double[] slope = mates.trapezoid(each);
                boolean isTail = each.path().contains(" tail ");
                double out = isTail ? slope[0] : slope[3];
                outer = Double.isNaN(outer) ? out : outer;
                outside += isTail ? slope[2] - slope[1] : slope[5] - slope[4];
                inside += isTail ? slope[5] - slope[4] : slope[2] - slope[1];
                if (Math.abs(out - outer) > TOLERANCE) {
                    return Double.POSITIVE_INFINITY;
                }
            }
        }
        return Math.max(Math.abs(outside - height), Math.abs(inside - height));
    }

    private boolean isMitred(Feature feature) {
        return features.features().stream()
                .anyMatch(other -> other.owner().equals(feature.owner()) && other.kind() == Feature.Kind.MITRE);
    }

    /** Slots square to a mitre touch in an edge, and run the same way along it. */
    private static boolean diagonal(Space a, Space b) {
        int touching = 0;
        int same = 0;
        for (int axis = 0; axis < 3; axis++) {
            boolean meets = Math.abs(a.high()[axis] - b.low()[axis]) <= TOLERANCE
                    || Math.abs(b.high()[axis] - a.low()[axis]) <= TOLERANCE;
            boolean level = Math.abs(a.low()[axis] - b.low()[axis]) <= TOLERANCE
                    && Math.abs(a.high()[axis] - b.high()[axis]) <= TOLERANCE;
            touching += meets ? 1 : 0;
            same += level ? 1 : 0;
        }
        return touching == 2 && same == 1;
    }

    /** How far the middles of two slots across a mitre are from one line square to it; in millimetres over their length. */
    double bend(Feature one, Feature two, Feature mitre) {
        Space a = Space.of(one, part(one.part()));
        Space b = Space.of(two, part(two.part()));
        Space corner = Space.of(mitre, part(mitre.part()));
        int run = part(one.part())
                .lie()
                .length()
                .third(part(two.part()).lie().length())
                .ordinal();
        int x = part(one.part()).lie().length().ordinal();
        int y = 3 - run - x;
        double dx = (b.middle(x) - a.middle(x));
        double dy = (b.middle(y) - a.middle(y));
        double along = Math.abs(dx) * corner.size(x) - Math.abs(dy) * corner.size(y);
        double parallel = Math.max(
                Math.abs(a.size(x) * Math.abs(dy) - a.size(y) * Math.abs(dx)) / Math.hypot(dx, dy),
                Math.abs(b.size(x) * Math.abs(dy) - b.size(y) * Math.abs(dx)) / Math.hypot(dx, dy));
        return Math.max(parallel, Math.abs(along) / Math.hypot(corner.size(x), corner.size(y)));
    }

    /** The worst bend of any pair of slots across the mitre of a piece of two parts. */
    static double worstBend(Assembly assembly, Features features) {
        Mates mates = new Mates(assembly, features);
        Feature mitre = features.features().stream()
                .filter(each -> each.kind() == Feature.Kind.MITRE)
                .findFirst()
                .orElseThrow();
        return mates.pairs().values().stream()
                .filter(pair -> pair.size() == 2 && pair.get(0).kind() != Feature.Kind.MITRE)
                .mapToDouble(pair -> mates.bend(pair.get(0), pair.get(1), mitre))
                .max()
                .orElse(0);
    }

    /** One begins where the other ends; across, both have one middle and, but for screws, one size. */
    private static boolean abut(Space a, Space b, Feature one) {
        for (int normal = 0; normal < 3; normal++) {
            boolean touching = Math.abs(a.high()[normal] - b.low()[normal]) <= TOLERANCE
                    || Math.abs(b.high()[normal] - a.low()[normal]) <= TOLERANCE;
            if (touching && same(a, b, normal, one.path().contains("screw "))) {
                return true;
            }
        }
        return false;
    }

    private static boolean same(Space a, Space b, int normal, boolean middlesOnly) {
        for (int axis = 0; axis < 3; axis++) {
            if (axis != normal
                    && (Math.abs(a.middle(axis) - b.middle(axis)) > TOLERANCE
                            || !middlesOnly && Math.abs(a.size(axis) - b.size(axis)) > TOLERANCE)) {
                return false;
            }
        }
        return true;
    }

    /** What enters a channel lies wholly in it. */
    private void channel(Joint joint) {
        Space a = Space.of(part(joint.entering()).box());
        Space b = Space.of(part(joint.receiving()).box());
        double[] low = new double[3];
        double[] high = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            low[axis] = Math.max(a.low()[axis], b.low()[axis]);
            high[axis] = Math.min(a.high()[axis], b.high()[axis]);
        }
        List<Feature> channels = features.features().stream()
                .filter(feature -> feature.owner().equals(joint.path()) && CHANNELS.contains(feature.kind()))
                .filter(feature -> feature.part().equals(joint.receiving()))
                .toList();
        boolean cut = features.features().stream()
                .anyMatch(feature ->
                        feature.owner().equals(joint.path()) && feature.part().equals(joint.entering()));
        if (!channels.isEmpty()
                && !cut
                && channels.stream()
                        .noneMatch(feature ->
                                Space.of(feature, part(feature.part())).holds(new Space(low, high)))) {
            mismatches.add(joint.path() + ": what enters does not lie in its channel");
        }
    }
}
