package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import scantling.space.Axis;

/** Solids from the farthest to the nearest, so that what is painted later covers what it hides. */
final class PaintOrder {
    private final List<Solid> solids;
    private final Place viewer;
    private final boolean[][] behind;
    private final int[] hidden;
    private final boolean[] taken;

    private PaintOrder(List<Solid> solids, Place viewer) {
        this.solids = solids;
        this.viewer = viewer;
        int count = solids.size();
        behind = new boolean[count][count];
        hidden = new int[count];
        taken = new boolean[count];
        List<Extent> extents = solids.stream().map(Extent::of).toList();
        for (int first = 0; first < count; first++) {
            for (int second = 0; second < count; second++) {
                Extent one = extents.get(first);
                Extent other = extents.get(second);
                behind[first][second] = first != second && one.isParted(other) && !other.isParted(one);
                hidden[second] += behind[first][second] ? 1 : 0;
            }
        }
    }

    /** How far a solid reaches; worked out once, because every solid is held against every other. */
    private record Extent(double right, double left, double front, double back, double top, double bottom) {
        static Extent of(Solid solid) {
            return new Extent(
                    solid.most(Axis.ACROSS),
                    solid.least(Axis.ACROSS),
                    solid.least(Axis.DEEP),
                    solid.most(Axis.DEEP),
                    solid.most(Axis.UP),
                    solid.least(Axis.UP));
        }

        /** Whether a plane parts it from another, with this one away from the viewer. */
        boolean isParted(Extent before) {
            return right <= before.left || front >= before.back || top <= before.bottom;
        }
    }

    /** The order. @param viewer toward whom the picture looks */
    static List<Solid> of(List<Solid> solids, Place viewer) {
        return new PaintOrder(solids, viewer).order();
    }

    private List<Solid> order() {
        List<Solid> order = new ArrayList<>();
        for (int i = 0; i < solids.size(); i++) {
            int next = next();
            taken[next] = true;
            order.add(solids.get(next));
            for (int other = 0; other < solids.size(); other++) {
                hidden[other] -= behind[next][other] ? 1 : 0;
            }
        }
        return order;
    }

    /** The first that nothing left lies behind; where solids hide one another in a ring, the farthest. */
    private int next() {
        return left().filter(solid -> hidden[solid] == 0)
                .findFirst()
                .orElseGet(() -> left().boxed()
                        .min(Comparator.comparingDouble(
                                solid -> solids.get(solid).centre().dot(viewer)))
                        .orElseThrow());
    }

    private IntStream left() {
        return IntStream.range(0, solids.size()).filter(solid -> !taken[solid]);
    }
}
