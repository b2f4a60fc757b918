package scantling.construct;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import scantling.measure.Dim;
import scantling.measure.Length;

/** What slides, hinges and the usual joints of frames ask of the wood around them, from {@code fittings.csv}. */
final class Fittings {
    private static final String TABLE = "fittings.csv";
    private static final List<Row> ROWS = read();

    private record Row(String fitting, String value, Dim dim) {}

    private Fittings() {}

    /** A number that may be in the table. */
    static Optional<Dim> find(String fitting, String value) {
        return all(fitting, value).stream().findFirst();
    }

    /** A number of the table. @throws IllegalArgumentException when it is not there, which is a fault of the one who asks */
    static Dim of(String fitting, String value) {
        return find(fitting, value)
                .orElseThrow(() -> new IllegalArgumentException(
                        "No (%s) is known for the fitting (%s).".formatted(value, fitting)));
    }

    /** All numbers of that name, in the order of the table: the lengths a slide is sold in. */
    static List<Dim> all(String fitting, String value) {
        return ROWS.stream()
                .filter(row -> row.fitting().equals(fitting) && row.value().equals(value))
                .map(Row::dim)
                .toList();
    }

    private static List<Row> read() {
        InputStream file = Objects.requireNonNull(Fittings.class.getResourceAsStream(TABLE));
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        List<Row> rows = new ArrayList<>();
        try (var parser = format.parse(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            for (CSVRecord row : parser) {
                String key = row.get("fitting") + ", " + row.get("value");
                Dim dim = Dim.lookedUp(Length.mm(row.get("mm")), TABLE, key, row.get("source"));
                rows.add(new Row(row.get("fitting"), row.get("value"), dim));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return List.copyOf(rows);
    }
}
