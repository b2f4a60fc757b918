package scantling.bench.trust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The page of licences is of the jars that are shipped, each with a licence. */
class LicencesTest {
    private static final Path JARS = Path.of("../app/target/lib");
    private static final Path PAGE = Path.of("../docs/licences.md");

    @Test
    void everyJarStandsOnThePageAndNoOther() throws IOException {
        assumeTrue(Files.isDirectory(JARS), "the program has not been packaged");
        List<String> listed = Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| library") && !line.startsWith("| ---"))
                .map(line -> line.split(" \\| ")[0].substring(2))
                .toList();
        assertEquals(new TreeSet<>(Licences.names(JARS)), new TreeSet<>(listed));
    }

    @Test
    void nothingIsShippedWithoutALicence() throws IOException {
        assertTrue(Files.readString(PAGE).lines().noneMatch(line -> line.contains("not told")), PAGE::toString);
    }
}
