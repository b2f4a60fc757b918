package scantling.route.schedule;

import java.util.Arrays;
import java.util.List;

/**
 * When there is work: windows of the clock, in ticks. Working time counts only the ticks inside the windows; the work of
 * a day runs on the next morning where it stopped.
 */
public final class WorkTime {
    private static final int ENDLESS = 1 << 28;

    /** Work at every hour. */
    public static final WorkTime ALWAYS = new WorkTime(new int[] {0}, new int[] {ENDLESS}, new int[] {0});

    private final int[] from;
    private final int[] to;
    private final int[] before;
    private final int[] day;

    private WorkTime(int[] from, int[] to, int[] day) {
        this.from = from;
        this.to = to;
        this.day = day;
        before = new int[from.length + 1];
        for (int k = 0; k < from.length; k++) {
            before[k + 1] = before[k] + to[k] - from[k];
        }
    }

    /**
     * A stretch of the clock in which there is work.
     *
     * @param from its first tick
     * @param to the tick after its last
     * @param day the number of the day it lies in
     */
    public record Window(int from, int to, int day) {}

    /**
     * Work in these windows only.
     *
     * @throws IllegalArgumentException if there are none, one is empty, or they are not in order and apart
     */
    public static WorkTime of(List<Window> windows) {
        int last = 0;
        for (Window window : windows) {
            if (window.from() < last || window.to() <= window.from()) {
                throw new IllegalArgumentException("The window (%s) is empty or out of order.".formatted(window));
            }
            last = window.to();
        }
        if (windows.isEmpty()) {
            throw new IllegalArgumentException("There is no working time at all.");
        }
        return new WorkTime(
                windows.stream().mapToInt(Window::from).toArray(),
                windows.stream().mapToInt(Window::to).toArray(),
                windows.stream().mapToInt(Window::day).toArray());
    }

    /** Whether there is work at every hour, so that clock and working time are one. */
    public boolean isAlways() {
        return from.length == 1 && from[0] == 0 && to[0] == ENDLESS;
    }

    int windows() {
        return from.length;
    }

    int from(int window) {
        return from[window];
    }

    int to(int window) {
        return to[window];
    }

    /** Working ticks before a window. */
    int before(int window) {
        return before[window];
    }

    /** All working ticks there are. */
    public int total() {
        return before[from.length];
    }

    /** The number of the day in which a working tick lies. */
    int dayOf(int work) {
        return day[windowOf(work)];
    }

    /** Working ticks that lie before a tick of the clock. */
    public int workAt(int clock) {
        int at = Arrays.binarySearch(from, clock);
        int window = at >= 0 ? at : -at - 2;
        return window < 0 ? 0 : before[window] + Math.min(clock, to[window]) - from[window];
    }

    /** The tick of the clock at which a working tick is begun. */
    public int startOf(int work) {
        int window = windowOf(work);
        return from[window] + work - before[window];
    }

    /** The tick of the clock at which so many working ticks are done. */
    public int endOf(int work) {
        if (work == 0) {
            return from[0];
        }
        return startOf(work - 1) + 1;
    }

    /** The first working tick from one on where so much work fits into one window. */
    int fitting(int work, int length) {
        int window = windowOf(work);
        if (work + length <= before[window + 1]) {
            return work;
        }
        for (int k = window + 1; k < from.length; k++) {
            if (before[k + 1] - before[k] >= length) {
                return before[k];
            }
        }
        throw tooShort(work + length);
    }

    /** The longest stretch without a break. */
    public int longest() {
        int longest = 0;
        for (int k = 0; k < from.length; k++) {
            longest = Math.max(longest, to[k] - from[k]);
        }
        return longest;
    }

    private int windowOf(int work) {
        if (work < 0 || work >= total()) {
            throw tooShort(work);
        }
        int at = Arrays.binarySearch(before, work);
        return at >= 0 ? at : -at - 2;
    }

    private IllegalStateException tooShort(int work) {
        return new IllegalStateException("The calendar holds (%d) ticks of work, not (%d).".formatted(total(), work));
    }
}
