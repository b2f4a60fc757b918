package scantling.cutting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Short marks to write on pieces that are cut again: a for the first that comes off, then b, and so on; after z, aa. Small
 * letters, because parts have capitals. */
public final class CutMarks {
    private static final int LETTERS = 26;

    private final Map<String, String> marks = new LinkedHashMap<>();

    private CutMarks() {}

    /** The marks of a piece of stock, in the order in which its cuts make the pieces. */
    public static CutMarks of(List<CutStep> steps) {
        CutMarks made = new CutMarks();
        made.marks.put("1", "whole");
        for (CutStep step : steps) {
            if (!step.isTrim()) {
                made.add(step.first());
                made.add(step.second());
            }
        }
        return made;
    }

    private void add(String label) {
        if (isLabel(label)) {
            marks.putIfAbsent(label, letters(marks.size() - 1));
        }
    }

    private static String letters(int number) {
        String last = String.valueOf((char) ('a' + number % LETTERS));
        return number < LETTERS ? last : letters(number / LETTERS - 1) + last;
    }

    /** Whether a name in a cut is the label of a piece that is cut again, not a part or what is left over. */
    public static boolean isLabel(String name) {
        return name.matches("1(\\.[12])*");
    }

    /** What to write on a piece with a label; other names stay as they are. */
    public String mark(String label) {
        return marks.getOrDefault(label, label);
    }
}
