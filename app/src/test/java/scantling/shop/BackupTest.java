package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Back-ups, restoring, and what happens to a file that is no longer whole. */
class BackupTest {
    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve(ShopStore.FILE);
    }

    private ShopFolder beside() {
        return new ShopFolder(folder, TestShop.CLOCK);
    }

    private static Act board(String id) {
        return new Act.PutOnRack(OnHand.of(TestShop.board(id, 180, 2400)));
    }

    @Test
    void aBackUpIsRestoredAndWhatWasThereIsSetAside() throws IOException {
        Map<String, Object> then;
        try (TestShop shop = new TestShop(folder)) {
            shop.addJob("wall-shelf");
            then = shop.state();
            shop.store().backUp();
            shop.does(board("C1"));
        }
        byte[] later = Files.readAllBytes(file());
        ShopFolder.Restored restored = beside().restore(Optional.empty());
        assertArrayEquals(
                later, Files.readAllBytes(restored.setAside().orElseThrow().resolve(ShopStore.FILE)));
        try (TestShop shop = new TestShop(folder)) {
            assertEquals(then, shop.state());
        }
    }

    @Test
    void aShopThatIsOpenIsCopiedToo() {
        Map<String, Object> then;
        Path copy;
        try (TestShop shop = new TestShop(folder)) {
            shop.addJob("wall-shelf");
            then = shop.state();
            copy = beside().backUp();
            shop.does(board("C1"));
        }
        beside().restore(Optional.of(copy.getFileName().toString()));
        try (TestShop shop = new TestShop(folder)) {
            assertEquals(then, shop.state());
        }
    }

    @Test
    void anOlderBackUpIsRestoredByName() {
        Path first;
        try (TestShop shop = new TestShop(folder)) {
            shop.does(board("C1"));
            first = shop.store().backUp();
            shop.does(board("C2"));
            shop.store().backUp();
        }
        beside().restore(Optional.of(String.valueOf(first.getFileName())));
        try (TestShop shop = new TestShop(folder)) {
            assertEquals(1, shop.store().onHand().size());
        }
        assertThrows(ShopTrouble.class, () -> beside().restore(Optional.of("no such back-up")));
    }

    @Test
    void aShopThatIsOpenIsNotRestored() {
        try (TestShop shop = new TestShop(folder)) {
            shop.does(board("C1"));
            shop.store().backUp();
            assertEquals(
                    ShopTrouble.Kind.IN_USE,
                    assertThrows(ShopTrouble.class, () -> beside().restore(Optional.empty()))
                            .kind());
        }
    }

    @Test
    void aBackUpIsDueOnceADayAndOnlyAfterSomethingChanged() {
        new TestShop(folder).close();
        Path shop = file();
        Backups monday = new Backups(shop, TestShop.CLOCK);
        Backups tuesday = new Backups(shop, Clock.offset(TestShop.CLOCK, Duration.ofHours(25)));
        assertTrue(monday.makeIfDue(0).isEmpty(), "an empty shop");
        assertTrue(monday.makeIfDue(3).isPresent(), "the first acts");
        assertTrue(monday.makeIfDue(4).isEmpty(), "the same day");
        assertTrue(tuesday.makeIfDue(3).isEmpty(), "nothing changed");
        assertTrue(tuesday.makeIfDue(4).isPresent(), "a day later");
    }

    @Test
    void oldBackUpsAreThinnedToTheLatestAndOneAMonth() {
        new TestShop(folder).close();
        for (int day = 1; day <= 60; day++) {
            new Backups(file(), Clock.offset(TestShop.CLOCK, Duration.ofDays(day))).makeIfDue(day);
        }
        List<String> names = beside().backups().stream()
                .map(backup -> String.valueOf(backup.getFileName()))
                .toList();
        // Days 1 to 60 after 2 March: the last of March, and the latest fourteen, the last of April among them.
        assertEquals(15, names.size(), names::toString);
        assertTrue(names.get(0).startsWith("2026-03-31"), names::toString);
    }

    @Test
    void aDamagedFileIsToldOfAndLeftAsItIs() throws IOException {
        try (TestShop shop = new TestShop(folder)) {
            shop.addJob("bedside-chest");
            shop.store().backUp();
        }
        byte[] sound = Files.readAllBytes(file());
        List<byte[]> damaged = new ArrayList<>();
        damaged.add(changed(sound, 0, 16));
        damaged.add(changed(sound, sound.length / 2, sound.length / 2 + 3000));
        damaged.add(java.util.Arrays.copyOf(sound, sound.length / 2));
        damaged.add("not a shop at all".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        for (byte[] bytes : damaged) {
            Files.write(file(), bytes);
            ShopTrouble trouble = assertThrows(ShopTrouble.class, () -> ShopStore.open(folder));
            assertEquals(ShopTrouble.Kind.DAMAGED, trouble.kind(), trouble::getMessage);
            assertTrue(trouble.getMessage().contains("restore"), trouble::getMessage);
            assertArrayEquals(bytes, Files.readAllBytes(file()));
        }
        beside().restore(Optional.empty());
        try (TestShop shop = new TestShop(folder)) {
            assertEquals(1, shop.store().jobs().size());
        }
    }

    private static byte[] changed(byte[] bytes, int from, int to) {
        byte[] copy = bytes.clone();
        for (int i = from; i < to; i++) {
            copy[i] = (byte) (copy[i] ^ 0x5A);
        }
        return copy;
    }

    @Test
    void aFileThatIsGoneIsNotQuietlyReplacedByAnEmptyShop() throws IOException {
        try (TestShop shop = new TestShop(folder)) {
            shop.does(board("C1"));
            shop.store().backUp();
        }
        Files.delete(file());
        ShopTrouble trouble = assertThrows(ShopTrouble.class, () -> ShopStore.open(folder));
        assertTrue(trouble.getMessage().contains("gone"), trouble::getMessage);
        assertFalse(Files.exists(file()));
    }

    @Test
    void aShopOfALaterScantlingIsLeftAlone() throws Exception {
        new TestShop(folder).close();
        try (java.sql.Connection connection = java.sql.DriverManager.getConnection("jdbc:sqlite:" + file());
                java.sql.Statement statement = connection.createStatement()) {
            statement.execute("INSERT INTO flyway_schema_history (installed_rank, version, description, type, script,"
                    + " checksum, installed_by, execution_time, success)"
                    + " VALUES (99, '99', 'later', 'SQL', 'V99__later.sql', 1, '', 1, 1)");
        }
        assertEquals(
                ShopTrouble.Kind.TOO_NEW,
                assertThrows(ShopTrouble.class, () -> ShopStore.open(folder)).kind());
    }

    @Test
    void aFileWhereTheFolderShouldBeIsToldOf() throws IOException {
        Path notAFolder = Files.writeString(folder.resolve("shop"), "");
        ShopTrouble trouble = assertThrows(ShopTrouble.class, () -> ShopStore.open(notAFolder));
        assertTrue(trouble.getMessage().contains(notAFolder.toString()), trouble::getMessage);
    }
}
