package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Costs that no plan can go below, for the items that fit on some stock. Continuous bound: their area must be bought. Dual
 * feasible functions (Fekete and Schepers 2001; Alves, Clautiaux, Valerio de Carvalho and Rietz 2016): sizes are rounded in
 * ways that keep any set fitting on a sheet, so their new area must be bought too. A part that may be turned counts with the
 * smaller of its two areas.
 */
final class Bounds {
    private static final int MOST_FUNCTIONS = 60;

    private final Problem problem;
    private final int[] items;
    private final int[] types;

    Bounds(Problem problem) {
        this.problem = problem;
        this.items =
                IntStream.range(0, problem.items).filter(problem::fitsSomewhere).toArray();
        this.types = IntStream.range(0, problem.stockCost.length)
                .filter(t -> problem.stockCount[t] > 0 && IntStream.of(items).anyMatch(i -> problem.fits(i, t)))
                .toArray();
    }

    /** The best of the bounds. */
    long cost() {
        if (items.length == 0) {
            return 0;
        }
        return Math.max(continuous(), cheapest(sheets()));
    }

    private long continuous() {
        double need = IntStream.of(items).mapToDouble(i -> problem.area[i]).sum();
        List<Integer> byPrice = new ArrayList<>();
        for (int t : types) {
            byPrice.add(t);
        }
        byPrice.sort(Comparator.comparingDouble(t -> problem.stockCost[t] / problem.stockArea(t)));
        double cost = 0;
        for (int t : byPrice) {
            double use = Math.min(problem.stockCount[t], need / problem.stockArea(t));
            cost += use * problem.stockCost[t];
            need -= use * problem.stockArea(t);
        }
        return ceil(cost);
    }

    /** What a number of pieces costs at least. */
    private long cheapest(long pieces) {
        List<Integer> byCost = new ArrayList<>();
        for (int t : types) {
            byCost.add(t);
        }
        byCost.sort(Comparator.comparingLong(t -> problem.stockCost[t]));
        long cost = 0;
        long left = pieces;
        for (int t : byCost) {
            long use = Math.min(left, problem.stockCount[t]);
            cost += use * problem.stockCost[t];
            left -= use;
        }
        return cost;
    }

    /** How many pieces at least, each thought as large as the largest in both directions. */
    private long sheets() {
        long longest =
                IntStream.of(types).mapToLong(t -> problem.stockLength[t]).max().orElse(1);
        long widest =
                IntStream.of(types).mapToLong(t -> problem.stockWidth[t]).max().orElse(1);
        boolean turns = IntStream.of(items).anyMatch(i -> problem.turn[i]);
        double most = 0;
        List<double[][]> alongLength = rounded(longest, turns, true);
        List<double[][]> alongWidth = problem.sticks ? List.<double[][]>of(ones()) : rounded(widest, turns, false);
        for (double[][] f : alongLength) {
            for (double[][] g : alongWidth) {
                most = Math.max(most, total(f, g));
            }
        }
        return ceil(most);
    }

    private double[][] ones() {
        double[] one = new double[items.length];
        Arrays.fill(one, 1);
        return new double[][] {one, one};
    }

    private double total(double[][] f, double[][] g) {
        double sum = 0;
        for (int k = 0; k < items.length; k++) {
            double straight = f[0][k] * g[0][k];
            double across = f[1][k] * g[1][k];
            if (!problem.turn[items[k]] || tooLarge(f[1][k], g[1][k])) {
                sum += straight;
            } else {
                sum += tooLarge(f[0][k], g[0][k]) ? across : Math.min(straight, across);
            }
        }
        return sum;
    }

    private static boolean tooLarge(double f, double g) {
        return Double.isInfinite(f) || Double.isInfinite(g);
    }

    /** Every rounding of one direction: per rounding, the items' sizes as they lie and as they lie when turned. */
    private List<double[][]> rounded(long whole, boolean turns, boolean lengthwise) {
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
        List<double[][]> all = new ArrayList<>();
        for (Rounding rounding : Rounding.all(whole, sizes, MOST_FUNCTIONS)) {
            all.add(new double[][] {rounding.of(straight), rounding.of(across)});
        }
        return all;
    }

    /** Up to the next whole number, but not for the dust of floating point. */
    private static long ceil(double value) {
        return (long) Math.ceil(value - 1e-6 * Math.max(1, Math.abs(value) * 1e-3));
    }
}
