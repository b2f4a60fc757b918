package scantling.measure;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Something that is worked out beside everything else, where the machine has a processor to spare. What it comes to does not
 * depend on when it is asked for.
 *
 * @param <T> what it comes to
 */
public final class Beside<T> {
    private final CompletableFuture<T> work;

    private Beside(CompletableFuture<T> work) {
        this.work = work;
    }

    /** Begins it. @param work depends on nothing that changes meanwhile */
    public static <T> Beside<T> begin(Supplier<T> work) {
        return new Beside<>(CompletableFuture.supplyAsync(work));
    }

    /** Waits for it. Whatever the work throws is thrown here as it was. */
    public T get() {
        try {
            return work.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            if (failed.getCause() instanceof Error thrown) {
                throw thrown;
            }
            throw failed;
        }
    }
}
