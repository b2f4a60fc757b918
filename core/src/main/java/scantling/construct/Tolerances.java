package scantling.construct;

import java.util.LinkedHashMap;
import java.util.Map;
import scantling.measure.Length;
import scantling.measure.Tolerance;
import scantling.timber.Table;

/** How well each process of the shop makes a size. */
public record Tolerances(Map<String, Tolerance> byProcess) {
    /** Takes its own copy. */
    public Tolerances {
        byProcess = Map.copyOf(byProcess);
    }

    /** The usual ones, from the data file {@code tolerances.csv}. */
    public static Tolerances standard() {
        Map<String, Tolerance> rows = new LinkedHashMap<>();
        for (Table.Row row : Table.read("construct/tolerances.csv").rows()) {
            String process = row.text("process");
            rows.put(process, new Tolerance(Length.mm(row.text("half_range_mm")), process));
        }
        return new Tolerances(rows);
    }

    /** The tolerance of a process. @throws IllegalArgumentException for a process that is not in the table */
    public Tolerance of(String process) {
        Tolerance found = byProcess.get(process);
        if (found == null) {
            throw new IllegalArgumentException("No tolerance is known for (%s).".formatted(process));
        }
        return found;
    }
}
