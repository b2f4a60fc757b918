package scantling.cutting;

import java.util.Arrays;

/** Patterns for sticks: sets of lengths, each at most as often as wanted. */
final class StickPatterns implements PatternSource {
    private final long[] size;
    private final int[] capacity;
    private final double[] cost;
    private final StickKnapsack knapsack;

    StickPatterns(Problem problem, long[] size) {
        this.size = size;
        this.capacity =
                Arrays.stream(problem.stockLength).mapToInt(l -> (int) l).toArray();
        this.cost = Arrays.stream(problem.stockCost).mapToDouble(c -> c).toArray();
        this.knapsack = new StickKnapsack(size, capacity);
    }

    @Override
    public int kinds() {
        return size.length;
    }

    @Override
    public double[] cost() {
        return cost.clone();
    }

    @Override
    public double[] fair() {
        double[] fair = new double[size.length];
        for (int i = 0; i < fair.length; i++) {
            fair[i] = Double.MAX_VALUE;
            for (int t = 0; t < cost.length; t++) {
                fair[i] = Math.min(fair[i], cost[t] * size[i] / capacity[t]);
            }
        }
        return fair;
    }

    @Override
    public Pattern alone(int kind, int wanted) {
        int best = -1;
        double least = 0;
        for (int t = 0; t < cost.length; t++) {
            long many = Math.min(capacity[t] / size[kind], wanted);
            if (many > 0 && (best < 0 || cost[t] / many < least)) {
                best = t;
                least = cost[t] / many;
            }
        }
        int[] counts = new int[size.length];
        counts[kind] = (int) Math.min(capacity[best] / size[kind], wanted);
        return new Pattern(best, cost[best], counts);
    }

    @Override
    public double[] values(double[] price, int[] most) {
        return knapsack.values(price, most);
    }

    @Override
    public Pattern best(double[] price, int[] most, int type) {
        return new Pattern(type, cost[type], knapsack.pick(capacity[type]));
    }
}
