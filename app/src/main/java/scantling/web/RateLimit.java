package scantling.web;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** Lets each caller try so many times in a stretch of time, and no more. It forgets who has not come for that long. */
final class RateLimit {
    /** More callers than any workshop has; beyond it the oldest is forgotten, so that a flood cannot fill the memory. */
    private static final int CALLERS = 1_000;

    private final int times;
    private final Duration within;
    private final InstantSource clock;
    private final Map<String, Deque<Instant>> tries = new LinkedHashMap<>();

    RateLimit(int times, Duration within, InstantSource clock) {
        this.times = times;
        this.within = within;
        this.clock = clock;
    }

    /** Counts a try. @return whether it is still allowed */
    synchronized boolean allows(String caller) {
        Instant now = clock.instant();
        Instant old = now.minus(within);
        tries.values().removeIf(all -> all.peekLast() == null || all.getLast().isBefore(old));
        if (tries.size() >= CALLERS && !tries.containsKey(caller)) {
            tries.remove(tries.keySet().iterator().next());
        }
        Deque<Instant> mine = tries.computeIfAbsent(caller, key -> new ArrayDeque<>());
        while (!mine.isEmpty() && mine.getFirst().isBefore(old)) {
            mine.removeFirst();
        }
        if (mine.size() >= times) {
            return false;
        }
        mine.addLast(now);
        return true;
    }
}
