package scantling.measure;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something worked out when first asked for, and then kept. Whoever asks meanwhile on another thread waits for it.
 *
 * @param <T> what comes out
 */
public final class Once<T> implements Supplier<T> {
    private final Supplier<T> work;
    private @Nullable T found;

    private Once(Supplier<T> work) {
        this.work = work;
    }

    /** Does nothing yet. @param work always gives the same */
    public static <T> Once<T> of(Supplier<T> work) {
        return new Once<>(work);
    }

    @Override
    public synchronized T get() {
        T result = found;
        if (result == null) {
            result = work.get();
            found = result;
        }
        return result;
    }
}
