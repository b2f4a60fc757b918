package scantling.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.HashMap;
import java.util.Map;

/** The processor time that this thread has had, with that of the threads that work for it, which are called after it. */
final class ProcessorTime {
    /** A thread that waits for another asks every 20 ms; one that works asks far more often. */
    private static final long PAUSE = 10_000_000;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final String helper = "aside of " + Thread.currentThread().getName();
    private final long start = threads.getCurrentThreadCpuTime();
    private final Map<Long, Long> helpers = new HashMap<>();
    private long asked = System.nanoTime();

    double seconds() {
        long now = System.nanoTime();
        if (now - asked > PAUSE) {
            lookRound();
        }
        asked = now;
        long sum = threads.getCurrentThreadCpuTime() - start;
        for (long nanos : helpers.values()) {
            sum += nanos;
        }
        return sum / 1e9;
    }

    private void lookRound() {
        for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
            if (thread != null && thread.getThreadName().equals(helper)) {
                long nanos = threads.getThreadCpuTime(thread.getThreadId());
                helpers.merge(thread.getThreadId(), nanos, Math::max);
            }
        }
    }
}
