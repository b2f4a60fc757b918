package scantling.shop;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;

/** Reads an exported folder into a new file. Everything that is wrong is told at once, and then nothing is taken. */
final class ShopImport {
    private static final int MOST_TABLE_BYTES = 256 * 1024 * 1024;
    private static final int MOST_TEXT_BYTES = 2 * 1024 * 1024;
    private static final int MOST_FAULTS = 20;

    private final Path folder;
    private final List<String> faults = new ArrayList<>();

    private ShopImport(Path folder) {
        this.folder = folder;
    }

    /** @throws ShopTrouble with everything that is wrong */
    static void read(Path exported, Path draft) throws IOException {
        ShopImport reading = new ShopImport(exported);
        reading.checkFormat();
        reading.finish();
        Files.deleteIfExists(draft);
        Schema.bring(draft, version -> {});
        try (Database database = Database.open(draft)) {
            database.write(handle -> reading.fill(handle));
        }
    }

    private void checkFormat() {
        text(ShopExport.FORMAT_FILE, ShopExport.FORMAT.length() + 1)
                .filter(format -> !format.equals(ShopExport.FORMAT))
                .ifPresent(format ->
                        fault(ShopExport.FORMAT_FILE, "it should say \"%s\"".formatted(ShopExport.FORMAT.strip())));
    }

    private void fault(String file, String what) {
        if (faults.size() < MOST_FAULTS) {
            faults.add(file + ": " + what);
        }
    }

    private void finish() {
        if (!faults.isEmpty()) {
            String more = faults.size() == MOST_FAULTS ? "\nThere may be more." : "";
            throw new ShopTrouble(
                    ShopTrouble.Kind.BAD_IMPORT,
                    "%s is not a whole shop. Nothing was taken.\n%s%s"
                            .formatted(folder, String.join("\n", faults), more));
        }
    }

    private boolean fill(Handle handle) {
        Rows rows = new Rows(handle);
        handle.execute("PRAGMA defer_foreign_keys = ON");
        for (ShopTable table : ShopExport.TABLES) {
            table(table, row -> insert(rows, table, row));
        }
        finish();
        photos(handle);
        finish();
        new ImportCheck(rows, what -> fault("the shop", what)).check();
        finish();
        return true;
    }

    private void insert(Rows rows, ShopTable table, Numbered numbered) {
        String where = "%s, row %d".formatted(ShopExport.fileOf(table), numbered.line());
        try {
            Row row = table == ShopTable.REVISION ? withText(numbered.row()) : numbered.row();
            ImportCheck.readable(table, row);
            rows.insert(table, row);
        } catch (IllegalArgumentException | ArithmeticException | UnableToExecuteStatementException wrong) {
            fault(
                    where,
                    wrong instanceof UnableToExecuteStatementException
                            ? Troubles.sqlite(wrong)
                                    .map(said -> said.getResultCode().message)
                                    .orElse("it does not fit")
                            : String.valueOf(wrong.getMessage()));
        }
    }

    private Row withText(Row revision) {
        String job = revision.text("job");
        ImportCheck.safeName(job);
        String file = ShopExport.textFile(job, revision.number("number"));
        return revision.with(
                "text",
                text(file, MOST_TEXT_BYTES)
                        .orElseThrow(
                                () -> new IllegalArgumentException("its text (%s) cannot be read".formatted(file))));
    }

    /** A row and its place in its file, counted from 1 without the names of the columns. */
    private record Numbered(Row row, long line) {}

    private void table(ShopTable table, Consumer<Numbered> each) {
        String file = ShopExport.fileOf(table);
        text(file, MOST_TABLE_BYTES).ifPresent(text -> {
            try (CSVParser parser = CSVParser.parse(text, ShopExport.CSV)) {
                records(table, parser, each);
            } catch (IOException | IllegalStateException | IllegalArgumentException | java.io.UncheckedIOException no) {
                fault(file, "it is no table (%s)".formatted(no.getMessage()));
            }
        });
    }

    private void records(ShopTable table, CSVParser parser, Consumer<Numbered> each) {
        List<ShopTable.Column> columns = ShopExport.columns(table);
        List<String> names = columns.stream().map(ShopTable.Column::name).toList();
        for (CSVRecord record : parser) {
            String where = "%s, row %d".formatted(ShopExport.fileOf(table), record.getRecordNumber() - 1);
            if (record.getRecordNumber() == 1 && !record.toList().equals(names)) {
                fault(ShopExport.fileOf(table), "its columns should be " + String.join(", ", names));
                return;
            } else if (record.getRecordNumber() > 1 && record.size() != columns.size()) {
                fault(where, "it has %d values instead of %d".formatted(record.size(), columns.size()));
            } else if (record.getRecordNumber() > 1) {
                row(columns, record, where)
                        .ifPresent(row -> each.accept(new Numbered(row, record.getRecordNumber() - 1)));
            }
        }
        if (parser.getRecordNumber() == 0) {
            fault(ShopExport.fileOf(table), "it is empty");
        }
    }

    private Optional<Row> row(List<ShopTable.Column> columns, CSVRecord record, String where) {
        Row row = Row.empty();
        for (int i = 0; i < columns.size(); i++) {
            ShopTable.Column column = columns.get(i);
            String value = record.get(i);
            if (!column.number()) {
                row = row.with(column.name(), value);
            } else if (value.matches("0|[1-9]\\d{0,17}")) {
                row = row.with(column.name(), Long.parseLong(value));
            } else {
                fault(where, "%s is no number for %s".formatted(value, column.name()));
                return Optional.empty();
            }
        }
        return Optional.of(row);
    }

    private void photos(Handle handle) {
        Path photos = folder.resolve("photos");
        if (!Files.isDirectory(photos)) {
            return;
        }
        try (Stream<Path> files = Files.list(photos)) {
            for (Path file : files.sorted().toList()) {
                photo(handle, file);
            }
        } catch (IOException unreadable) {
            fault("photos", String.valueOf(unreadable.getMessage()));
        }
    }

    private void photo(Handle handle, Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        Optional<Photo> photo = Photo.of(Disk.read(file, Photo.MOST_BYTES));
        if (photo.isEmpty() || !name.equals(photo.get().id() + "." + photo.get().kind())) {
            fault("photos/" + name, "it is not the picture that its name says");
            return;
        }
        handle.execute(
                "INSERT INTO photo (id, kind, bytes) VALUES (?, ?, ?)",
                photo.get().id(),
                photo.get().kind(),
                photo.get().bytes());
    }

    private Optional<String> text(String name, int most) {
        try {
            byte[] bytes = Disk.read(folder.resolve(name), most);
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException notUtf8) {
            fault(name, "it is not UTF-8");
        } catch (IOException | InvalidPathException unreadable) {
            fault(name, "it cannot be read (%s)".formatted(unreadable.getClass().getSimpleName()));
        }
        return Optional.empty();
    }
}
