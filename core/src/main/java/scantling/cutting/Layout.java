package scantling.cutting;

import java.util.ArrayList;
import java.util.List;

/** A state of the search: the stock in use, and the items not placed. Copying is shallow; a bin is copied when first changed. */
final class Layout {
    final Problem problem;
    final List<Bin> bins;
    final List<Integer> out;
    final int[] used;
    long cost;

    /** All items out, nothing in use. */
    Layout(Problem problem, List<Integer> items) {
        this(problem, new ArrayList<>(), new ArrayList<>(items), new int[problem.stockCost.length], 0);
    }

    private Layout(Problem problem, List<Bin> bins, List<Integer> out, int[] used, long cost) {
        this.problem = problem;
        this.bins = bins;
        this.out = out;
        this.used = used;
        this.cost = cost;
    }

    Layout copy() {
        return new Layout(problem, new ArrayList<>(bins), new ArrayList<>(out), used.clone(), cost);
    }

    /** The bin at an index, made safe to change in this step. */
    Bin own(int index, long step) {
        Bin bin = bins.get(index);
        if (bin.owner != step) {
            bin = bin.copy(step);
            bins.set(index, bin);
        }
        return bin;
    }

    Bin open(int type, long step) {
        Bin bin = new Bin(type, problem, step);
        bins.add(bin);
        used[type]++;
        cost += problem.stockCost[type];
        return bin;
    }

    /** Takes in a filled piece of stock. */
    Bin take(Bin bin) {
        bins.add(bin);
        used[bin.type]++;
        cost += problem.stockCost[bin.type];
        return bin;
    }

    void closeEmpty() {
        for (int i = bins.size() - 1; i >= 0; i--) {
            Bin bin = bins.get(i);
            if (bin.isEmpty()) {
                bins.remove(i);
                used[bin.type]--;
                cost -= problem.stockCost[bin.type];
            }
        }
    }

    boolean canOpen(int type, long limit) {
        return problem.used(type, used) < problem.stockCount[type] && cost + problem.stockCost[type] <= limit;
    }

    double areaOut() {
        double sum = 0;
        for (int item : out) {
            sum += problem.area[item];
        }
        return sum;
    }

    double concentration() {
        double sum = 0;
        for (Bin bin : bins) {
            sum += bin.concentration();
        }
        return sum;
    }
}
