package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A shop of every schema that ever was opens today and says what it said then. Each sample is written once, when its schema
 * is new, and never again.
 */
class SampleTest {
    @TempDir
    Path folder;

    private static Path sample(int schema) {
        return Path.of(System.getProperty("scantling.root"), "app/src/test/resources/scantling/shop/schema-" + schema);
    }

    @ParameterizedTest
    @ValueSource(ints = {1})
    void aShopOfAnEarlierSchemaOpensAndSaysTheSame(int schema) throws IOException {
        Path sample = sample(schema);
        if (Boolean.getBoolean("golden") && !Files.exists(sample)) {
            write(sample);
        }
        Path shop = Files.createDirectories(folder.resolve("shop"));
        Files.copy(sample.resolve(ShopStore.FILE), shop.resolve(ShopStore.FILE));
        Path exported = folder.resolve("exported");
        try (TestShop opened = new TestShop(shop)) {
            opened.store().exportTo(exported);
            opened.does(new Act.AddClient(new Client("", "new", "", "")));
            assertTrue(opened.plan("wall-shelf").problems().isEmpty());
        }
        assertEquals(texts(sample.resolve("exported")), texts(exported));
    }

    private static void write(Path sample) throws IOException {
        Files.createDirectories(sample);
        Path fresh = Files.createTempDirectory("sample");
        try (TestShop shop = new TestShop(fresh)) {
            ExportTest.fill(shop);
            shop.store().exportTo(sample.resolve("exported"));
        }
        Files.copy(fresh.resolve(ShopStore.FILE), sample.resolve(ShopStore.FILE));
    }

    private static Map<String, String> texts(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(
                        folder.relativize(file).toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return texts;
    }
}
