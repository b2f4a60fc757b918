package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import scantling.shop.ShopStore;

/** A shop that cannot be opened: one sentence, with what to do, and nothing is touched. */
class ServeTroubleTest extends AtTheConsole {
    private Answer serve() {
        return scantling("serve", "--port", "0", "--data", shop.toString());
    }

    @Test
    void aSecondInstanceOnTheSameFolderIsToldThatTheFirstHasIt() {
        try (ShopStore store = ShopStore.open(shop)) {
            Answer answer = serve();
            assertEquals(Exit.WRONG, answer.code());
            assertTrue(answer.err().contains("open") && !answer.err().contains("\tat "), answer::toString);
            assertTrue(store.jobs().isEmpty());
        }
    }

    @Test
    void aDamagedFileIsKeptAndTheLastBackUpIsOffered() throws IOException {
        try (ShopStore store = ShopStore.open(shop)) {
            store.backUp();
        }
        Path file = shop.resolve(ShopStore.FILE);
        byte[] damaged = Files.readAllBytes(file);
        for (int i = 0; i < 200; i++) {
            damaged[i] ^= 0x5A;
        }
        Files.write(file, damaged);
        Answer answer = serve();
        assertEquals(Exit.WRONG, answer.code());
        assertTrue(answer.err().contains("shop restore"), answer::toString);
        assertFalse(answer.err().contains("\tat "), answer::toString);
        assertArrayEquals(damaged, Files.readAllBytes(file));
    }
}
