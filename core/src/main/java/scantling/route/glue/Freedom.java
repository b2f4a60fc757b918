package scantling.route.glue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Side;

/**
 * Which part is in the way of which: the directional blocking graphs of a piece (Wilson and Latombe 1994) for its six
 * directions. A part is in the way when the other, moved off in a straight line, would meet its wood, or when a joint between
 * the two does not come apart that way. Parts that no chain of joints connects are not compared.
 */
final class Freedom {
    private final List<Block> whole = new ArrayList<>();
    private final List<List<Block>> wood = new ArrayList<>();
    /** By direction and part: the parts in its way. */
    private final BitSet[][] blockers;

    Freedom(List<Part> parts, List<Meeting> meetings) {
        Map<Integer, List<Meeting>> received = meetings.stream().collect(Collectors.groupingBy(Meeting::receiving));
        for (int i = 0; i < parts.size(); i++) {
            whole.add(Block.of(parts.get(i).box()));
            wood.add(wood(parts.get(i), received.getOrDefault(i, List.of())));
        }
        blockers = new BitSet[Side.values().length][parts.size()];
        for (Side side : Side.values()) {
            for (int i = 0; i < parts.size(); i++) {
                blockers[side.ordinal()][i] = new BitSet();
            }
        }
        Map<List<Integer>, List<Meeting>> joints = meetings.stream()
                .collect(Collectors.groupingBy(meeting -> List.of(
                        Math.min(meeting.entering(), meeting.receiving()),
                        Math.max(meeting.entering(), meeting.receiving()))));
        for (BitSet cluster : Groups.joinedBy(parts.size(), meetings, meeting -> true)) {
            int[] together = cluster.stream().toArray();
            for (int i = 0; i < together.length; i++) {
                for (int j = i + 1; j < together.length; j++) {
                    List<Integer> both = List.of(together[i], together[j]);
                    pair(together[i], together[j], joints.getOrDefault(both, List.of()));
                }
            }
        }
    }

    private static List<Block> wood(Part whole, List<Meeting> received) {
        List<Block> left = List.of(Block.of(whole.box()));
        for (Meeting meeting : received) {
            if (meeting.hollow().isPresent()) {
                Block hollow = meeting.hollow().get();
                left = left.stream()
                        .flatMap(block -> block.without(hollow).stream())
                        .toList();
            }
        }
        return left;
    }

    private void pair(int one, int other, List<Meeting> joints) {
        boolean shaped = joints.stream().allMatch(meeting -> meeting.leaves().isEmpty());
        for (Side side : Side.values()) {
            boolean stopped = joints.stream().anyMatch(meeting -> !leaves(meeting, one, side));
            if (stopped || shaped && meets(one, other, side)) {
                blockers[side.ordinal()][one].set(other);
                blockers[side.opposite().ordinal()][other].set(one);
            }
        }
    }

    private static boolean leaves(Meeting meeting, int one, Side side) {
        return meeting.leaves().isEmpty()
                || meeting.leaves().contains(meeting.entering() == one ? side : side.opposite());
    }

    private boolean meets(int one, int other, Side side) {
        if (!isAhead(whole.get(one), whole.get(other), side)) {
            return false;
        }
        for (Block a : wood.get(one)) {
            for (Block b : wood.get(other)) {
                if (isBehind(a, b, side)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether some of a block moved off toward a side could meet another. */
    private static boolean isAhead(Block moved, Block still, Side side) {
        return sharesPath(moved, still, side.axis()) && still.past(moved, side.opposite()) < -Block.NOTHING;
    }

    /** Whether a block moved off toward a side would meet another; what shares space with it already is no matter of moving. */
    private static boolean isBehind(Block moved, Block still, Side side) {
        return sharesPath(moved, still, side.axis())
                && -still.past(moved, side.opposite()) >= moved.extent(side.axis()) - Block.NOTHING;
    }

    private static boolean sharesPath(Block one, Block other, Axis path) {
        for (int a = 0; a < 3; a++) {
            long shared = Math.min(one.high()[a], other.high()[a]) - Math.max(one.low()[a], other.low()[a]);
            if (a != path.ordinal() && shared <= Block.NOTHING) {
                return false;
            }
        }
        return true;
    }

    /** The parts of a set that are in the way of one of its parts. */
    BitSet inTheWay(int part, Side side, BitSet among) {
        BitSet found = (BitSet) blockers[side.ordinal()][part].clone();
        found.and(among);
        return found;
    }

    /** Whether parts can leave the others of a set toward a side. */
    boolean canLeave(BitSet parts, Side side, BitSet among) {
        BitSet others = (BitSet) among.clone();
        others.andNot(parts);
        return parts.stream().allMatch(part -> inTheWay(part, side, others).isEmpty());
    }

    /**
     * The parts of a set as they come apart along a direction, the first to leave toward its near side first: what cannot be
     * parted along it stays together.
     *
     * @param rigid for every part the parts that are one with it already
     */
    List<BitSet> apart(BitSet parts, Axis axis, List<BitSet> rigid) {
        return new Knots(parts, part -> {
                    BitSet held = inTheWay(part, Side.of(axis, false), parts);
                    held.or(rigid.get(part));
                    held.and(parts);
                    held.clear(part);
                    return held;
                })
                .inOrder();
    }
}
