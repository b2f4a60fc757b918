package scantling.construct;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import scantling.measure.Length;
import scantling.measure.Tolerance;

/** How well each process of the shop makes a size. */
public record Tolerances(Map<String, Tolerance> byProcess) {
    /** Takes its own copy. */
    public Tolerances {
        byProcess = Map.copyOf(byProcess);
    }

    /** The usual ones, from the data file {@code tolerances.csv}. */
    public static Tolerances standard() {
        InputStream file = Objects.requireNonNull(Tolerances.class.getResourceAsStream("tolerances.csv"));
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        Map<String, Tolerance> rows = new LinkedHashMap<>();
        try (var parser = format.parse(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            for (CSVRecord row : parser) {
                rows.put(row.get("process"), new Tolerance(Length.mm(row.get("half_range_mm")), row.get("process")));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
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
