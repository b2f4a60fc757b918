package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The part of a layout that is searched while the rest stays as it is: of many pieces of stock those with the most left over, and
 * some others by chance, so that a step costs no more for many parts than for few (partial optimisation under special
 * intensification conditions: Taillard and Voss 2002).
 */
final class Tail {
    /** So many parts are searched at a time. */
    private static final int PARTS = 140;
    /** Of these, so many lie on the stock with the most left over. */
    private static final int EMPTIEST = 90;

    private final Problem problem;
    private final SplittableRandom random;
    private List<Bin> rest = List.of();

    Tail(Problem problem, SplittableRandom random) {
        this.problem = problem;
        this.random = random;
    }

    /** Chooses what is searched. @param divide false when that is everything */
    void choose(Layout layout, boolean divide) {
        rest = List.of();
        if (divide) {
            List<Bin> bins = new ArrayList<>(layout.bins);
            bins.sort(Comparator.comparingDouble(this::used));
            int parts = 0;
            while (!bins.isEmpty() && parts < PARTS) {
                int at = parts < EMPTIEST ? 0 : random.nextInt(bins.size());
                parts += bins.remove(at).parts.size();
            }
            rest = bins;
        }
    }

    private double used(Bin bin) {
        return bin.parts.stream().mapToDouble(node -> problem.area[node.kind]).sum() / bin.area();
    }

    /** What is searched of a layout that the choice was made from. */
    Layout of(Layout layout) {
        if (rest.isEmpty()) {
            return layout.copy();
        }
        Layout part = new Layout(problem, layout.out);
        layout.bins.stream().filter(bin -> !rest.contains(bin)).forEach(part::take);
        return part;
    }

    /** A part that was searched, with the rest. */
    Layout whole(Layout part) {
        Layout layout = part.copy();
        rest.forEach(layout::take);
        return layout;
    }

    long restCost() {
        return rest.stream().mapToLong(bin -> problem.stockCost[bin.type]).sum();
    }
}
