package scantling.cutting;

import java.util.Arrays;
import java.util.List;

/** Patterns that are known already: no new ones are looked for. */
final class PooledPatterns implements PatternSource {
    private final double[] cost;
    private final List<Pattern> plan;
    private final double[] fair;

    /** @param plan patterns that hold every part */
    PooledPatterns(Problem problem, List<List<Integer>> items, List<Pattern> plan) {
        this.cost = Arrays.stream(problem.stockCost).mapToDouble(c -> c).toArray();
        this.plan = plan;
        this.fair = new double[items.size()];
    }

    @Override
    public int kinds() {
        return fair.length;
    }

    @Override
    public double[] cost() {
        return cost.clone();
    }

    @Override
    public double[] fair() {
        return fair.clone();
    }

    /** One of the kind alone, on the stock on which a plan has it. */
    @Override
    public Pattern alone(int kind, int wanted) {
        int[] counts = new int[fair.length];
        counts[kind] = 1;
        Pattern holds = plan.stream()
                .filter(pattern -> pattern.counts()[kind] > 0)
                .findFirst()
                .orElseThrow();
        return new Pattern(holds.type(), holds.cost(), counts);
    }

    @Override
    public double[] values(double[] price, int[] most) {
        double[] values = new double[cost.length];
        Arrays.fill(values, Double.POSITIVE_INFINITY);
        return values;
    }

    @Override
    public Pattern best(double[] price, int[] most, int type) {
        return new Pattern(type, cost[type], new int[fair.length]);
    }
}
