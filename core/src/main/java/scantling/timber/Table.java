package scantling.timber;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;

/**
 * One of the program's own data tables: comma-separated, a header line, and in every row a {@code source} (who says so)
 * and a {@code verified} (yes, partial, memory, no). A table that breaks this is a bug of the program, so reading it
 * throws.
 */
public final class Table {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setTrim(true)
            .get();

    private final String name;
    private final List<Row> rows;

    private Table(String name, List<Row> rows) {
        this.name = name;
        this.rows = rows;
    }

    /**
     * Reads a table.
     *
     * @param path below the program's own folder, such as {@code timber/species.csv}
     */
    public static Table read(String path) {
        try (InputStream bytes = Table.class.getResourceAsStream("/scantling/" + path)) {
            if (bytes == null) {
                throw new IllegalStateException("The table (%s) is missing.".formatted(path));
            }
            Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8);
            List<Row> rows = FORMAT.parse(text).stream()
                    .map(values -> new Row(path, values))
                    .toList();
            rows.forEach(Row::check);
            return new Table(path, rows);
        } catch (IOException e) {
            throw new UncheckedIOException("The table (%s) cannot be read.".formatted(path), e);
        }
    }

    /** Its path, by which explanations name it. */
    public String name() {
        return name;
    }

    /** All rows in the order of the file. */
    public List<Row> rows() {
        return rows;
    }

    /** The first row that holds exactly this value in a column. */
    public Optional<Row> findRow(String column, String value) {
        return rows.stream().filter(row -> row.text(column).equals(value)).findFirst();
    }

    /**
     * The row that must be there.
     *
     * @throws IllegalStateException if the table lacks it
     */
    public Row getRow(String column, String value) {
        return findRow(column, value)
                .orElseThrow(() ->
                        new IllegalStateException("The table (%s) has no %s (%s).".formatted(name, column, value)));
    }

    /** One row. */
    public static final class Row {
        private final String table;
        private final CSVRecord values;

        private Row(String table, CSVRecord values) {
            this.table = table;
            this.values = values;
        }

        private void check() {
            if (!values.isConsistent() || source().isEmpty() || verified().isEmpty()) {
                throw new IllegalStateException(
                        "Row %d of (%s) lacks a cell, its source or its verified mark.".formatted(number(), table));
            }
        }

        private long number() {
            return values.getRecordNumber();
        }

        /** The cell as written; empty when nothing is known. */
        public String text(String column) {
            return values.get(column);
        }

        /** Who says so. */
        public String source() {
            return text("source");
        }

        /** Whether the number was seen in its source: yes, partial, memory (from memory) or no (common practice). */
        public String verified() {
            return text("verified");
        }

        /** The parts of a cell that are separated by semicolons. */
        public List<String> list(String column) {
            return Arrays.stream(text(column).split(";", -1))
                    .map(String::strip)
                    .filter(part -> !part.isEmpty())
                    .toList();
        }

        /** The number in a cell, if it has one. */
        public OptionalDouble findNumber(String column) {
            String cell = text(column);
            return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
        }

        /**
         * The number in a cell.
         *
         * @throws IllegalStateException if it is empty
         */
        public double number(String column) {
            return findNumber(column).orElseThrow(() -> broken(column));
        }

        /** The length in a cell, with its unit, if it has one. */
        public Optional<Length> findLength(String column) {
            String cell = text(column);
            return cell.isEmpty()
                    ? Optional.empty()
                    : Optional.of(LengthReader.read(cell, Unit.MM).orElseThrow(() -> broken(column)));
        }

        /**
         * The length in a cell, with its unit.
         *
         * @throws IllegalStateException if it is empty or no length
         */
        public Length length(String column) {
            return findLength(column).orElseThrow(() -> broken(column));
        }

        /** The length in a cell as a number that knows this table, its key in it and its source. */
        public Dim dim(String column, String key) {
            return Dim.lookedUp(length(column), table, key, source());
        }

        private IllegalStateException broken(String column) {
            return new IllegalStateException(
                    "Row %d of (%s) has no usable (%s): (%s).".formatted(number(), table, column, text(column)));
        }
    }
}
