package scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

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
     * @param words why, for the maker; where they name sizes, with a %s for each
     * @param sizes the sizes that the words name
     */
    public record LeftOut(CutPart part, int count, String words, List<Length> sizes) {
        /** Takes its own copy. */
        public LeftOut {
            sizes = List.copyOf(sizes);
        }

        /** A reason that names no size. */
        public LeftOut(CutPart part, int count, String reason) {
            this(part, count, reason, List.of());
        }

        /** Why, in millimetres. */
        public String reason() {
            return told(Length::toString);
        }

        /** Why, in the maker's unit. */
        public String reason(LengthFormat format) {
            return told(format::formatWithUnit);
        }

        private String told(Function<Length, String> written) {
            return sizes.isEmpty()
                    ? words
                    : words.formatted(sizes.stream().map(written).toArray());
        }

        /** The same with one more reason before the others. @param more one that names a size */
        LeftOut because(String more, Length size) {
            List<Length> all = new ArrayList<>(List.of(size));
            all.addAll(sizes);
            return new LeftOut(part, count, more + " " + (sizes.isEmpty() ? words.replace("%", "%%") : words), all);
        }

        /** The same of another part. */
        LeftOut of(CutPart other) {
            return new LeftOut(other, count, words, sizes);
        }
    }

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
