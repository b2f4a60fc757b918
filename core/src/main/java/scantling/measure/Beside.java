package scantling.measure;

import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinTask;

/**
 * Something that is begun on another thread, where one is free. What comes out is the same as one after the other: the work
 * changes nothing, and depends on nothing that changes.
 *
 * @param <T> what comes out
 */
public final class Beside<T> {
    private final ForkJoinTask<T> work;

    private Beside(ForkJoinTask<T> work) {
        this.work = work;
    }

    /** Begins it. */
    public static <T> Beside<T> begin(Callable<T> work) {
        return new Beside<>(ForkJoinTask.adapt(work).fork());
    }

    /** Waits for it. Whatever the work throws is thrown here. */
    public T get() {
        return work.join();
    }
}
