package scantling.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.HashMap;
import java.util.Map;

/**
 * The processor time that this thread has had, with that of the threads that work for it, which are called after it, as long as
 * it waits for them: what a clock would say if nothing else were done on a machine of two processors.
 */
final class ProcessorTime {
    /** A thread that waits for another asks every 20 ms; one that works asks far more often. */
    private static final long PAUSE = 10_000_000;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final String helper = "aside of " + Thread.currentThread().getName();
    private final long start = threads.getCurrentThreadCpuTime();
    private final Map<Long, Long> helpers = new HashMap<>();
    private long waited;
    private long asked = System.nanoTime();

    double seconds() {
        long now = System.nanoTime();
        if (now - asked > PAUSE) {
            waited += Math.min(now - asked, helped());
        }
        asked = now;
        return (threads.getCurrentThreadCpuTime() - start + waited) / 1e9;
    }

    /** What other threads have done for this one since it was last looked. */
    private long helped() {
        long sum = 0;
        for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
            if (thread != null && thread.getThreadName().equals(helper)) {
                long nanos = threads.getThreadCpuTime(thread.getThreadId());
                long before = Math.max(0, helpers.getOrDefault(thread.getThreadId(), 0L));
                helpers.put(thread.getThreadId(), nanos);
                sum += nanos - before;
            }
        }
        return sum;
    }
}
