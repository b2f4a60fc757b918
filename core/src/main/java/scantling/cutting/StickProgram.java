package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The cheapest mixture of cutting patterns, fractions of a stick allowed: a linear program solved by column generation
 * (Gilmore and Gomory 1961) with a revised simplex that keeps the inverse of its basis. Patterns found are kept for the next
 * program over smaller demands.
 */
final class StickProgram {
    private static final double TINY = 1e-9;
    private static final int MOST_PIVOTS = 20_000;

    private final long[] size;
    private final int[] capacity;
    private final double[] cost;
    private final StickKnapsack knapsack;
    private final BooleanSupplier stop;
    private final List<StickPattern> pool = new ArrayList<>();

    private int[] demand = {};
    private StickPattern[] basis = {};
    private double[][] inverse = {};
    private double[] amount = {};
    private double[] price = {};

    StickProgram(long[] size, int[] capacity, double[] cost, BooleanSupplier stop) {
        this.size = size;
        this.capacity = capacity;
        this.cost = cost;
        this.stop = stop;
        int longest = 0;
        for (int c : capacity) {
            longest = Math.max(longest, c);
        }
        this.knapsack = new StickKnapsack(size, longest);
    }

    /** Solves for a demand. False when it was stopped before the end. */
    boolean solve(int[] wanted) {
        this.demand = wanted;
        start();
        for (int pivot = 0; pivot < MOST_PIVOTS; pivot++) {
            prices();
            StickPattern enter = entering();
            if (enter.counts().length == 0) {
                return true;
            }
            if (stop.getAsBoolean() || !pivot(enter)) {
                return false;
            }
        }
        return false;
    }

    StickPattern[] basis() {
        return basis;
    }

    double[] amounts() {
        return amount;
    }

    /** A bound from the prices of any solution, whatever its rounding: prices are cut to whole numbers and tried exactly. */
    double bound() {
        double scale = 1 << 24;
        double[] whole = new double[price.length];
        double sum = 0;
        for (int i = 0; i < price.length; i++) {
            whole[i] = Math.floor(Math.max(0, price[i]) * scale / highestCost());
            sum += whole[i] * demand[i];
        }
        double[] best = knapsack.values(whole, demand);
        double ratio = Double.MAX_VALUE;
        for (int t = 0; t < cost.length; t++) {
            if (best[capacity[t]] > 0) {
                ratio = Math.min(ratio, cost[t] / best[capacity[t]]);
            }
        }
        return sum == 0 ? 0 : sum * ratio;
    }

    private double highestCost() {
        double highest = 1;
        for (double c : cost) {
            highest = Math.max(highest, c);
        }
        return highest;
    }

    /** One pattern per size: as many of it as a stick of the best price holds. */
    private void start() {
        int n = size.length;
        basis = new StickPattern[n];
        inverse = new double[n][n];
        amount = new double[n];
        price = new double[n];
        for (int i = 0; i < n; i++) {
            int type = cheapestFor(i);
            int many = (int) Math.max(1, Math.min(capacity[type] / size[i], Math.max(1, demand[i])));
            int[] counts = new int[n];
            counts[i] = many;
            basis[i] = new StickPattern(type, cost[type], counts);
            inverse[i][i] = 1.0 / many;
            amount[i] = demand[i] / (double) many;
        }
    }

    private int cheapestFor(int i) {
        int best = -1;
        double least = 0;
        for (int t = 0; t < cost.length; t++) {
            long many = Math.min(capacity[t] / size[i], Math.max(1, demand[i]));
            if (many > 0 && (best < 0 || cost[t] / many < least)) {
                best = t;
                least = cost[t] / many;
            }
        }
        return best;
    }

    private void prices() {
        int n = size.length;
        Arrays.fill(price, 0);
        for (int r = 0; r < n; r++) {
            double c = basis[r].cost();
            if (c != 0) {
                for (int i = 0; i < n; i++) {
                    price[i] += c * inverse[r][i];
                }
            }
        }
    }

    /** A pattern that would lower the cost, or one of no sizes when there is none. */
    private StickPattern entering() {
        for (int i = 0; i < price.length; i++) {
            if (price[i] < -TINY) {
                int[] counts = new int[price.length];
                counts[i] = -1;
                return new StickPattern(0, 0, counts);
            }
        }
        StickPattern best = new StickPattern(0, 0, new int[0]);
        double gain = 1e-7;
        for (StickPattern pattern : pool) {
            double here = pattern.worth(price) - pattern.cost();
            if (here > gain && pattern.within(demand)) {
                gain = here;
                best = pattern;
            }
        }
        return best.counts().length > 0 ? best : fresh(best);
    }

    private StickPattern fresh(StickPattern none) {
        double[] value = knapsack.values(price, demand);
        int type = -1;
        double gain = 1e-7;
        for (int t = 0; t < cost.length; t++) {
            if (value[capacity[t]] - cost[t] > gain) {
                gain = value[capacity[t]] - cost[t];
                type = t;
            }
        }
        if (type < 0) {
            return none;
        }
        StickPattern made = new StickPattern(type, cost[type], knapsack.pick(price, demand, capacity[type]));
        pool.add(made);
        return made.worth(price) - made.cost() > 1e-8 ? made : none;
    }

    private boolean pivot(StickPattern enter) {
        int n = size.length;
        double[] column = new double[n];
        int leave = -1;
        double least = Double.MAX_VALUE;
        for (int r = 0; r < n; r++) {
            column[r] = enter.worth(inverse[r]);
            if (column[r] > 1e-7 && amount[r] / column[r] < least) {
                least = amount[r] / column[r];
                leave = r;
            }
        }
        if (leave < 0) {
            return false;
        }
        exchange(enter, column, leave);
        return true;
    }

    private void exchange(StickPattern enter, double[] column, int leave) {
        double[] row = inverse[leave];
        double by = column[leave];
        for (int i = 0; i < row.length; i++) {
            row[i] /= by;
        }
        amount[leave] = Math.max(0, amount[leave] / by);
        for (int r = 0; r < row.length; r++) {
            double factor = column[r];
            if (r != leave && factor != 0) {
                double[] other = inverse[r];
                for (int i = 0; i < row.length; i++) {
                    other[i] -= factor * row[i];
                }
                amount[r] = Math.max(0, amount[r] - factor * amount[leave]);
            }
        }
        basis[leave] = enter;
    }
}
