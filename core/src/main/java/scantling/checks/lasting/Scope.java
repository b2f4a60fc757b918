package scantling.checks.lasting;

import java.util.List;
import java.util.Locale;
import scantling.timber.Table;

/** Which pieces the US rule for clothing storage does not look at, by words of their title. */
final class Scope {
    private static final List<Table.Row> OUTSIDE =
            Table.read("checks/not-clothing.csv").rows();

    private Scope() {}

    /** Whether it is fastened to the building for good. */
    static boolean isBuiltIn(String title) {
        String said = title.toLowerCase(Locale.ROOT);
        return OUTSIDE.stream().anyMatch(row -> row.text("built_in").equals("yes") && says(said, row.text("word")));
    }

    /** Whether one of its words begins so: an adjustable shelf is no table. */
    static boolean says(String said, String word) {
        int at = said.indexOf(word);
        while (at > 0 && Character.isLetter(said.charAt(at - 1))) {
            at = said.indexOf(word, at + 1);
        }
        return at >= 0;
    }

    static boolean mayHoldClothes(String title) {
        String said = title.toLowerCase(Locale.ROOT);
        return OUTSIDE.stream().noneMatch(row -> says(said, row.text("word")));
    }
}
