package scantling.timber;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Tables from outside the project that tests check against. */
public final class PublishedTable {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

    private PublishedTable() {}

    /** A table copied among the tests. */
    public static List<CSVRecord> read(String name) {
        try (Reader text = new InputStreamReader(
                Objects.requireNonNull(PublishedTable.class.getResourceAsStream("/published/" + name)),
                StandardCharsets.UTF_8)) {
            return FORMAT.parse(text).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A table in the reference folder that lies beside the project, where there is one. */
    public static Optional<List<CSVRecord>> findReference(String path) {
        Path here = Path.of("").toAbsolutePath();
        return Stream.iterate(here, Objects::nonNull, Path::getParent)
                .map(folder -> folder.resolve("shared/reference").resolve(path))
                .filter(Files::isRegularFile)
                .findFirst()
                .map(PublishedTable::parse);
    }

    private static List<CSVRecord> parse(Path file) {
        try (Reader text = Files.newBufferedReader(file)) {
            return FORMAT.parse(text).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
