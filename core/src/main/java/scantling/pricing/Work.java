package scantling.pricing;

import java.util.List;
import scantling.finishing.Amount;

/**
 * Hands-on time of a job by class of operation. Whoever knows the work fills it: the route, or the maker's own guess.
 *
 * @param hours each class once
 * @param from who says so: the route, the maker's guess
 */
public record Work(List<Hours> hours, String from) {
    /** Nobody has said anything. */
    public static final Work NONE = new Work(List.of(), "");

    private static final double MINUTES = 60;

    /** Takes its own copy. */
    public Work {
        hours = List.copyOf(hours);
    }

    /**
     * One class.
     *
     * @param operation milling, joinery, glue-up, finishing ...
     * @param minutes hands-on, low, likely and high
     * @param atMachine whether a machine is recovered by it
     */
    public record Hours(String operation, Amount minutes, boolean atMachine) {
        /** In hours. */
        public Amount hours() {
            return minutes.times(1 / MINUTES);
        }
    }

    /** Of all classes together, in hours. */
    public Amount total() {
        return hours.stream().map(Hours::hours).reduce(Amount.ZERO, Amount::plus);
    }
}
