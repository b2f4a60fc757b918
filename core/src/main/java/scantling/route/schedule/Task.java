package scantling.route.schedule;

import java.util.List;
import java.util.OptionalInt;

/**
 * One stretch of work.
 *
 * @param name what it is
 * @param goal index of the goal it serves
 * @param work ticks of working time it takes
 * @param unbroken whether no break or night may fall into it
 * @param hold ticks by the clock that what it takes up stays taken up after the work
 * @param earliest tick of the clock before which it cannot begin
 * @param pinned tick of the clock at which it has begun already
 * @param uses what it takes up
 */
public record Task(
        String name, int goal, int work, boolean unbroken, int hold, int earliest, OptionalInt pinned, List<Use> uses) {
    /** Takes its own copy and checks that nothing is negative. */
    public Task {
        uses = List.copyOf(uses);
        if (work < 0 || hold < 0 || earliest < 0) {
            throw new IllegalArgumentException(
                    "The work (%d), hold (%d) and beginning (%d) of (%s) must not be negative."
                            .formatted(work, hold, earliest, name));
        }
    }

    /** Work for the first goal that may be broken off and taken up again, at any time. */
    public static Task of(String name, int work, List<Use> uses) {
        return new Task(name, 0, work, false, 0, 0, OptionalInt.empty(), uses);
    }

    /** Its amounts taken up by each capacity while worked on or held. */
    int amountDuring(int capacity) {
        return amount(capacity, true);
    }

    int amountAfter(int capacity) {
        return amount(capacity, false);
    }

    private int amount(int capacity, boolean during) {
        int sum = 0;
        for (Use use : uses) {
            if (use.capacity() == capacity && (during ? use.during() : use.after())) {
                sum += use.amount();
            }
        }
        return sum;
    }
}
