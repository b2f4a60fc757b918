package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.shop.ShopStore;

/** A shop that cannot be opened: one sentence, with what to do, and nothing is touched. */
class ServeTroubleTest {
    @TempDir
    Path folder;

    private record Answer(int code, String err) {}

    private Answer serve() {
        StringWriter err = new StringWriter();
        int code = Main.run(
                new PrintWriter(new StringWriter(), true),
                new PrintWriter(err, true),
                "serve",
                "--port",
                "0",
                "--data",
                folder.toString());
        return new Answer(code, err.toString());
    }

    @Test
    void aSecondInstanceOnTheSameFolderIsToldThatTheFirstHasIt() {
        try (ShopStore store = ShopStore.open(folder)) {
            Answer answer = serve();
            assertEquals(Exit.WRONG, answer.code());
            assertTrue(answer.err().contains("open") && !answer.err().contains("\tat "), answer::toString);
            assertTrue(store.jobs().isEmpty());
        }
    }

    @Test
    void aDamagedFileIsKeptAndTheLastBackUpIsOffered() throws IOException {
        try (ShopStore store = ShopStore.open(folder)) {
            store.backUp();
        }
        Path file = folder.resolve(ShopStore.FILE);
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
