package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The cheapest mixture of cutting patterns, fractions of a stick allowed: a linear program solved by column generation
 * (Gilmore and Gomory 1961) with a revised simplex that keeps the inverse of its basis, prices steadied (Wentges 1997). Patterns found are kept for the next
 * program over smaller demands.
 */
final class PatternProgram {
    /** Columns smaller than this are nothing but rounding. */
    private static final double TINY = 1e-9;
    /** What would lower the cost by less than this is not worth a pivot. */
    private static final double NO_GAIN = 1e-7;

    /** So little short of a whole number is one. */
    private static final double WHOLE = 1e-6;

    private static final int MOST_PIVOTS = 20_000;
    /** How far prices are drawn towards the trusted ones; tried from 0.5 to 0.9 on the Hard28. */
    private static final double TRUST = 0.8;

    private final PatternSource source;
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
    /** Prices at which no pattern is worth more than it costs, and what they prove of the demand. */
    private final double[] trusted;

    private double trust;

    PatternProgram(PatternSource source, BooleanSupplier stop) {
        this.source = source;
        this.cost = source.cost();
        this.stop = stop;
        this.trusted = source.fair();
    }

    /** Solves for a demand. False when it was stopped before the end. */
    boolean solve(int[] wanted) {
        return solve(wanted, 0);
    }

    /** Solves until the cost is known to be no further from the least than a share of it. False when it was stopped before the end. */
    boolean solve(int[] wanted, double near) {
        this.demand = wanted;
        this.trust = worth(trusted);
        usable.clear();
        pool.stream().filter(pattern -> source.isUsable(pattern, wanted)).forEach(usable::add);
        start();
        for (int pivot = 0; pivot < MOST_PIVOTS; pivot++) {
            reprice();
            Pattern enter = entering();
            if (enter.counts().length == 0 || near > 0 && value() * (1 - near) <= trust) {
                return true;
            }
            if (stop.getAsBoolean() || !pivot(enter)) {
                return false;
            }
        }
        return false;
    }

    /** What the mixture costs. */
    private double value() {
        double value = 0;
        for (int r = 0; r < basis.length; r++) {
            value += amount[r] * basis[r].cost();
        }
        return value;
    }

    /** The patterns that the mixture has at least once, each as often. */
    List<Pattern> whole() {
        List<Pattern> whole = new ArrayList<>();
        for (int r = 0; r < basis.length; r++) {
            if (basis[r].cost() > 0) {
                whole.addAll(Collections.nCopies((int) (amount[r] + WHOLE), basis[r]));
            }
        }
        return whole;
    }

    Pattern[] basis() {
        return basis;
    }

    double[] amounts() {
        return amount;
    }

    /** The prices of the mixture: no pattern known to the program is worth more than it costs. */
    double[] price() {
        return price.clone();
    }

    /** The best prices found, at which no pattern is worth more than it costs. */
    double[] trusted() {
        return trusted.clone();
    }

    /** The patterns met so far that hold no more than wanted and cost at most so much above their parts. */
    List<Pattern> met(int[] wanted, double[] prices, double room) {
        return pool.stream()
                .filter(pattern -> pattern.within(wanted) && pattern.cost() - pattern.worth(prices) <= room + TINY)
                .toList();
    }

    /** A bound from the best prices, whatever their rounding: they are cut to whole numbers and tried exactly. */
    double bound() {
        double scale = 1 << 24;
        double[] whole = new double[trusted.length];
        double sum = 0;
        for (int i = 0; i < whole.length; i++) {
            whole[i] = Math.floor(trusted[i] * scale / highestCost());
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
        Pattern best = new Pattern(0, 0, new int[0]);
        double gain = NO_GAIN;
        for (Pattern pattern : usable) {
            double here = gain(pattern);
            if (here > gain) {
                gain = here;
                best = pattern;
            }
        }
        int least = IntStream.range(0, price.length).reduce(0, (a, b) -> price[b] < price[a] ? b : a);
        if (-price[least] > gain) {
            return tooMany(least);
        }
        return best.counts().length > 0 ? best : fresh(best);
    }

    /** A price below nothing: one more of the kind than wanted would be cheaper. */
    private Pattern tooMany(int kind) {
        int[] counts = new int[price.length];
        counts[kind] = -1;
        return new Pattern(0, 0, counts);
    }

    /**
     * A pattern not seen before. It is looked for at prices between those of the program and the best known ones, which
     * swing less (Wentges 1997), and at the program's own when that finds none.
     */
    private Pattern fresh(Pattern none) {
        Pattern steady = priced(between(trusted, price));
        if (gain(steady) > NO_GAIN) {
            return kept(steady);
        }
        Pattern made = priced(price);
        return gain(made) > NO_GAIN ? kept(made) : none;
    }

    private double gain(Pattern pattern) {
        return pattern.worth(price) - pattern.cost();
    }

    private Pattern kept(Pattern pattern) {
        List<Pattern> made = new ArrayList<>(source.others());
        made.add(pattern);
        pool.addAll(made);
        usable.addAll(made);
        return pattern;
    }

    /** Takes a pattern in, to begin with. */
    void offer(Pattern pattern) {
        pool.add(pattern);
    }

    private static double[] between(double[] trusted, double[] price) {
        double[] prices = new double[price.length];
        Arrays.setAll(prices, i -> TRUST * trusted[i] + (1 - TRUST) * Math.max(0, price[i]));
        return prices;
    }

    /** The pattern worth most above its cost; the prices are remembered when they prove more than those trusted so far. */
    private Pattern priced(double[] prices) {
        double[] value = source.values(prices, demand);
        int type = 0;
        double share = Double.MAX_VALUE;
        for (int t = 0; t < cost.length; t++) {
            type = value[t] - cost[t] > value[type] - cost[type] ? t : type;
            share = value[t] > 0 ? Math.min(share, cost[t] / value[t]) : share;
        }
        double proven = share < Double.MAX_VALUE ? share * worth(prices) : 0;
        if (proven > trust) {
            trust = proven;
            for (int i = 0; i < prices.length; i++) {
                trusted[i] = share * Math.max(0, prices[i]);
            }
        }
        return source.best(prices, demand, type);
    }

    private double worth(double[] prices) {
        double sum = 0;
        for (int i = 0; i < prices.length; i++) {
            sum += Math.max(0, prices[i]) * demand[i];
        }
        return sum;
    }

    private boolean pivot(Pattern enter) {
        int n = source.kinds();
        double[] column = new double[n];
        int leave = -1;
        double least = Double.MAX_VALUE;
        for (int r = 0; r < n; r++) {
            column[r] = enter.worth(inverse[r]);
            if (column[r] > TINY && amount[r] / column[r] < least) {
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
