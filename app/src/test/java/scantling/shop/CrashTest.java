package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A process killed in the middle of its work loses nothing that it has answered. The long run is a benchmark. */
class CrashTest {
    @TempDir
    Path place;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void nothingAnsweredIsLostAndNothingIsHalfDone(long seed) throws Exception {
        CrashTrial.Result result = new CrashTrial(place, seed).run(2);
        assertEquals(List.of(), result.faults());
        assertEquals(0, result.lost());
        assertTrue(result.answered() > 0, result::toString);
    }
}
