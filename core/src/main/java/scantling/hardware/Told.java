package scantling.hardware;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.construct.Fitting;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.timber.Table;

/** Says of each fitting what it takes from each of its parts, and why it sits there where nothing better was said of it. */
final class Told {
    private static final Table REASONS = Table.read("hardware/reasons.csv");

    private final Workings workings;

    Told(Workings workings) {
        this.workings = workings;
    }

    /** One more choice for each fitting that has work done for it. */
    List<Features.Choice> of(List<Feature> features, List<Features.Choice> said) {
        List<Features.Choice> all = new ArrayList<>();
        for (Fitting fitting : workings.assembly().fittings()) {
            List<Feature> its = features.stream()
                    .filter(each -> each.owner().equals(fitting.path()))
                    .toList();
            boolean explained = said.stream().anyMatch(each -> each.owner().equals(fitting.path()));
            if (!its.isEmpty()) {
                all.add(choice(fitting, its, explained));
            }
        }
        return all;
    }

    private Features.Choice choice(Fitting fitting, List<Feature> its, boolean explained) {
        Optional<Table.Row> reason = explained
                ? Optional.empty()
                : REASONS.findRow("profile", fitting.words().getOrDefault("profile", ""));
        String why = reason.map(row -> row.text("sentence") + " ").orElse("");
        return new Features.Choice(
                fitting.path(),
                why + "Takes " + takes(its) + ".",
                List.of(),
                reason.map(Table.Row::source).orElse("the fitting's profile; check the sheet that came with it"));
    }

    /** {@code 2 holes of 5 mm, 12 mm deep, in left side; 1 notch in back}. */
    private String takes(List<Feature> its) {
        Map<String, Integer> alike = new LinkedHashMap<>();
        its.forEach(feature -> alike.merge(words(feature), 1, Integer::sum));
        return String.join(
                "; ",
                alike.entrySet().stream()
                        .map(entry -> entry.getValue() + " × " + entry.getKey())
                        .toList());
    }

    private String words(Feature feature) {
        String size = feature.kind() == Feature.Kind.HOLE
                ? " of %s, %s deep,"
                        .formatted(
                                feature.radius()
                                        .map(radius -> workings.say(radius.times(2)))
                                        .orElse(""),
                                workings.say(feature.depth()))
                : "";
        return "%s%s in %s".formatted(feature.kind().words(), size, feature.part());
    }
}
