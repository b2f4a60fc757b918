package scantling.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Marks of several operations together: one time in ten the sum is below the low one, nine in ten below the high one. A share
 * of the spread is one for all operations of a kind of work, because a standard that is wrong is wrong everywhere; the rest is
 * each operation's own. Distances from the likely minutes to a mark add as standard deviations do.
 */
final class Marks {
    private static final double SHARED = Times.figure("kept with itself");

    private Marks() {}

    static Minutes of(List<Operation> operations) {
        double likely =
                operations.stream().mapToDouble(one -> one.hands().likely()).sum();
        double down = together(operations, one -> one.likely() - one.low());
        double up = together(operations, one -> one.high() - one.likely());
        return new Minutes(Math.max(0, likely - down), likely, likely + up);
    }

    private static double together(List<Operation> operations, ToDoubleFunction<Minutes> distance) {
        Map<String, List<Double>> byWork = new LinkedHashMap<>();
        operations.forEach(operation -> byWork.computeIfAbsent(operation.work(), k -> new ArrayList<>())
                .add(distance.applyAsDouble(operation.hands())));
        double square = 0;
        for (List<Double> distances : byWork.values()) {
            double sum = distances.stream().mapToDouble(one -> one).sum();
            double squares = distances.stream().mapToDouble(one -> one * one).sum();
            square += SHARED * sum * sum + (1 - SHARED) * squares;
        }
        return Math.sqrt(square);
    }
}
