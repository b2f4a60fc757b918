package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One code, one device, a few minutes, a few tries. */
class PairingTest {
    private Instant now = Instant.parse("2026-03-06T09:00:00Z");
    private final InstantSource clock = () -> now;
    private final Pairing pairing = new Pairing(new Secrets(new byte[32]), clock);

    @Test
    void aCodeIsGoodOnceHoweverItIsTyped() {
        String code = pairing.begin();
        assertTrue(pairing.use(code.substring(0, 5).toLowerCase(Locale.ROOT) + " - " + code.substring(5)));
        assertFalse(pairing.use(code));
    }

    @Test
    void aCodeEndsAfterFiveMinutes() {
        String code = pairing.begin();
        now = now.plus(Pairing.GOOD_FOR);
        assertEquals(Optional.empty(), pairing.current());
        assertFalse(pairing.use(code));
    }

    @Test
    void aCodeDiesOfTooManyWrongTries() {
        String code = pairing.begin();
        for (int i = 0; i < 8; i++) {
            assertFalse(pairing.use("AAAAAAAAAA"));
        }
        assertFalse(pairing.use(code));
    }

    @Test
    void onlyTheLatestCodeCounts() {
        String first = pairing.begin();
        String second = pairing.begin();
        assertFalse(pairing.use(first));
        assertTrue(pairing.use(second));
    }

    @Test
    void aCallerTriesSoOftenAndNoMoreUntilTimeHasPassed() {
        RateLimit limit = new RateLimit(2, Duration.ofMinutes(1), clock);
        assertTrue(limit.allows("phone"));
        assertTrue(limit.allows("phone"));
        assertFalse(limit.allows("phone"));
        assertTrue(limit.allows("another"));
        now = now.plusSeconds(61);
        assertTrue(limit.allows("phone"));
    }
}
