package scantling.route;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.timber.Table;

/** What can hurt someone, and what to do about it. @param sentence what to mind @param source who says so */
public record Caution(String sentence, String source) {
    private static final Map<String, List<Caution>> BY_STEP = Table.read("route/cautions.csv").rows().stream()
            .collect(Collectors.groupingBy(
                    row -> row.text("step"),
                    Collectors.mapping(row -> new Caution(row.text("caution"), row.source()), Collectors.toList())));

    static List<Caution> of(Step step) {
        return BY_STEP.getOrDefault(step.name(), List.of());
    }
}
