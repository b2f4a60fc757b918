package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Patterns for sheets, every size as often as one likes, measured in cells as fine as there is time for. Every valuing of the
 * parts that it is asked about is kept as a {@link Demand}.
 */
final class SheetPatterns implements PatternProgram.Source {
    /** Operations that one table may take: a few hundredths of a second. */
    private static final long MOST_WORK = 40_000_000;

    private static final int[] FINENESS = {
        6000, 4000, 3000, 2400, 2000, 1600, 1200, 1000, 800, 600, 500, 400, 320, 250, 200
    };

    private final Problem problem;
    private final int[] types;
    private final int[] sample;
    private final int[] wanted;
    private final double[] cost;
    private final List<Demand> demands = new ArrayList<>();

    private long cell;
    private SheetKnapsack knapsack;

    SheetPatterns(Problem problem, int[] items, int[] types) {
        this.problem = problem;
        this.types = types;
        PartKinds kinds = new PartKinds(problem, items);
        this.sample = kinds.samples();
        this.wanted = kinds.wanted();
        this.cost = IntStream.of(types)
                .mapToDouble(t -> Math.max(1, problem.stockCost[t]))
                .toArray();
        this.knapsack = finest();
    }

    private SheetKnapsack finest() {
        long longest =
                IntStream.of(types).mapToLong(t -> problem.stockLength[t]).max().orElse(1);
        long widest =
                IntStream.of(types).mapToLong(t -> problem.stockWidth[t]).max().orElse(1);
        SheetKnapsack made = null;
        for (int cells : FINENESS) {
            cell = (Math.max(longest, widest) + cells - 1) / cells;
            made = new SheetKnapsack(
                    IntStream.of(sample).map(i -> cells(problem.length[i])).toArray(),
                    IntStream.of(sample).map(i -> cells(problem.width[i])).toArray(),
                    turns(),
                    cells(longest),
                    cells(widest));
            if (made.work() <= MOST_WORK) {
                return made;
            }
        }
        throw new IllegalStateException("No table is small enough for (%s).".formatted(made));
    }

    private boolean[] turns() {
        boolean[] turns = new boolean[sample.length];
        for (int k = 0; k < turns.length; k++) {
            turns[k] = problem.turn[sample[k]];
        }
        return turns;
    }

    private int cells(long size) {
        return (int) (size / cell);
    }

    /** How many operations one table takes. */
    long work() {
        return knapsack.work();
    }

    int[] wanted() {
        return wanted.clone();
    }

    /** What has been learnt so far. */
    List<Demand> demands() {
        return List.copyOf(demands);
    }

    @Override
    public int kinds() {
        return sample.length;
    }

    @Override
    public double[] cost() {
        return cost.clone();
    }

    @Override
    public double[] fair() {
        double[] fair = new double[sample.length];
        for (int k = 0; k < fair.length; k++) {
            fair[k] = Double.MAX_VALUE;
            for (int t = 0; t < types.length; t++) {
                fair[k] = Math.min(fair[k], cost[t] * problem.area[sample[k]] / problem.stockArea(types[t]));
            }
        }
        return fair;
    }

    @Override
    public Pattern alone(int kind, int most) {
        int best = -1;
        double least = 0;
        int many = 0;
        for (int t = 0; t < types.length; t++) {
            int here = Math.min(most, rows(sample[kind], types[t]));
            if (here > 0 && (best < 0 || cost[t] / here < least)) {
                best = t;
                least = cost[t] / here;
                many = here;
            }
        }
        int[] counts = new int[sample.length];
        counts[kind] = many;
        return new Pattern(best, cost[best], counts);
    }

    private int rows(int item, int type) {
        long straight =
                (problem.stockLength[type] / problem.length[item]) * (problem.stockWidth[type] / problem.width[item]);
        long across = problem.turn[item]
                ? (problem.stockLength[type] / problem.width[item]) * (problem.stockWidth[type] / problem.length[item])
                : 0;
        return (int) Math.max(straight, across);
    }

    @Override
    public double[] values(double[] price, int[] most) {
        double[] usable = Arrays.stream(price).map(p -> Math.max(0, p)).toArray();
        knapsack.solve(usable);
        double[] values = new double[types.length];
        Arrays.setAll(
                values, t -> knapsack.value(cells(problem.stockLength[types[t]]), cells(problem.stockWidth[types[t]])));
        double need = 0;
        for (int k = 0; k < usable.length; k++) {
            need += usable[k] * wanted[k];
        }
        demands.add(new Demand(need, values));
        return values;
    }

    @Override
    public Pattern best(double[] price, int[] most, int type) {
        double[] usable = Arrays.stream(price).map(p -> Math.max(0, p)).toArray();
        int[] counts = knapsack.counts(
                usable, cells(problem.stockLength[types[type]]), cells(problem.stockWidth[types[type]]));
        return new Pattern(type, cost[type], counts);
    }
}
