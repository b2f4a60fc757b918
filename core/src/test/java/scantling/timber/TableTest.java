package scantling.timber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TableTest {
    static List<String> tables() throws IOException, URISyntaxException {
        URL species = Objects.requireNonNull(Table.class.getResource("/scantling/timber/species.csv"));
        Path root = Path.of(species.toURI()).resolveSibling("..").normalize();
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".csv"))
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .filter(file -> file.startsWith("timber/") || file.startsWith("stock/"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyRowOfEveryTableSaysWhoSaysSoAndWhetherThatWasSeen(String path) {
        Table table = Table.read(path);
        assertFalse(table.rows().isEmpty());
        for (Table.Row row : table.rows()) {
            assertFalse(row.source().isBlank());
            assertTrue(List.of("yes", "partial", "memory", "no").contains(row.verified()), row.verified());
            assertTrue(!row.verified().equals("memory") || row.source().contains("from memory"), row.source());
            assertEquals(row.verified().equals("no"), row.source().contains("common practice"), row.source());
        }
    }

    @Test
    void findsTheTablesOfBothPackages() throws IOException, URISyntaxException {
        assertTrue(tables().containsAll(List.of("timber/species.csv", "stock/rough-classes.csv")));
        assertTrue(tables().size() >= 14, tables()::toString);
    }

    @Test
    void aMissingTableOrRowIsABug() {
        assertThrows(IllegalStateException.class, () -> Table.read("timber/no-such.csv"));
        Table table = Table.read("timber/constants.csv");
        assertThrows(IllegalStateException.class, () -> table.getRow("name", "no such"));
        assertThrows(IllegalStateException.class, () -> table.rows().get(0).length("unit"));
    }
}
