package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.measure.Length;

/** A shop as a readable folder and back. */
class ExportTest {
    @TempDir
    Path folder;

    private Path exported;
    private Map<String, Object> state = Map.of();

    /** A small shop with something of everything, and the folder it was exported to. */
    @BeforeEach
    void export() {
        exported = folder.resolve("exported");
        try (TestShop shop = new TestShop(folder.resolve("shop"))) {
            fill(shop);
            state = shop.state();
            shop.store().exportTo(exported);
        }
    }

    static void fill(TestShop shop) {
        shop.does(new Act.AddClient(new Client("", "Finchweir, \"O.\"", "line one\nline two", "\ud83e\udeb5 ")));
        String job = shop.addJob("wall-shelf");
        shop.does(new Act.EditText(job, 1, TestShop.starter("wall-shelf").replace("\n", "\r\n"), "other line ends"));
        shop.does(new Act.PutOnRack(new OnHand(TestShop.board("C1", 180, 2400), Optional.of(64L), "north, wall")));
        shop.does(new Act.Set(new Setting(Section.ALLOWANCE, "kerf", "3/32 in")));
        byte[] picture = new byte[500];
        new Random(1).nextBytes(picture);
        System.arraycopy(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF}, 0, picture, 0, 3);
        String photo = shop.store().keep(Photo.of(picture).orElseThrow());
        shop.log(job, new BenchEntry.Note("", "#start, with comma", Optional.of(photo)));
        shop.log(job, new BenchEntry.Cut("left side", Map.of("width", Length.mm("139.4"))));
        shop.does(new Act.Undo("a4"));
    }

    private static Map<String, String> bytes(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(
                        folder.relativize(file).toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }

    private ShopFolder into(String name) {
        return new ShopFolder(folder.resolve(name), TestShop.CLOCK);
    }

    @Test
    void aRoundTripGivesTheSameShopAndTheSameBytes() throws IOException {
        into("other").importFrom(exported);
        Path again = folder.resolve("again");
        try (TestShop shop = new TestShop(folder.resolve("other"))) {
            assertEquals(state, shop.state());
            shop.store().exportTo(again);
            shop.does(new Act.Redo("a4"));
            assertEquals(1, shop.store().onHand().size());
        }
        assertEquals(bytes(exported), bytes(again));
    }

    @Test
    void aShopThatIsOpenIsWrittenOutByteForByteAsWhenItIsClosed() throws IOException {
        Path open = folder.resolve("while open");
        try (TestShop shop = new TestShop(folder.resolve("shop"))) {
            into("shop").exportTo(open);
            assertEquals(state, shop.state());
        }
        Path closed = folder.resolve("while closed");
        into("shop").exportTo(closed);
        assertEquals(bytes(exported), bytes(open));
        assertEquals(bytes(exported), bytes(closed));
    }

    /** Whenever it falls between the acts: every act that is written out has its client, and every client its act. */
    @Test
    void whatIsWrittenOutIsOfOneMomentThoughActsGoOn() throws Exception {
        try (TestShop shop = new TestShop(folder.resolve("shop"))) {
            AtomicBoolean enough = new AtomicBoolean();
            Thread hand = new Thread(() -> {
                for (int i = 0; !enough.get(); i++) {
                    shop.does(new Act.AddClient(new Client("", "Client " + i, "", "")));
                }
            });
            hand.start();
            try {
                for (int i = 0; i < 5; i++) {
                    Path now = folder.resolve("now " + i);
                    into("shop").exportTo(now);
                    assertEquals(
                            lines(now.resolve("acts.csv"), "client-") + 1,
                            lines(now.resolve("clients.csv"), "") - 1 - 1,
                            "after the heading, and the client of two lines");
                }
            } finally {
                enough.set(true);
                hand.join();
            }
        }
    }

    private static long lines(Path table, String with) throws IOException {
        return Files.readAllLines(table).stream()
                .filter(line -> line.contains(with))
                .count();
    }

    @Test
    void whereThereIsNoShopNothingIsMade() {
        ShopTrouble trouble =
                assertThrows(ShopTrouble.class, () -> into("mistyped").exportTo(folder.resolve("out")));
        assertTrue(trouble.getMessage().contains("There is no shop in"), trouble::getMessage);
        assertThrows(ShopTrouble.class, () -> into("mistyped").backUp());
        assertFalse(Files.exists(folder.resolve("mistyped")));
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @Test
    void theTextsOfTheJobsAreFilesToRead() throws IOException {
        assertEquals(TestShop.starter("wall-shelf"), Files.readString(exported.resolve("texts/wall-shelf/0001.yaml")));
        assertTrue(Files.readString(exported.resolve("read-me.txt")).contains("rack.csv"));
    }

    @Test
    void nothingIsReadInOverAShop() {
        assertThrows(ShopTrouble.class, () -> into("shop").importFrom(exported));
        try (TestShop shop = new TestShop(folder.resolve("shop"))) {
            assertEquals(state, shop.state());
        }
    }

    @Test
    void everythingThatIsWrongIsToldAtOnceAndNothingTaken() throws IOException {
        Path jobs = exported.resolve("jobs.csv");
        Files.writeString(jobs, Files.readString(jobs).replace("in hand", "in foot"));
        Path rack = exported.resolve("settings.csv");
        Files.writeString(rack, Files.readString(rack).replace("3/32 in", "3/32 stone"));
        ShopTrouble trouble =
                assertThrows(ShopTrouble.class, () -> into("other").importFrom(exported));
        assertEquals(ShopTrouble.Kind.BAD_IMPORT, trouble.kind());
        for (String word : List.of("jobs.csv, row 1", "in foot", "settings.csv, row 1", "3/32 stone")) {
            assertTrue(trouble.getMessage().contains(word), () -> word + " is not in " + trouble.getMessage());
        }
        assertFalse(Files.exists(folder.resolve("other").resolve(ShopStore.FILE)));
    }

    @Test
    void aFolderThatIsNotAShopIsRefused() throws IOException {
        Path other = Files.createDirectories(folder.resolve("papers"));
        assertThrows(ShopTrouble.class, () -> into("other").importFrom(other));
        assertThrows(ShopTrouble.class, () -> into("other").importFrom(folder.resolve("nowhere")));
    }

    @Test
    void nothingIsExportedOverOtherFiles() {
        try (TestShop shop = new TestShop(folder.resolve("shop"))) {
            assertThrows(ShopTrouble.class, () -> shop.store().exportTo(exported));
        }
    }
}
