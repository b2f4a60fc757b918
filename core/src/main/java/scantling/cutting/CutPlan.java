package scantling.cutting;

import java.util.List;
import java.util.Optional;

/**
 * A saw plan that has passed {@link SawCheck}.
 *
 * @param status how good it is known to be
 * @param cost of all stock used, in the unit of the stock's costs
 * @param lowerBound no plan for the parts that fit can cost less
 * @param used the stock used, with its cuts
 * @param leftOut what is not cut, and why
 * @param byMoney what it took to cut the first plan found of this cost, before anything but money was looked at
 */
public record CutPlan(
        Status status,
        long cost,
        long lowerBound,
        List<CutPiece> used,
        List<LeftOut> leftOut,
        Optional<Handled> byMoney) {
    public CutPlan {
        used = List.copyOf(used);
        leftOut = List.copyOf(leftOut);
    }

    /** A plan with nothing to compare with. */
    public CutPlan(Status status, long cost, long lowerBound, List<CutPiece> used, List<LeftOut> leftOut) {
        this(status, cost, lowerBound, used, leftOut, Optional.empty());
    }

    /** What it takes to cut a plan. @param settings how many times the fence is moved @param cuts how many cuts there are */
    public record Handled(int settings, int cuts) {
        static Handled of(List<CutPiece> pieces) {
            return new Handled(
                    pieces.stream().mapToInt(CutPiece::settings).sum(),
                    pieces.stream().mapToInt(piece -> piece.steps().size()).sum());
        }
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
