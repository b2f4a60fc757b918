package scantling.shop;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;

/**
 * Values that are worked out when first asked for and kept while there is room. Asked for by many at once, each is worked
 * out once and the others wait for it; what was asked for longest ago goes first. Safe for many threads.
 *
 * @param <K> what is asked; compared by its {@code equals}
 * @param <V> the answer
 */
public final class Kept<K, V> {
    private final long room;
    private final ToLongFunction<V> weight;
    private final Map<K, Slot<V>> slots = new LinkedHashMap<>(16, 0.75f, true);
    private long full;

    /** One answer. */
    private static final class Slot<V> {
        private final CompletableFuture<V> value = new CompletableFuture<>();
        private long weight;
    }

    /** @param room for how much @param weight how much of it an answer takes */
    public Kept(long room, ToLongFunction<V> weight) {
        this.room = room;
        this.weight = weight;
    }

    /** The answer, worked out now if it is not there. What the work throws is thrown to all who wait for it and not kept. */
    public V get(K key, Supplier<V> work) {
        Slot<V> mine = new Slot<>();
        Slot<V> slot;
        synchronized (slots) {
            slot = slots.computeIfAbsent(key, unused -> mine);
        }
        if (slot != mine) {
            return awaited(slot);
        }
        try {
            V value = work.get();
            settle(mine, value);
            mine.value.complete(value);
            return value;
        } catch (RuntimeException | Error thrown) {
            synchronized (slots) {
                slots.remove(key, mine);
            }
            mine.value.completeExceptionally(thrown);
            throw thrown;
        }
    }

    private static <V> V awaited(Slot<V> slot) {
        try {
            return slot.value.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            throw failed;
        }
    }

    private void settle(Slot<V> mine, V value) {
        synchronized (slots) {
            mine.weight = Math.max(1, weight.applyAsLong(value));
            full += mine.weight;
            Iterator<Slot<V>> eldest = slots.values().iterator();
            while (full > room && eldest.hasNext()) {
                Slot<V> next = eldest.next();
                if (next != mine && next.weight > 0) {
                    full -= next.weight;
                    eldest.remove();
                }
            }
        }
    }

    /** Forgets one answer, if it is there. */
    public void forget(K key) {
        synchronized (slots) {
            Optional.ofNullable(slots.get(key)).filter(slot -> slot.weight > 0).ifPresent(slot -> {
                slots.remove(key);
                full -= slot.weight;
            });
        }
    }

    /** Forgets every answer that is there. */
    public void forget() {
        synchronized (slots) {
            slots.values().removeIf(slot -> slot.weight > 0);
            full = 0;
        }
    }
}
