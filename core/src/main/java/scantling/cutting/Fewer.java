package scantling.cutting;

import java.util.SplittableRandom;

/** Takes stock out of use until what is left costs no more than it may; the parts on it are out then. */
final class Fewer {
    /** How much of the stock is filled anew to begin elsewhere. */
    private static final double SHAKE = 0.5;

    private final Problem problem;
    private final SplittableRandom random;
    private final Recreate recreate;

    Fewer(Problem problem, SplittableRandom random, Recreate recreate) {
        this.problem = problem;
        this.random = random;
        this.recreate = recreate;
    }

    /** Takes stock out of use, that with the least on it first, until the cost is within the limit. */
    void lower(Layout layout, long limit, long step) {
        while (layout.cost > limit) {
            int least = 0;
            for (int i = 1; i < layout.bins.size(); i++) {
                if (spare(layout, i) > spare(layout, least)) {
                    least = i;
                }
            }
            Bin bin = layout.own(least, step);
            bin.empty(layout.out);
            layout.closeEmpty();
        }
    }

    /** The best layout with stock taken out of use by chance until its cost is within the limit, and more of it filled anew. */
    Layout shaken(Layout best, long limit, long step) {
        Layout layout = best.copy();
        int anew = (int) (layout.bins.size() * SHAKE);
        while (!layout.bins.isEmpty() && (layout.cost > limit || anew-- > 0)) {
            Bin bin = layout.own(random.nextInt(layout.bins.size()), step);
            bin.empty(layout.out);
            layout.closeEmpty();
        }
        recreate.fill(layout, Orders.shuffled(problem, random, layout.out), limit, step);
        return layout;
    }

    private static double spare(Layout layout, int index) {
        return layout.problem.stockCost[layout.bins.get(index).type] == 0
                ? -1
                : layout.bins.get(index).concentration();
    }
}
