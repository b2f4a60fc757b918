package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The cheapest mixture of cutting patterns, fractions of a stick allowed: a linear program solved by column generation
 * (Gilmore and Gomory 1961) with a revised simplex that keeps the inverse of its basis, prices steadied (Wentges 1997). Patterns found are kept for the next
 * program over smaller demands.
 */
final class PatternProgram {
    /** No more than rounding. */
    private static final double TINY = 1e-9;
    /** What would lower the cost by less than this is not worth a pivot. */
    private static final double NO_GAIN = 1e-7;

    private static final int MOST_PIVOTS = 100_000;
    /** How far prices are drawn towards the trusted ones; tried from 0.5 to 0.9 on the Hard28. */
    private static final double TRUST = 0.8;

    private final PatternSource source;
    private final double[] cost;
    private final BooleanSupplier stop;
    private final List<Pattern> pool = new ArrayList<>();
    /** Those of the pool that hold no more than is wanted now. */
    private final List<Pattern> usable = new ArrayList<>();

    private int[] demand = {};
    private Basis basis = new Basis();
    private double[] price = {};
    /** Prices at which no pattern is worth more than it costs, and what they prove of the demand. */
    private double[] trusted;
    /** Such prices for any demand: what is trusted for a small one may be too high for a larger one. */
    private double[] everywhere;

    private double trust;
    /** False while what was offered has not been asked about: then its prices may be better than any trusted ones. */
    private boolean begun = true;

    PatternProgram(PatternSource source, BooleanSupplier stop) {
        this.source = source;
        this.cost = source.cost();
        this.stop = stop;
        this.everywhere = source.fair();
        this.trusted = everywhere.clone();
    }

    /** Solves for a demand. False when it was stopped before the end. */
    boolean solve(int[] wanted) {
        return solve(wanted, 0);
    }

    /** Solves until the cost is known to be no further from the least than a share of it. False when it was stopped before the end. */
    boolean solve(int[] wanted, double near) {
        if (demand.length == 0) {
            boolean solved = solveFor(wanted, near);
            everywhere = trusted.clone();
            return solved;
        }
        if (IntStream.range(0, wanted.length).anyMatch(i -> wanted[i] > demand[i])) {
            trusted = everywhere.clone();
        }
        return solveFor(wanted, near);
    }

    private boolean solveFor(int[] wanted, double near) {
        this.demand = wanted.clone();
        this.trust = worth(trusted);
        usable.clear();
        pool.stream().filter(pattern -> source.isUsable(pattern, wanted)).forEach(usable::add);
        basis = new Basis(source, wanted);
        for (int pivot = 0; pivot < MOST_PIVOTS; pivot++) {
            price = basis.prices();
            Pattern enter = entering();
            if (enter.counts().length == 0 || near > 0 && basis.cost() * (1 - near) <= trust) {
                return true;
            }
            if (stop.getAsBoolean() || !basis.take(enter)) {
                return false;
            }
        }
        return false;
    }

    Pattern[] basis() {
        return basis.patterns();
    }

    /** The patterns that the mixture has at least once, each as often. */
    List<Pattern> whole() {
        return basis.whole();
    }

    double[] amounts() {
        return basis.amounts();
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
        Pattern steady = priced(begun ? between(trusted, price) : price());
        begun = true;
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
        begun = false;
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
}
