package scantling.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import scantling.construct.Fitting;
import scantling.construct.Joint;
import scantling.feature.Feature;
import scantling.feature.Fixing;
import scantling.route.glue.Session;
import scantling.timber.Table;

/** Dowels, biscuits, loose tenons and screws that go into the joints of a session as it is put together. */
final class Fixings {
    private static final Table SUPPLIES = Table.read("route/supplies.csv");
    private static final Pattern WOOD_SCREWS = Pattern.compile("Wood screws No\\. (\\d+)");
    private static final String LAID_OUT = "as joinery lays it out";

    private final Map<String, List<Fixing>> byJoint = new HashMap<>();
    private final Map<String, Joint> screwed = new HashMap<>();
    private final List<Feature> features;

    Fixings(RouteInput input) {
        features = input.features().features();
        for (Fixing fixing : input.features().fixings()) {
            byJoint.computeIfAbsent(fixing.owner(), k -> new ArrayList<>()).add(fixing);
        }
        for (Joint joint : input.assembly().joints()) {
            boolean held = input.assembly().fittings().stream()
                    .anyMatch(fitting -> fitting.on().containsAll(List.of(joint.entering(), joint.receiving())));
            if (joint.kind().isScrewed() && !held) {
                screwed.put(joint.path(), joint);
            }
        }
    }

    /** What goes into these sessions, alike together. Screwed joints that nobody has laid out take some by the table. */
    List<Supply> of(Collection<Session> sessions) {
        Map<String, Supply> supplies = new LinkedHashMap<>();
        sessions.stream()
                .flatMap(session -> session.closings().stream())
                .flatMap(closing -> closing.joints().stream())
                .distinct()
                .flatMap(joint -> in(joint).stream())
                .forEach(one -> supplies.merge(one.name(), one, Supply::plus));
        return List.copyOf(supplies.values());
    }

    /** Wood screws that fittings are fixed with: one for every hole that says so; what comes with a fitting is not counted. */
    List<Supply> screws(Collection<Fitting> fittings) {
        Set<String> owners = fittings.stream().map(Fitting::path).collect(Collectors.toSet());
        Map<String, Supply> supplies = new LinkedHashMap<>();
        for (Feature feature : features) {
            if (owners.contains(feature.owner()) && feature.kind() == Feature.Kind.HOLE) {
                feature.setting().notes().stream()
                        .map(WOOD_SCREWS::matcher)
                        .filter(Matcher::lookingAt)
                        .map(said -> new Supply("screws no. " + said.group(1), 1, "piece", "as the fitting asks"))
                        .forEach(one -> supplies.merge(one.name(), one, Supply::plus));
            }
        }
        return List.copyOf(supplies.values());
    }

    private List<Supply> in(String path) {
        List<Fixing> fixings = byJoint.getOrDefault(path, List.of());
        if (!fixings.isEmpty()) {
            return fixings.stream()
                    .map(fixing -> new Supply(
                            "%ss %s".formatted(fixing.what(), fixing.size()), fixing.count(), "piece", LAID_OUT))
                    .toList();
        }
        Joint joint = screwed.get(path);
        return joint == null
                ? List.of()
                : SUPPLIES.findRow("work", joint.kind().words()).stream()
                        .map(row -> Supply.of(row, 1))
                        .toList();
    }
}
