package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Costs that no plan can go below, for the items that fit on some stock. Continuous bound: their area must be bought. Dual
 * feasible functions (Fekete and Schepers 2001; Alves, Clautiaux, Valerio de Carvalho and Rietz 2016): sizes are rounded in
 * ways that keep any set fitting on a sheet, so their new area must be bought too. A part that may be turned counts with the
 * smaller of its two areas.
 */
final class Bounds {
    private static final int MOST_FUNCTIONS = 60;
    private static final int MOST_ROUNDS = 150;
    /** So many mixtures of stock are asked about, one after the other. */
    private static final int MOST_MIXES = 40;

    private final Problem problem;
    private final int[] items;
    private final int[] types;
    /** The first kind of each stock: the ways to cut up a board with defects are one board. */
    private final int[] heads;

    Bounds(Problem problem) {
        this.problem = problem;
        this.items = problem.fitting();
        this.types = IntStream.range(0, problem.stockCost.length)
                .filter(t -> problem.stockCount[t] > 0 && IntStream.of(items).anyMatch(i -> problem.fits(i, t)))
                .toArray();
        this.heads = IntStream.of(types)
                .filter(t -> IntStream.of(types).noneMatch(u -> u < t && problem.home(u) == problem.home(t)))
                .toArray();
    }

    /** The best of the bounds. */
    long cost() {
        if (items.length == 0) {
            return 0;
        }
        List<Demand> demands = demands();
        double continuous = demands.stream().mapToDouble(this::price).max().orElse(0);
        return Math.max(ceil(continuous), whole(demands).bound());
    }

    /**
     * A better one, for which there must be time: a small job is solved exactly; for a larger one of sheets the cheapest
     * mixture of patterns is worked out, fractions allowed, and what its prices say is added to the demands. The cheapest
     * mixture of stock that meets them is then asked about by itself, and the next one when it cannot do.
     *
     * @param goal a bound as high as this is good enough
     * @param met patterns to begin with, if they count the same kinds of part
     */
    long deeper(long goal, List<Pattern> met, BooleanSupplier stop) {
        if (items.length == 0 || problem.sticks) {
            return 0;
        }
        long small = SmallJob.cost(problem, items, types, stop);
        if (small > 0) {
            return small;
        }
        SheetPatterns patterns = new SheetPatterns(problem, items, types, stop);
        patterns.learn(new FittedRoundings(problem, items, types, stop).demands());
        MixPrices prices = new MixPrices(patterns, known(met, patterns.kinds()));
        prices.solve();
        Mixed mixed = mixed(patterns.demands());
        for (int k = 0; k < MOST_MIXES && isOpen(mixed, goal) && prices.against(mixed.mix()); k++) {
            mixed = mixed(patterns.demands());
        }
        return mixed.bound();
    }

    private boolean isOpen(Mixed mixed, long goal) {
        return types.length > 1 && types.length == heads.length && mixed.mix().length > 0 && mixed.bound() < goal;
    }

    /** Where a sheet holds few parts: what sets of parts can say; to be asked for when there is time. */
    Optional<SetPlans> sets(BooleanSupplier stop) {
        return SetPlans.of(problem, types, stop);
    }

    /**
     * From the cheapest mixture of sets of parts that come out of a sheet, no part oftener than it is wanted.
     *
     * @param met patterns to begin with, if they count the same kinds of part
     */
    long bySets(SetPlans sets, List<Pattern> met) {
        return mixed(sets.demands(types.length < problem.stockCost.length ? List.of() : met))
                .bound();
    }

    /** Patterns of all kinds of stock and of as many kinds of part. */
    private List<Pattern> known(List<Pattern> met, int kinds) {
        return types.length < problem.stockCost.length
                ? List.of()
                : met.stream()
                        .filter(pattern -> pattern.counts().length == kinds)
                        .toList();
    }

    /** The best of the bounds when more is known. */
    private Mixed mixed(List<Demand> more) {
        List<Demand> demands = new ArrayList<>(demands());
        more.forEach(demand -> demands.add(byStock(demand)));
        double continuous = demands.stream().mapToDouble(this::price).max().orElse(0);
        Mixed whole = whole(demands);
        return new Mixed(Math.max(ceil(continuous), whole.bound()), whole.mix());
    }

    /** A bound. @param mix the cheapest stock that meets all demands; none when it is not known */
    private record Mixed(long bound, int[] mix) {}

