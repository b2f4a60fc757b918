package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageKeyTest {
    @TempDir
    Path folder;

    private byte[] keyAfter(Duration time) {
        try (ShopStore store = ShopStore.open(folder, Clock.offset(Clock.systemUTC(), time))) {
            return store.pageKey();
        }
    }

    @Test
    void aShopOpenedAgainStampsItsPagesAsBefore() {
        byte[] first = keyAfter(Duration.ZERO);
        assertEquals(32, first.length);
        assertArrayEquals(first, keyAfter(Duration.ofDays(29)));
        assertFalse(Arrays.equals(first, keyAfter(Duration.ofDays(31))), "a key is good for thirty days");
    }

    @Test
    void onlyItsOwnerMayReadIt() throws IOException {
        keyAfter(Duration.ZERO);
        assertEquals(
                "rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("page-key"))));
    }

    @Test
    void aBrokenKeyIsMadeAnew() throws IOException {
        Files.createDirectories(folder);
        Files.write(folder.resolve("page-key"), new byte[5]);
        assertEquals(32, keyAfter(Duration.ZERO).length);
        assertEquals(32, Files.size(folder.resolve("page-key")));
    }
}
