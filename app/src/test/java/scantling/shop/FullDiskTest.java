package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No room left, or no right to write: what was said yes to is there, what was not is not. */
class FullDiskTest {
    @TempDir
    Path folder;

    private static Act.AddClient client(int n) {
        return new Act.AddClient(new Client("client-" + n, "Client " + n, "", "x".repeat(15_000)));
    }

    private static void fillsUpAndGoesOn(TestShop shop, Runnable makeRoom) {
        int taken = 0;
        ShopTrouble trouble = null;
        while (trouble == null && taken < 1_000) {
            try {
                shop.does(client(taken));
                taken++;
            } catch (ShopTrouble full) {
                trouble = full;
            }
        }
        assertTrue(trouble != null && trouble.kind() == ShopTrouble.Kind.DISK_FULL, String.valueOf(trouble));
        assertTrue(taken > 0, "some acts are taken first");
        assertEquals(taken, shop.store().clients().size());
        assertEquals(taken, shop.store().version());
        makeRoom.run();
        shop.does(client(taken));
        assertEquals(taken + 1, shop.store().clients().size());
    }

    @Test
    void aFileThatMayGrowNoMoreLosesNothing() {
        Map<String, Object> state;
        try (TestShop shop = new TestShop(folder)) {
            shop.store().database().read(handle -> handle.execute("PRAGMA user_version"));
            limit(shop, 200);
            fillsUpAndGoesOn(shop, () -> limit(shop, 1_000_000));
            state = shop.state();
        }
        try (TestShop shop = new TestShop(folder)) {
            assertEquals(state, shop.state());
        }
    }

    private static void limit(TestShop shop, int pages) {
        shop.store()
                .database()
                .write(handle -> handle.createQuery("PRAGMA max_page_count = " + pages)
                        .mapTo(Long.class)
                        .one());
    }

    @Test
    void aDiskThatIsFullLosesNothing() throws Exception {
        try (SmallDisk disk = SmallDisk.on(folder)) {
            Path ballast = disk.at("ballast");
            Files.write(ballast, new byte[300_000]);
            Map<String, Object> state;
            try (TestShop shop = new TestShop(folder.resolve("shop"))) {
                fillsUpAndGoesOn(shop, () -> delete(ballast));
                state = shop.state();
            }
            try (TestShop shop = new TestShop(folder.resolve("shop"))) {
                assertEquals(state, shop.state());
            }
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldOf() throws Exception {
        try (SmallDisk disk = SmallDisk.on(folder)) {
            new TestShop(folder.resolve("shop")).close();
            disk.makeReadOnly();
            for (String name : new String[] {"shop", "new shop"}) {
                ShopTrouble trouble = assertThrows(ShopTrouble.class, () -> ShopStore.open(folder.resolve(name)));
                assertEquals(ShopTrouble.Kind.READ_ONLY, trouble.kind(), trouble::getMessage);
            }
        }
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException stays) {
            throw new IllegalStateException(stays);
        }
    }
}