    /** The cheapest whole numbers of stock that meet all demands: those that it does not meet are added until there are none. */
    private Mixed whole(List<Demand> demands) {
        StockMix mix = new StockMix(
                IntStream.of(heads).mapToLong(t -> problem.stockCost[t]).toArray(),
                IntStream.of(heads).map(t -> problem.stockCount[t]).toArray());
        Demand next = demands.get(0);
        long bound = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            mix.demand(next);
            int[] cheapest = mix.cheapest();
            if (cheapest.length == 0) {
                return new Mixed(bound, cheapest);
            }
            bound = mix.cost(cheapest);
            Demand worst = demands.stream()
                    .max(Comparator.comparingDouble(demand -> demand.need() / Math.max(1e-9, demand.held(cheapest))))
                    .orElseThrow();
            if (StockMix.meets(cheapest, worst)) {
                return new Mixed(bound, cheapest);
            }
            next = worst;
        }
        return new Mixed(bound, new int[0]);
    }

    /** What a demand costs when fractions of stock may be bought. */
    private double price(Demand demand) {
        Integer[] byPrice = new Integer[heads.length];
        Arrays.setAll(byPrice, t -> t);
        Arrays.sort(byPrice, Comparator.comparingDouble(t -> problem.stockCost[heads[t]] / demand.value()[t]));
        double cost = 0;
        double need = demand.need();
        for (int t : byPrice) {
            double use = Math.min(problem.stockCount[heads[t]], need / demand.value()[t]);
            if (use > 0 && demand.value()[t] > 0) {
                cost += use * problem.stockCost[heads[t]];
                need -= use * demand.value()[t];
            }
        }
        return cost;
    }

    /** The area first, then every pair of roundings. */
    private List<Demand> demands() {
        List<Demand> all = new ArrayList<>();
        all.add(new Demand(IntStream.of(items).mapToDouble(i -> problem.area[i]).sum(), areas()));
        boolean turns = IntStream.of(items).anyMatch(i -> problem.turn[i]);
        long longest =
                IntStream.of(types).mapToLong(t -> problem.stockLength[t]).max().orElse(1);
        long widest = Math.max(
                IntStream.of(heads).mapToLong(this::open).max().orElse(1),
                IntStream.of(items).mapToLong(i -> problem.width[i]).max().orElse(1));
        List<Rounded> alongLength = rounded(longest, turns, true);
        List<Rounded> alongWidth =
                problem.sticks ? List.of(new Rounded(ones(), stockOnes())) : rounded(widest, turns, false);
        for (Rounded f : alongLength) {
            for (Rounded g : alongWidth) {
                all.add(f.times(g, problem, items));
            }
        }
        if (IntStream.of(heads).anyMatch(problem::isFlawed)) {
            all.addAll(new ClearSlices(problem, items, heads).demands(MOST_FUNCTIONS));
        }
        return all;
    }

    private double[] areas() {
        return IntStream.of(heads)
                .mapToDouble(t -> problem.isFlawed(t) ? new ClearBoard(problem, t).area() : problem.stockArea(t))
                .toArray();
    }

    /** Of every stock the value of its best way. */
    private double[] best(double[] byType) {
        double[] best = new double[heads.length];
        for (int h = 0; h < heads.length; h++) {
            for (int t = 0; t < types.length; t++) {
                if (problem.home(types[t]) == problem.home(heads[h])) {
                    best[h] = Math.max(best[h], byType[t]);
                }
            }
        }
        return best;
    }

    private Demand byStock(Demand demand) {
        return new Demand(demand.need(), best(demand.value()));
    }

    private double[] stockOnes() {
        double[] one = new double[heads.length];
        Arrays.fill(one, 1);
        return one;
    }

    private double[][] ones() {
        double[] one = new double[items.length];
        Arrays.fill(one, 1);
        return new double[][] {one, one};
    }

    /** Every rounding of one direction: per rounding, the items' sizes as they lie and as they lie when turned. */
    private List<Rounded> rounded(long whole, boolean turns, boolean lengthwise) {
        long[] straight = new long[items.length];
        long[] across = new long[items.length];
        TreeSet<Long> sizes = new TreeSet<>();
        for (int k = 0; k < items.length; k++) {
            straight[k] = lengthwise ? problem.length[items[k]] : problem.width[items[k]];
            across[k] = lengthwise ? problem.width[items[k]] : problem.length[items[k]];
            sizes.add(straight[k]);
            if (turns && problem.turn[items[k]]) {
                sizes.add(across[k]);
            }
        }
        List<Rounded> all = new ArrayList<>();
        for (Rounding rounding : Rounding.all(whole, sizes, MOST_FUNCTIONS)) {
            double[][] rounded = {rounding.of(straight), rounding.of(across)};
            all.add(new Rounded(rounded, stock(rounding, lengthwise)));
        }
        return all;
    }

    /** What each stock holds at most in one direction: of a board with defects the sum of the stretches between them. */
    private double[] stock(Rounding rounding, boolean lengthwise) {
        double[] values = new double[heads.length];
        for (int h = 0; h < heads.length; h++) {
            int type = heads[h];
            long[] sizes = !lengthwise
                    ? new long[] {open(type)}
                    : problem.isFlawed(type)
                            ? new ClearBoard(problem, type)
                                    .stretches().stream().mapToLong(l -> l).toArray()
                            : new long[] {problem.stockLength[type]};
            values[h] = DoubleStream.of(rounding.of(sizes)).sum();
        }
        return values;
    }

    /** How wide anything on a kind of stock can be. */
    private long open(int type) {
        return problem.isFlawed(type) ? new ClearBoard(problem, type).widest() : problem.stockWidth[type];
    }

    /** Up to the next whole number, but not for the dust of floating point. */
    private static long ceil(double value) {
        return (long) Math.ceil(value - 1e-6 * Math.max(1, Math.abs(value) * 1e-3));
    }
}
