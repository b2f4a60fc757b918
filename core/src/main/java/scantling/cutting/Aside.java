package scantling.cutting;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Work that cannot be stopped midway, done in a thread of its own beside whatever goes on here, and left to itself when the
 * person says stop. What it comes to is the same as if it were done here.
 */
final class Aside<T> {
    private static final long MILLISECONDS_BETWEEN_ASKING = 20;

    private final FutureTask<T> task;

    private Aside(Supplier<T> work) {
        this.task = new FutureTask<>(work::get);
        Thread thread = new Thread(task, "aside of " + Thread.currentThread().getName());
        thread.setDaemon(true);
        thread.start();
    }

    /** Begins some work. It must not change anything that others see, nor see anything that others change. */
    static <T> Aside<T> begin(Supplier<T> work) {
        return new Aside<>(work);
    }

    /** What some work comes to; empty when it was stopped before. */
    static <T> Optional<T> call(Supplier<T> work, BooleanSupplier stop) {
        return begin(work).answer(stop);
    }

    /** What it comes to, waited for; empty when it was stopped before. */
    Optional<T> answer(BooleanSupplier stop) {
        while (!stop.getAsBoolean()) {
            try {
                return Optional.of(task.get(MILLISECONDS_BETWEEN_ASKING, TimeUnit.MILLISECONDS));
            } catch (TimeoutException notYet) {
                // asks again
            } catch (InterruptedException told) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            } catch (ExecutionException wrong) {
                throw new IllegalStateException(wrong.getCause());
            }
        }
        return Optional.empty();
    }
}
