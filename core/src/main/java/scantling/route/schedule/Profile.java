package scantling.route.schedule;

import java.util.Arrays;

/** How much of one capacity is taken up in every tick. */
final class Profile {
    private static final int FIRST = 256;
    private final int amount;
    private int[] taken = new int[FIRST];
    private int end;

    Profile(int amount) {
        this.amount = amount;
    }

    void clear() {
        Arrays.fill(taken, 0, end, 0);
        end = 0;
    }

    /**
     * The last tick in a stretch where so much more does not fit, or behind it as far as it goes on not fitting: nothing can
     * begin before that is over. Minus one when it fits throughout.
     */
    int lastConflict(int from, int to, int more) {
        for (int t = Math.min(to, end) - 1; t >= from; t--) {
            if (taken[t] + more > amount) {
                int last = t;
                while (last + 1 < end && taken[last + 1] + more > amount) {
                    last++;
                }
                return last;
            }
        }
        return -1;
    }

    void take(int from, int to, int more) {
        if (to > taken.length) {
            taken = Arrays.copyOf(taken, Math.max(to, taken.length * 2));
        }
        for (int t = from; t < to; t++) {
            taken[t] += more;
        }
        end = Math.max(end, to);
    }
}
