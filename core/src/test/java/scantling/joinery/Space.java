package scantling.joinery;

import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Low and high along the three directions, in plain millimetres. */
record Space(double[] low, double[] high) {
    double size(int axis) {
        return high[axis] - low[axis];
    }

    double middle(int axis) {
        return (high[axis] + low[axis]) / 2;
    }

    static Space of(Feature feature, Part part) {
        double[] low = new double[3];
        double[] high = new double[3];
        lay(low, high, part, part.lie().nearEnd(), feature.along());
        lay(low, high, part, part.lie().faceEdge(), feature.across());
        lay(low, high, part, part.lie().faceSide(), feature.through());
        return new Space(low, high);
    }

    private static void lay(double[] low, double[] high, Part part, Side mark, Range range) {
        double plane = part.box().plane(mark).value().toMillimetres();
        double from = range.from().value().toMillimetres();
        double to = range.to().value().toMillimetres();
        int axis = mark.axis().ordinal();
        low[axis] = mark.isFar() ? plane - to : plane + from;
        high[axis] = mark.isFar() ? plane - from : plane + to;
    }

    static Space of(Box box) {
        double[] low = new double[3];
        double[] high = new double[3];
        for (Axis axis : Axis.values()) {
            low[axis.ordinal()] = box.plane(Side.of(axis, false)).value().toMillimetres();
            high[axis.ordinal()] = box.plane(Side.of(axis, true)).value().toMillimetres();
        }
        return new Space(low, high);
    }

    /** Whether another lies in it. */
    boolean holds(Space inner) {
        for (int axis = 0; axis < 3; axis++) {
            if (inner.low()[axis] < low[axis] - Mates.TOLERANCE
                    || inner.high()[axis] > high[axis] + Mates.TOLERANCE
                    || inner.size(axis) <= 0) {
                return false;
            }
        }
        return true;
    }
}
