package scantling.bench.trust;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Counts what became of inputs: faults, slow ones, the heap that was held. */
public final class Tally {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int MOST_KEPT = 12;
    private static final int MOST_SLOW = 60;
    private static final int SHOWN = 1500;
    private static final double SLOW_SECONDS = 1;
    private static final double NANOS = 1e9;
    private static final long MEGA = 1 << 20;

    private final Map<String, long[]> byKind = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();
    private final List<String> slowOnes = new ArrayList<>();
    private long faulty;
    private long slow;
    private double slowest;
    private String slowestInput = "";
    private long heap;

    /** What is done with one input. */
    public interface Trial {
        /** @return whether it was taken; refusals in words are as good */
        boolean run() throws Exception;
    }

    /** Tries one input and notes what became of it, by the time its own thread worked. Whatever is thrown is a fault. */
    public synchronized void take(String kind, String input, Trial trial) {
        long start = THREADS.getCurrentThreadCpuTime();
        boolean taken = false;
        try {
            taken = trial.run();
        } catch (Exception | StackOverflowError | AssertionError thrown) {
            fault(kind, input, thrown);
        }
        double seconds = (THREADS.getCurrentThreadCpuTime() - start) / NANOS;
        note(kind, input, taken, seconds);
    }

    /** Notes an input that was tried elsewhere. @param seconds it took */
    public synchronized void note(String kind, String input, boolean taken, double seconds) {
        long[] counts = byKind.computeIfAbsent(kind, key -> new long[2]);
        counts[0]++;
        counts[1] += taken ? 1 : 0;
        if (seconds > SLOW_SECONDS) {
            slow++;
            slowOnes.add(String.format(
                    Locale.ROOT, "%.3f s, input %,d, %s", seconds, tried(), shortened(kind + ": " + input)));
        }
        if (seconds > slowest) {
            slowest = seconds;
            slowestInput = shortened(kind + ": " + input);
        }
    }

    /** Notes a fault. */
    public synchronized void fault(String kind, String input, Throwable thrown) {
        StringWriter trace = new StringWriter();
        thrown.printStackTrace(new PrintWriter(trace));
        fault(kind, input, shortened(trace.toString()));
    }

    /** Notes a fault told in words. */
    public synchronized void fault(String kind, String input, String words) {
        faulty++;
        if (faults.size() < MOST_KEPT) {
            faults.add("%s: %s%n%s".formatted(kind, words, shortened(input)));
        }
    }

    private static String shortened(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + " ...";
    }

    /** Looks at how much is held once what is no longer needed is gone. */
    public synchronized void weigh() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        heap = Math.max(heap, (runtime.totalMemory() - runtime.freeMemory()) / MEGA);
    }

    /** How many inputs threw something. */
    public synchronized long faulty() {
        return faulty;
    }

    /** How many took more than a second. */
    public synchronized long slow() {
        return slow;
    }

    /** How many were tried. */
    public synchronized long tried() {
        return byKind.values().stream().mapToLong(counts -> counts[0]).sum();
    }

    /** How many of a kind were taken, neither refused nor failed. */
    public synchronized long taken(String kind) {
        return byKind.getOrDefault(kind, new long[2])[1];
    }

    /** In words. */
    @Override
    public synchronized String toString() {
        StringBuilder text = new StringBuilder();
        byKind.forEach((kind, counts) -> text.append(String.format(
                Locale.ROOT, "%-12s %,9d tried, %,9d taken, the rest refused in words%n", kind, counts[0], counts[1])));
        text.append(String.format(
                Locale.ROOT,
                "%,d inputs: %d faults, %d over a second (slowest %.3f s), heap after each look at most %d MB%n",
                tried(),
                faulty,
                slow,
                slowest,
                heap));
        text.append("slowest: ")
                .append(slowestInput.lines().findFirst().orElse(""))
                .append('\n');
        slowOnes.stream()
                .limit(MOST_SLOW)
                .forEach(each -> text.append("SLOW ").append(each).append('\n'));
        faults.forEach(fault -> text.append("FAULT ").append(fault).append('\n'));
        return text.toString();
    }
}
