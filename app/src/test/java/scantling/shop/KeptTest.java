package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What many ask for at once is worked out once; what is kept has a bound. */
class KeptTest {
    private final AtomicInteger worked = new AtomicInteger();

    private String work(String key) {
        worked.incrementAndGet();
        return key + "!";
    }

    @Test
    void manyWhoAskAtOnceWaitForOneAnswer() throws InterruptedException {
        Kept<String, String> kept = new Kept<>(10, value -> 1);
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        AtomicInteger right = new AtomicInteger();
        List<Thread> all = IntStream.range(0, 8)
                .mapToObj(i -> new Thread(() -> {
                    String answer = kept.get("a", () -> {
                        begun.countDown();
                        waitFor(go);
                        return work("a");
                    });
                    right.addAndGet(answer.equals("a!") ? 1 : 0);
                }))
                .toList();
        all.forEach(Thread::start);
        begun.await();
        go.countDown();
        for (Thread each : all) {
            each.join();
        }
        assertEquals(8, right.get());
        assertEquals(1, worked.get());
    }

    private static void waitFor(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void whatWasAskedForLongestAgoGoesWhenThereIsNoRoom() {
        Kept<String, String> kept = new Kept<>(4, String::length);
        kept.get("a", () -> work("a"));
        kept.get("b", () -> work("b"));
        kept.get("a", () -> work("a"));
        kept.get("c", () -> work("c"));
        kept.get("a", () -> work("a"));
        assertEquals(3, worked.get());
        kept.get("b", () -> work("b"));
        assertEquals(4, worked.get());
    }

    @Test
    void whatIsLargerThanTheRoomIsAnsweredAllTheSame() {
        Kept<String, String> kept = new Kept<>(1, String::length);
        assertEquals("large!", kept.get("large", () -> work("large")));
    }

    @Test
    void aFailureIsToldAndTriedAgain() {
        Kept<String, String> kept = new Kept<>(10, value -> 1);
        IllegalStateException failed = new IllegalStateException("no");
        assertEquals(
                failed,
                assertThrows(
                        IllegalStateException.class,
                        () -> kept.get("a", () -> {
                            throw failed;
                        })));
        assertEquals("a!", kept.get("a", () -> work("a")));
    }

    @Test
    void whatIsForgottenIsWorkedOutAnewAndGivesItsRoom() {
        Kept<String, String> kept = new Kept<>(4, String::length);
        kept.get("a", () -> work("a"));
        kept.get("b", () -> work("b"));
        kept.forget("a");
        kept.get("c", () -> work("c"));
        kept.get("b", () -> work("b"));
        assertEquals(3, worked.get(), "b and c have room beside each other");
        kept.get("a", () -> work("a"));
        assertEquals(4, worked.get());
    }
}
