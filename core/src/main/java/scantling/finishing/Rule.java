package scantling.finishing;

import java.util.List;
import scantling.construct.Finding;
import scantling.timber.Table;

/** A rule of finishing with its words and its source, from {@code finishing/rules.csv}. */
record Rule(Finding.Severity severity, String says, String remedy, String source) {
    private static final Table TABLE = Table.read("finishing/rules.csv");

    static Rule get(String name) {
        Table.Row row = TABLE.getRow("rule", name);
        return new Rule(
                Finding.Severity.valueOf(row.text("severity")), row.text("says"), row.text("remedy"), row.source());
    }

    Finding finding(String subject, List<String> words, List<String> remedyWords) {
        return new Finding(
                severity,
                subject,
                says.formatted(words.toArray()),
                List.of(),
                source,
                remedy.formatted(remedyWords.toArray()));
    }
}
