package scantling.route;

import java.util.List;
import scantling.timber.Table;

/** What can hurt someone, and what to do about it. @param sentence what to mind @param source who says so */
public record Caution(String sentence, String source) {
    private static final Table TABLE = Table.read("route/cautions.csv");

    static List<Caution> of(Step step) {
        return TABLE.rows().stream()
                .filter(row -> row.text("step").equals(step.name()))
                .map(row -> new Caution(row.text("caution"), row.source()))
                .toList();
    }
}
