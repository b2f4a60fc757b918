package scantling.route.glue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import scantling.space.Axis;

/**
 * A way to put a set of parts together, found by taking it apart.
 *
 * @param parts all of them
 * @param along the direction in which its blocks close; of no meaning for one part
 * @param blocks what it comes apart into along that direction, from the near side to the far
 * @param trapped parts that could not be taken apart in any direction
 * @param cost how good it is
 */
record Tree(BitSet parts, Axis along, List<Tree> blocks, List<Trap> trapped, Cost cost) {
    /** Parts that hold one another. @param part the one without which the rest would come apart @param knot all of them */
    record Trap(int part, BitSet knot) {}

    /** Fewest traps, then fewest joints rubbed together instead of pressed, then fewest glue-ups too long for the glue, then fewest glue-ups, then fewest clamps at once. */
    record Cost(int traps, int rubbed, int overlong, int glueUps, int clamps) implements Comparable<Cost> {
        static final Cost NOTHING = new Cost(0, 0, 0, 0, 0);
        private static final Comparator<Cost> ORDER = Comparator.comparingInt(Cost::traps)
                .thenComparingInt(Cost::rubbed)
                .thenComparingInt(Cost::overlong)
                .thenComparingInt(Cost::glueUps)
                .thenComparingInt(Cost::clamps);

        Cost plus(Cost other) {
            return new Cost(
                    traps + other.traps,
                    rubbed + other.rubbed,
                    overlong + other.overlong,
                    glueUps + other.glueUps,
                    Math.max(clamps, other.clamps));
        }

        @Override
        public int compareTo(Cost other) {
            return ORDER.compare(this, other);
        }
    }

    static Tree leaf(BitSet part) {
        return new Tree(part, Axis.ACROSS, List.of(), List.of(), Cost.NOTHING);
    }

    List<Trap> allTraps() {
        List<Trap> all = new ArrayList<>(trapped);
        blocks.forEach(block -> all.addAll(block.allTraps()));
        return all;
    }
}
