package scantling.cutting;

import java.util.List;

/**
 * A saw plan that has passed {@link SawCheck}.
 *
 * @param status how good it is known to be
 * @param cost of all stock used, in the unit of the stock's costs
 * @param lowerBound no plan for the parts that fit can cost less
 * @param used the stock used, with its cuts
 * @param leftOut what is not cut, and why
 */
public record CutPlan(Status status, long cost, long lowerBound, List<CutPiece> used, List<LeftOut> leftOut) {
    public CutPlan {
        used = List.copyOf(used);
        leftOut = List.copyOf(leftOut);
    }

    /** How good a plan is known to be. */
    public enum Status {
        /** Can be cut; a cheaper one may exist. */
        SOUND,
        /** Can be cut, and none can be cheaper: its cost equals the bound. */
        OPTIMAL,
        /** Some parts are not in it. */
        PARTS_LEFT_OUT
    }

    /**
     * Copies of a part that the plan does not hold.
     *
     * @param part which
     * @param count how many copies
     * @param reason in words for the maker
     */
    public record LeftOut(CutPart part, int count, String reason) {}

    /** How far the cost may be above the best possible: (cost - bound) / cost, 0 for a free plan. */
    public double gap() {
        return cost == 0 ? 0 : Math.max(0, cost - lowerBound) / (double) cost;
    }

    /** How many times the fence is moved, piece of stock by piece of stock. */
    public int settings() {
        return used.stream().mapToInt(CutPiece::settings).sum();
    }

    /** How many cuts there are, the trimming ones too. */
    public int cuts() {
        return used.stream().mapToInt(piece -> piece.steps().size()).sum();
    }
}
