package scantling.hardware;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Range;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.stock.HardwareProfiles;

/**
 * Looks at all holes once everything is cut, whoever asked for it: none within the least wood of an edge, none deeper than
 * its part, and none of a fitting within the least wood of another hole or in the way of a joint. Cuts of two joints are
 * held against each other where they are made.
 */
public final class HoleCheck {
    private static final double NOTHING = 1e-6;

    private final HardwareProfiles profiles;
    private final LengthFormat format;
    private final double least;
    private final Set<String> fittings;
    private final List<Finding> told;
    private final List<Finding> findings = new ArrayList<>();

    private HoleCheck(Assembly assembly, HardwareProfiles profiles, List<Finding> told) {
        this.told = told;
        this.profiles = profiles;
        format = LengthFormat.of(assembly.piece().unit());
        least = profiles.of("hole", "least wood").value().toMillimetres();
        fittings = assembly.fittings().stream().map(Fitting::path).collect(Collectors.toSet());
    }

    /** What is wrong with holes. @param all features of joints and of fittings together */
    public static List<Finding> check(Assembly assembly, Features all, HardwareProfiles profiles) {
        HoleCheck check = new HoleCheck(assembly, profiles, all.findings());
        Map<String, List<Feature>> byPart = new TreeMap<>(all.byPart());
        for (Part part : assembly.parts()) {
            check.check(part, byPart.getOrDefault(part.path(), List.of()));
        }
        return List.copyOf(check.findings);
    }

    private void check(Part part, List<Feature> features) {
        for (int i = 0; i < features.size(); i++) {
            Feature one = features.get(i);
            if (one.kind() == Feature.Kind.HOLE) {
                edges(part, one);
            }
            for (int j = i + 1; j < features.size(); j++) {
                Feature other = features.get(j);
                boolean asked = !one.owner().equals(other.owner())
                        && (isHole(one) || isHole(other))
                        && !isTold(one, other)
                        && !isTold(other, one);
                if (asked && Web.isTooThin(one, other, profiles)) {
                    pair(part, one, other);
                }
            }
        }
    }

    /** Whether the fitting has said so itself, with a better remedy. */
    private boolean isTold(Feature one, Feature other) {
        return told.stream()
                .anyMatch(finding -> finding.subject().equals(one.owner())
                        && finding.sentence().contains(other.path()));
    }

    private boolean isFittings(Feature feature) {
        return fittings.contains(feature.owner());
    }

    private boolean isHole(Feature feature) {
        return feature.kind() == Feature.Kind.HOLE && isFittings(feature);
    }

    private void pair(Part part, Feature one, Feature other) {
        double web = Web.between(one, other);
        double more = (other.kind() == one.kind() ? least : 0) - web;
        findings.add(new Finding(
                Finding.Severity.CAUTION,
                part.path(),
                web < 0
                        ? "%s and %s run into each other in %s.".formatted(one.path(), other.path(), part.path())
                        : "%s leaves %s of wood to %s in %s."
                                .formatted(one.path(), say(web), other.path(), part.path()),
                List.of(one.along().middle(), other.along().middle()),
                "common practice: %s between two holes".formatted(say(least)),
                "Move %s or %s by %s.".formatted(one.owner(), other.owner(), say(more))));
    }

    /** A hole near an edge of the surface it is in, or out at the far side of its part. */
    private void edges(Part part, Feature hole) {
        double edge = Double.POSITIVE_INFINITY;
        int depth = switch (hole.surface()) {
            case NEAR_END, FAR_END -> 0;
            case FACE_EDGE, BACK_EDGE -> 1;
            case FACE_SIDE, BACK_SIDE -> 2;
        };
        List<Range> ranges = List.of(hole.along(), hole.across(), hole.through());
        List<Dim> sizes = List.of(part.length(), part.width(), part.thickness());
        double out = 0;
        for (int axis = 0; axis < ranges.size(); axis++) {
            double from = mm(ranges.get(axis).from());
            double to = mm(sizes.get(axis)) - mm(ranges.get(axis).to());
            if (axis == depth) {
                out = Math.min(from, to);
            } else {
                edge = Math.min(edge, Math.min(from, to));
            }
        }
        if (edge < least - NOTHING || out < -NOTHING) {
            edge(part, hole, edge, out);
        }
    }

    private void edge(Part part, Feature hole, double edge, double out) {
        boolean through = out < -NOTHING;
        findings.add(new Finding(
                Finding.Severity.CAUTION,
                part.path(),
                through
                        ? "%s is %s deeper than %s.".formatted(hole.path(), say(-out), part.path())
                        : "%s leaves %s of wood to the edge of %s.".formatted(hole.path(), say(edge), part.path()),
                List.of(hole.along().middle(), hole.across().middle()),
                "common practice: %s between a hole and an edge".formatted(say(least)),
                through
                        ? "Set the stop %s less deep, or make the part thicker.".formatted(say(-out))
                        : "Move it in by %s.".formatted(say(least - edge))));
    }

    private String say(double millimetres) {
        return format.formatWithUnit(Length.ofMillimetres(Math.round(millimetres * 100) / 100.0));
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
