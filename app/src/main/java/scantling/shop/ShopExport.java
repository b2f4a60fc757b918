package scantling.shop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jdbi.v3.core.Handle;

/** Writes a shop as a folder of tables, texts and photos. The same shop gives the same bytes. */
final class ShopExport {
    static final String FORMAT_FILE = "format.txt";
    static final String FORMAT = "Scantling shop, format 1\n";
    static final CSVFormat CSV =
            CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();

    /** Tables that become a file each; a revision's text is a file of its own. */
    static final List<ShopTable> TABLES = List.of(
            ShopTable.CLIENT,
            ShopTable.JOB,
            ShopTable.RACK,
            ShopTable.SUPPLY,
            ShopTable.SETTING,
            ShopTable.ACT,
            ShopTable.CHANGE,
            ShopTable.REVISION,
            ShopTable.BENCH);

    private static final String READ_ME = """
        This folder holds a whole shop.

        clients.csv    for whom
        jobs.csv       pieces for clients; the column revision says which text counts
        texts/         every text every job ever had, by job and number
        revisions.csv  which act brought which text
        rack.csv       boards, sheets, sticks and offcuts on hand
        supplies.csv   hardware and finish on hand
        settings.csv   what the shop has set for itself
        bench.csv      everything that happened at the bench
        photos/        pictures from the bench
        acts.csv, changes.csv   what was done when, and what it takes to take it back

        The tables are UTF-8 with commas. Lengths are exact and carry their unit. Paired phones are not in here: they are
        let in anew. "scantling shop import" makes a shop of this folder again.
        """;

    private final Rows rows;
    private final Path folder;

    private ShopExport(Rows rows, Path folder) {
        this.rows = rows;
        this.folder = folder;
    }

    /** @param folder is made; must not be there, or be empty */
    static void write(Handle handle, Path folder) {
        try {
            Files.createDirectories(folder);
            try (Stream<Path> there = Files.list(folder)) {
                if (there.findAny().isPresent()) {
                    throw new ShopTrouble(
                            ShopTrouble.Kind.OTHER,
                            "%s is not empty. Name a new folder to export to.".formatted(folder));
                }
            }
            new ShopExport(new Rows(handle), folder).write(handle);
        } catch (IOException unwritable) {
            throw Troubles.of(folder, unwritable);
        }
    }

    static String fileOf(ShopTable table) {
        return switch (table) {
            case SUPPLY -> "supplies.csv";
            case RACK, BENCH -> table.word() + ".csv";
            default -> table.word() + "s.csv";
        };
    }

    static List<ShopTable.Column> columns(ShopTable table) {
        return table.columns().stream()
                .filter(column -> table != ShopTable.REVISION || !column.name().equals("text"))
                .toList();
    }

    static String textFile(String job, long number) {
        return "texts/%s/%04d.yaml".formatted(job, number);
    }

    /** The format comes last: without it a folder that was left half-written is not taken for a shop. */
    private void write(Handle handle) throws IOException {
        for (ShopTable table : TABLES) {
            table(table);
        }
        for (Row revision : rows.all(ShopTable.REVISION)) {
            put(textFile(revision.text("job"), revision.number("number")), revision.text("text"));
        }
        List<String> photos = handle.createQuery("SELECT id FROM photo ORDER BY id")
                .mapTo(String.class)
                .list();
        for (String id : photos) {
            photo(handle, id);
        }
        put("read-me.txt", READ_ME);
        put(FORMAT_FILE, FORMAT);
    }

    private void table(ShopTable table) throws IOException {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSV)) {
            List<ShopTable.Column> columns = columns(table);
            printer.printRecord(columns.stream().map(ShopTable.Column::name));
            for (Row row : rows.all(table)) {
                List<Object> values = new ArrayList<>();
                columns.forEach(column -> values.add(row.get(column.name())));
                printer.printRecord(values);
            }
        }
        put(fileOf(table), text.toString());
    }

    private void photo(Handle handle, String id) throws IOException {
        Photo photo = handle.createQuery("SELECT kind, bytes FROM photo WHERE id = ?")
                .bind(0, id)
                .map((row, context) -> new Photo(id, row.getString("kind"), row.getBytes("bytes")))
                .one();
        Path file = folder.resolve("photos").resolve(photo.id() + "." + photo.kind());
        Files.createDirectories(folder.resolve("photos"));
        Files.write(file, photo.bytes());
        Disk.flush(file);
    }

    private void put(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.resolveSibling("."));
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        Disk.flush(file);
    }
}
