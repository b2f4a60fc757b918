package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class AsideTest {
    @Test
    void whatTheWorkComesToIsGiven() {
        assertEquals(Optional.of(7), Aside.call(() -> 7, () -> false));
    }

    /** The work never ends; the answer is there all the same. */
    @Test
    void workThatCannotBeStoppedIsLeftToItself() {
        CountDownLatch never = new CountDownLatch(1);
        AtomicInteger asked = new AtomicInteger();

        Optional<Integer> answer = Aside.call(() -> endless(never), () -> asked.incrementAndGet() > 3);

        assertEquals(Optional.empty(), answer);
    }

    @Test
    void whatGoesWrongAsideIsTold() {
        assertThrows(
                IllegalStateException.class,
                () -> Aside.call(
                        () -> {
                            throw new ArithmeticException("no such number");
                        },
                        () -> false));
    }

    private static int endless(CountDownLatch never) {
        try {
            never.await();
        } catch (InterruptedException told) {
            Thread.currentThread().interrupt();
        }
        return 0;
    }
}
