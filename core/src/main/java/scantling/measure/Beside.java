package scantling.measure;

import java.util.ArrayList;
import java.util.List;
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

    /** Does all of them, the first on this thread and the others beside it. What comes out keeps their order. */
    public static <T> List<T> all(List<Callable<T>> works) {
        List<Beside<T>> others = works.stream().skip(1).map(Beside::begin).toList();
        List<T> done = new ArrayList<>();
        works.stream()
                .limit(1)
                .forEach(first -> done.add(ForkJoinTask.adapt(first).invoke()));
        others.forEach(other -> done.add(other.get()));
        return List.copyOf(done);
    }

    /** Waits for it. Whatever the work throws is thrown here. */
    public T get() {
        return work.join();
    }
}
