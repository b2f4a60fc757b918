package scantling.route.glue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** A box of wood or of air in plain numbers, tenths of a nanometre, so that thousands can be compared quickly and exactly. */
record Block(long[] low, long[] high) {
    /** Sizes below a hundredth of a millimetre are not wood. */
    static final long NOTHING = 100_000;

    static Block of(Box box) {
        long[] low = new long[3];
        long[] high = new long[3];
        for (Axis axis : Axis.values()) {
            low[axis.ordinal()] = box.plane(Side.of(axis, false)).value().tenthNanometres();
            high[axis.ordinal()] = box.plane(Side.of(axis, true)).value().tenthNanometres();
        }
        return new Block(low, high);
    }

    long plane(Side side) {
        return side.isFar() ? high[side.axis().ordinal()] : low[side.axis().ordinal()];
    }

    Block with(Side side, long plane) {
        long[] newLow = low.clone();
        long[] newHigh = high.clone();
        (side.isFar() ? newHigh : newLow)[side.axis().ordinal()] = plane;
        return new Block(newLow, newHigh);
    }

    long extent(Axis axis) {
        return high[axis.ordinal()] - low[axis.ordinal()];
    }

    /** How far it reaches out past another on a side; negative when it stays inside. */
    long past(Block other, Side side) {
        long further = plane(side) - other.plane(side);
        return side.isFar() ? further : -further;
    }

    Block meet(Block other) {
        long[] newLow = new long[3];
        long[] newHigh = new long[3];
        for (int a = 0; a < 3; a++) {
            newLow[a] = Math.max(low[a], other.low[a]);
            newHigh[a] = Math.min(high[a], other.high[a]);
        }
        return new Block(newLow, newHigh);
    }

    boolean isWood() {
        for (int a = 0; a < 3; a++) {
            if (high[a] - low[a] <= NOTHING) {
                return false;
            }
        }
        return true;
    }

    /** The side on which another lies against it with more than an edge; nothing when they are apart or share space. */
    Optional<Side> touching(Block other) {
        Block shared = meet(other);
        for (Side side : Side.values()) {
            if (Math.abs(plane(side) - other.plane(side.opposite())) <= NOTHING && shared.spans(side.axis())) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }

    private boolean spans(Axis through) {
        for (Axis axis : Axis.values()) {
            if (axis != through && extent(axis) <= NOTHING) {
                return false;
            }
        }
        return true;
    }

    /** The direction in which it reaches farthest. */
    Axis longest() {
        Axis longest = Axis.ACROSS;
        for (Axis axis : Axis.values()) {
            longest = extent(axis) > extent(longest) ? axis : longest;
        }
        return longest;
    }

    /** The smallest block around both. */
    Block around(Block other) {
        long[] newLow = new long[3];
        long[] newHigh = new long[3];
        for (int a = 0; a < 3; a++) {
            newLow[a] = Math.min(low[a], other.low[a]);
            newHigh[a] = Math.max(high[a], other.high[a]);
        }
        return new Block(newLow, newHigh);
    }

    /** Whether another lies in it, but for what is no wood. */
    boolean holds(Block other) {
        for (int a = 0; a < 3; a++) {
            if (other.low[a] < low[a] - NOTHING || other.high[a] > high[a] + NOTHING) {
                return false;
            }
        }
        return true;
    }

    /** The same moved along one direction. */
    Block moved(Axis axis, long by) {
        long[] newLow = low.clone();
        long[] newHigh = high.clone();
        newLow[axis.ordinal()] += by;
        newHigh[axis.ordinal()] += by;
        return new Block(newLow, newHigh);
    }

    /** What is left of it when another is taken out. */
    List<Block> without(Block taken) {
        Block gone = meet(taken);
        if (!gone.isWood()) {
            return List.of(this);
        }
        List<Block> left = new ArrayList<>();
        Block rest = this;
        for (Side side : Side.values()) {
            Block outer = rest.with(side.opposite(), gone.plane(side));
            if (outer.isWood()) {
                left.add(outer);
            }
            rest = rest.with(side, gone.plane(side));
        }
        return left;
    }
}
