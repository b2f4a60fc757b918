package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
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
        assumeTrue(mounted("-t", "tmpfs", "-o", "size=3m", "none"), FullDiskTest::skipped);
        try {
            Path ballast = folder.resolve("ballast");
            Files.write(ballast, new byte[300_000]);
            Map<String, Object> state;
            try (TestShop shop = new TestShop(folder.resolve("shop"))) {
                fillsUpAndGoesOn(shop, () -> delete(ballast));
                state = shop.state();
            }
            try (TestShop shop = new TestShop(folder.resolve("shop"))) {
                assertEquals(state, shop.state());
            }
        } finally {
            run("umount", folder.toString());
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldOf() throws Exception {
        assumeTrue(mounted("-t", "tmpfs", "-o", "size=3m", "none"), FullDiskTest::skipped);
        try {
            new TestShop(folder.resolve("shop")).close();
            assumeTrue(mounted("-o", "remount,ro"), FullDiskTest::skipped);
            for (String name : new String[] {"shop", "new shop"}) {
                ShopTrouble trouble = assertThrows(ShopTrouble.class, () -> ShopStore.open(folder.resolve(name)));
                assertEquals(ShopTrouble.Kind.READ_ONLY, trouble.kind(), trouble::getMessage);
            }
        } finally {
            run("umount", folder.toString());
        }
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException stays) {
            throw new IllegalStateException(stays);
        }
    }

    private static String skipped() {
        String line = "skipped: this system does not let a test make a small disk of its own";
        System.out.println(line);
        return line;
    }

    private boolean mounted(String... how) throws IOException, InterruptedException {
        String[] command = new String[how.length + 2];
        command[0] = "mount";
        System.arraycopy(how, 0, command, 1, how.length);
        command[how.length + 1] = folder.toString();
        return run(command);
    }

    private static boolean run(String... command) throws IOException, InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException noSuchCommand) {
            return false;
        }
    }
}
