package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exported folders with bytes changed, lost or doubled by a seeded hand: each is a whole shop or refused in words. */
class ImportFuzzTest {
    private static final int ROUNDS = Integer.getInteger("scantling.fuzz.rounds", 16);
    private static final byte[][] TOKENS = {
        ",".getBytes(java.nio.charset.StandardCharsets.UTF_8),
        "\"".getBytes(java.nio.charset.StandardCharsets.UTF_8),
        "\n".getBytes(java.nio.charset.StandardCharsets.UTF_8),
        "../../x".getBytes(java.nio.charset.StandardCharsets.UTF_8),
        "-1".getBytes(java.nio.charset.StandardCharsets.UTF_8),
        "99999999999999999999".getBytes(java.nio.charset.StandardCharsets.UTF_8),
        "{\"id\":1}".getBytes(java.nio.charset.StandardCharsets.UTF_8),
        new byte[] {0},
        new byte[] {(byte) 0xC3},
    };

    @TempDir
    Path folder;

    @Test
    void whatIsReadInIsAWholeShopOrRefusedInWords() throws IOException {
        Path exported = folder.resolve("exported");
        try (TestShop shop = new TestShop(folder.resolve("shop"))) {
            ExportTest.fill(shop);
            shop.store().exportTo(exported);
        }
        int refused = 0;
        for (int seed = 1; seed <= ROUNDS; seed++) {
            Path damaged = folder.resolve("damaged " + seed);
            copy(exported, damaged);
            damage(damaged, new Random(seed));
            refused += refused(damaged, folder.resolve("into " + seed)) ? 1 : 0;
        }
        assertFalse(refused < ROUNDS / 4 || refused == 0, "only " + refused + " of " + ROUNDS + " were refused");
    }

    private static boolean refused(Path damaged, Path into) {
        try {
            new ShopFolder(into, TestShop.CLOCK).importFrom(damaged);
        } catch (ShopTrouble no) {
            assertEquals(ShopTrouble.Kind.BAD_IMPORT, no.kind(), no::getMessage);
            assertFalse(Files.exists(into.resolve(ShopStore.FILE)));
            return true;
        }
        try (TestShop shop = new TestShop(into)) {
            shop.state();
            for (Job job : shop.store().jobs()) {
                assertTrue(shop.store().jobBook().planOf(job.id()).isPresent(), job::toString);
            }
        }
        return false;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file)));
            }
        }
    }

    private static void damage(Path folder, Random random) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith("read-me.txt"))
                    .sorted(Comparator.comparing(Path::toString))
                    .toList();
        }
        for (int n = 0; n <= random.nextInt(3); n++) {
            Path file = files.get(random.nextInt(files.size()));
            Files.write(file, damaged(Files.readAllBytes(file), random));
        }
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        int at = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, at + random.nextInt(40));
        byte[] middle = switch (random.nextInt(4)) {
            case 0 -> new byte[0];
            case 1 -> TOKENS[random.nextInt(TOKENS.length)];
            case 2 -> java.util.Arrays.copyOfRange(bytes, to / 2, to);
            default -> java.util.Arrays.copyOfRange(bytes, at, bytes.length);
        };
        byte[] result = new byte[at + middle.length + bytes.length - to];
        System.arraycopy(bytes, 0, result, 0, at);
        System.arraycopy(middle, 0, result, at, middle.length);
        System.arraycopy(bytes, to, result, at + middle.length, bytes.length - to);
        return result;
    }
}
