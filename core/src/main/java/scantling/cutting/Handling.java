package scantling.cutting;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import scantling.measure.Length;

/** What it takes to cut a layout, in fence settings, less what its offcuts are worth: the {@link Wishes} worked out. */
final class Handling {
    /** A little for fewer and larger leftovers below the size worth keeping, so that the search has a slope to follow. */
    private static final double SLOPE = 0.02;

    private final Problem problem;
    private final Wishes wishes;
    private final double whole;
    private final boolean glued;

    Handling(Problem problem) {
        this.problem = problem;
        this.wishes = problem.job.wishes();
        double largest = 1;
        for (int t = 0; t < problem.stockCost.length; t++) {
            largest = Math.max(largest, problem.stockArea(t));
        }
        this.whole = largest;
        this.glued = wishes.together() > 0 && problem.job.parts().stream().anyMatch(CutPart::glued);
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
        return sum + wishes.together() * apart(plan);
    }

    private static long apart(CutPlan plan) {
        Map<CutPart, Set<Integer>> from = new HashMap<>();
        for (CutPiece piece : plan.used()) {
            for (PlacedPart placed : piece.parts()) {
                if (placed.part().glued()) {
                    from.computeIfAbsent(placed.part(), part -> new HashSet<>()).add(piece.number());
                }
            }
        }
        return from.values().stream().mapToLong(Set::size).sum() - from.size();
    }

    private static double area(Length length, Length width) {
        return length.toMillimetres() * (width.isZero() ? 1 : width.toMillimetres());
    }

    double of(Layout layout) {
        double sum = 0;
        for (Bin bin : layout.bins) {
            sum += of(bin);
        }
        return glued ? sum + wishes.together() * apart(layout) : sum;
    }

    /** How many pieces of stock more than one the strips of each glue-up come from. */
    private int apart(Layout layout) {
        int[] seen = new int[problem.job.parts().size()];
        int[] last = new int[seen.length];
        int number = 0;
        for (Bin bin : layout.bins) {
            number++;
            for (Node node : bin.parts) {
                int part = problem.partOf[node.kind];
                if (last[part] != number) {
                    last[part] = number;
                    seen[part]++;
                }
            }
        }
        int apart = 0;
        for (int p = 0; p < seen.length; p++) {
            apart += problem.job.parts().get(p).glued() ? Math.max(0, seen[p] - 1) : 0;
        }
        return apart;
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
