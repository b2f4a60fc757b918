package scantling.cutting;

import java.util.Arrays;

/** Whether a layout is taken up: when it is no worse than the last one, or than the one of so many steps ago (Burke and Bykov 2017). */
final class LateAcceptance {
    private final double[] memory;
    private double value;
    private double least;
    private long since;

    LateAcceptance(int memory) {
        this.memory = new double[memory];
    }

    /** Begins with a layout of a value. */
    void begin(double first, long step) {
        value = first;
        least = first;
        since = step;
        Arrays.fill(memory, first);
    }

    /** How many steps ago the least value was found. */
    long idle(long step) {
        return step - since;
    }

    /** The value of the layout taken up last. */
    double value() {
        return value;
    }

    /** Whether a layout of a value is taken up in a step. */
    boolean takes(double next, long step) {
        int at = (int) (step % memory.length);
        boolean taken = next <= value || next <= memory[at];
        value = taken ? next : value;
        memory[at] = Math.min(memory[at], value);
        if (value < least) {
            least = value;
            since = step + 1;
        }
        return taken;
    }
}
