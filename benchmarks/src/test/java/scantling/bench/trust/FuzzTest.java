package scantling.bench.trust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Short seeded runs: nothing is thrown, and both what is taken and what is refused is met. The long runs are commands. */
class FuzzTest {
    @TempDir
    Path place;

    @Test
    void noReaderThrowsWhateverItIsGiven() throws IOException {
        Tally tally = ReaderFuzz.run(4_000, 20_261_125, place);
        assertEquals(0, tally.faulty(), tally::toString);
        for (String kind : new String[] {"length", "sum", "piece", "saw job", "saw plan"}) {
            assertTrue(tally.taken(kind) > 0, () -> kind + " was never taken\n" + tally);
        }
    }

    @Test
    void noFormIsAnsweredWithAFault() throws IOException, InterruptedException {
        Tally tally = FormFuzz.run(300, 20_261_125, place);
        assertEquals(0, tally.faulty(), tally::toString);
        assertTrue(tally.taken("form") > 0 && tally.taken("page") > 0, tally::toString);
    }
}
