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
final class PatternProgram {
    private static final double TINY = 1e-9;
    private static final int MOST_PIVOTS = 20_000;

    /** Where patterns come from. */
    interface Source {
        /** How many kinds of part there are. */
        int kinds();

        /** What each kind of stock costs. */
        double[] cost();

        /** The pattern with as many of one kind as the stock that is best for it holds, and no more than wanted. */
        Pattern alone(int kind, int wanted);

        /** What each kind of stock holds at most, in value. */
        double[] values(double[] price, int[] most);

        /** A pattern of that value, right after {@link #values} with the same prices. */
        Pattern best(double[] price, int[] most, int type);
    }

    private final Source source;
    private final double[] cost;
    private final BooleanSupplier stop;
    private final List<Pattern> pool = new ArrayList<>();
    /** Those of the pool that hold no more than is wanted now. */
    private final List<Pattern> usable = new ArrayList<>();

    private int[] demand = {};
    private Pattern[] basis = {};
    private double[][] inverse = {};
    private double[] amount = {};
    private double[] price = {};

    PatternProgram(Source source, BooleanSupplier stop) {
        this.source = source;
        this.cost = source.cost();
        this.stop = stop;
    }

    /** Solves for a demand. False when it was stopped before the end. */
    boolean solve(int[] wanted) {
        this.demand = wanted;
        usable.clear();
        pool.stream().filter(pattern -> pattern.within(wanted)).forEach(usable::add);
        start();
        for (int pivot = 0; pivot < MOST_PIVOTS; pivot++) {
            reprice();
            Pattern enter = entering();
            if (enter.counts().length == 0) {
                return true;
            }
            if (stop.getAsBoolean() || !pivot(enter)) {
                return false;
            }
        }
        return false;
    }

    /** What one more of each kind would cost, by the program as it stands. */
    double[] prices() {
        return price.clone();
    }

    Pattern[] basis() {
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
        double[] best = source.values(whole, demand);
        double ratio = Double.MAX_VALUE;
        for (int t = 0; t < cost.length; t++) {
            if (best[t] > 0) {
                ratio = Math.min(ratio, cost[t] / best[t]);
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

    /** One pattern per kind: as many of it as stock of the best price holds. */
    private void start() {
        int n = source.kinds();
        basis = new Pattern[n];
        inverse = new double[n][n];
        amount = new double[n];
        price = new double[n];
        for (int i = 0; i < n; i++) {
            basis[i] = source.alone(i, Math.max(1, demand[i]));
            int many = basis[i].counts()[i];
            inverse[i][i] = 1.0 / many;
            amount[i] = demand[i] / (double) many;
        }
    }

    private void reprice() {
        int n = source.kinds();
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
    private Pattern entering() {
        for (int i = 0; i < price.length; i++) {
            if (price[i] < -TINY) {
                int[] counts = new int[price.length];
                counts[i] = -1;
                return new Pattern(0, 0, counts);
            }
        }
        Pattern best = new Pattern(0, 0, new int[0]);
        double gain = 1e-7;
        for (Pattern pattern : usable) {
            double here = pattern.worth(price) - pattern.cost();
            if (here > gain) {
                gain = here;
                best = pattern;
            }
        }
        return best.counts().length > 0 ? best : fresh(best);
    }

    private Pattern fresh(Pattern none) {
        double[] value = source.values(price, demand);
        int type = -1;
        double gain = 1e-7;
        for (int t = 0; t < cost.length; t++) {
            if (value[t] - cost[t] > gain) {
                gain = value[t] - cost[t];
                type = t;
            }
        }
        if (type < 0) {
            return none;
        }
        Pattern made = source.best(price, demand, type);
        pool.add(made);
        usable.add(made);
        return made.worth(price) - made.cost() > 1e-8 ? made : none;
    }

    private boolean pivot(Pattern enter) {
        int n = source.kinds();
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

    private void exchange(Pattern enter, double[] column, int leave) {
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
