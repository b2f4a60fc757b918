package scantling.cutting;

import java.util.Arrays;
import java.util.List;
import scantling.measure.Length;

/** What it takes to cut a layout, in fence settings, less what its offcuts are worth: the {@link Wishes} worked out. */
final class Handling {
    /** A little for fewer and larger leftovers below the size worth keeping, so that the search has a slope to follow. */
    private static final double SLOPE = 0.02;

    private final Problem problem;
    private final Wishes wishes;
    private final double whole;

    Handling(Problem problem) {
        this.problem = problem;
        this.wishes = problem.job.wishes();
        double largest = 1;
        for (int t = 0; t < problem.stockCost.length; t++) {
            largest = Math.max(largest, problem.stockArea(t));
        }
        this.whole = largest;
    }

    /** What a finished plan takes, by the same weights. */
    static double of(CutJob job, CutPlan plan) {
        Wishes wishes = job.wishes();
        double largest = job.stock().stream()
                .mapToDouble(stock -> area(stock.length(), stock.width()))
                .max()
                .orElse(1);
        double sum = wishes.setting() * plan.settings() + wishes.cut() * plan.cuts();
        for (CutPiece piece : plan.used()) {
            long sizes = piece.parts().stream()
                    .map(placed -> List.of(placed.part().length(), placed.part().width()))
                    .distinct()
                    .count();
            sum += wishes.sizes() * sizes;
            for (CutTree.Offcut offcut : piece.offcuts()) {
                double share = area(offcut.length(), offcut.width()) / largest;
                sum -= wishes.offcut() * share * share;
            }
        }
        return sum;
    }

    private static double area(Length length, Length width) {
        return length.toMillimetres() * (width.isZero() ? 1 : width.toMillimetres());
    }

    double of(Layout layout) {
        double sum = 0;
        for (Bin bin : layout.bins) {
            sum += of(bin);
        }
        return sum;
    }

    private double of(Bin bin) {
        double settings = wishes.setting() * (bin.settings().length + trims());
        double cuts = wishes.cut() * (bin.cuts() + trims());
        double sizes = wishes.sizes() > 0 ? wishes.sizes() * sizes(bin) : 0;
        return settings + cuts + sizes - wishes.offcut() * offcuts(bin) - SLOPE * bin.concentration();
    }

    private double trims() {
        return problem.job.saw().trim().isZero() ? 0 : problem.sticks ? 2 : 4;
    }

    /** Offcuts of stock that was there already were as large before: only what is bought anew, or kept whole, counts. */
    private double offcuts(Bin bin) {
        double sum = 0;
        if (problem.stockCost[bin.type] == 0) {
            for (Node root : bin.roots()) {
                sum -= problem.keeps(root) ? square(root) : 0;
            }
        }
        for (Node left : bin.lefts) {
            if (problem.keeps(left)) {
                sum += square(left);
            }
        }
        return sum;
    }

    private double square(Node node) {
        double share = node.area() / whole;
        return share * share;
    }

    private double sizes(Bin bin) {
        long[] kinds = new long[bin.parts.size()];
        for (int i = 0; i < kinds.length; i++) {
            kinds[i] = problem.kind(bin.parts.get(i).kind);
        }
        return Arrays.stream(kinds).distinct().count();
    }
}
