package scantling.checks.lasting;

import java.util.OptionalDouble;
import java.util.function.DoublePredicate;

/** Finds where something begins or ceases to hold, by halving. */
final class Solve {
    private static final int HALVINGS = 40;

    private Solve() {}

    /** The least number from low to high at which it holds, when it holds from there on; empty when it holds nowhere. */
    static OptionalDouble least(DoublePredicate holds, double low, double high) {
        if (!holds.test(high)) {
            return OptionalDouble.empty();
        }
        if (holds.test(low)) {
            return OptionalDouble.of(low);
        }
        double fails = low;
        double passes = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (fails + passes) / 2;
            if (holds.test(middle)) {
                passes = middle;
            } else {
                fails = middle;
            }
        }
        return OptionalDouble.of(passes);
    }

    /** The greatest number from low to high up to which it holds; empty when it does not hold at low. */
    static OptionalDouble greatest(DoublePredicate holds, double low, double high) {
        OptionalDouble mirrored = least(number -> holds.test(-number), -high, -low);
        return mirrored.isPresent() ? OptionalDouble.of(-mirrored.getAsDouble()) : mirrored;
    }
}
