package scantling.web;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Locale;
import java.util.Optional;

/**
 * The one code that lets one device in. It is shown on the desk, is good for one pairing and a few minutes, and dies when
 * too many wrong ones are tried. Only the latest code counts.
 */
final class Pairing {
    /** Ten characters of thirty-one: about fifty bits, which no allowed number of tries gets near. */
    static final int LENGTH = 10;

    static final Duration GOOD_FOR = Duration.ofMinutes(5);
    private static final int MOST_WRONG = 8;

    private final Secrets secrets;
    private final InstantSource clock;
    private Optional<Open> open = Optional.empty();

    /** A code that may be used. @param code what is shown @param until when it ends @param wrong how often it was missed */
    private record Open(String code, Instant until, int wrong) {}

    Pairing(Secrets secrets, InstantSource clock) {
        this.secrets = secrets;
        this.clock = clock;
    }

    /** A new code; an earlier one is no longer good. */
    synchronized String begin() {
        String code = secrets.code(LENGTH);
        open = Optional.of(new Open(code, clock.instant().plus(GOOD_FOR), 0));
        return code;
    }

    /** The code that is good now. */
    synchronized Optional<String> current() {
        dropOld();
        return open.map(Open::code);
    }

    /** Tries a code. @return whether it was the right one, which is then used up */
    synchronized boolean use(String tried) {
        dropOld();
        if (open.isEmpty()) {
            return false;
        }
        Open good = open.get();
        if (Secrets.same(good.code(), clean(tried))) {
            open = Optional.empty();
            return true;
        }
        open = good.wrong() + 1 >= MOST_WRONG
                ? Optional.empty()
                : Optional.of(new Open(good.code(), good.until(), good.wrong() + 1));
        return false;
    }

    private void dropOld() {
        open = open.filter(good -> clock.instant().isBefore(good.until()));
    }

    private static String clean(String tried) {
        return tried.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }
}
