package scantling.route.glue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import scantling.space.Axis;

/**
 * Finds how a set of parts goes together by taking it apart: along one direction into as many blocks as come apart, each
 * block along another, over all choices of directions; what was found for a set is kept.
 */
final class Solver {
    private final Freedom freedom;
    private final Press press;
    private final double assemblyMinutes;
    private final List<BitSet> rigid;
    private final Map<BitSet, Tree> known = new HashMap<>();

    /** @param assemblyMinutes how long the glue allows @param rigid for every part the parts that are one with it already */
    Solver(Freedom freedom, Press press, double assemblyMinutes, List<BitSet> rigid) {
        this.freedom = freedom;
        this.press = press;
        this.assemblyMinutes = assemblyMinutes;
        this.rigid = rigid;
    }

    Tree solve(BitSet parts) {
        Tree found = known.get(parts);
        if (found == null) {
            found = isOne(parts) ? Tree.leaf(parts) : best(parts);
            known.put(parts, found);
        }
        return found;
    }

    private boolean isOne(BitSet parts) {
        return rigid.get(parts.nextSetBit(0)).equals(parts);
    }

    private Tree best(BitSet parts) {
        Optional<Tree> best = Optional.empty();
        for (Axis axis : Axis.values()) {
            List<BitSet> blocks = freedom.apart(parts, axis, rigid);
            if (blocks.size() > 1) {
                Tree tree = tree(parts, axis, blocks);
                if (best.isEmpty() || tree.cost().compareTo(best.get().cost()) < 0) {
                    best = Optional.of(tree);
                }
            }
        }
        return best.orElseGet(() -> trapped(parts));
    }

    /** Along one direction, in as many goes as the glue allows. */
    private Tree tree(BitSet parts, Axis axis, List<BitSet> blocks) {
        List<Tree> solved = blocks.stream().map(this::solve).toList();
        Tree.Cost cost = solved.stream().map(Tree::cost).reduce(Tree.Cost.NOTHING, Tree.Cost::plus);
        for (Go go : goes(blocks)) {
            cost = cost.plus(cost(go.closing(), axis));
        }
        return new Tree(parts, axis, solved, List.of(), cost);
    }

    private Tree.Cost cost(List<Meeting> closing, Axis axis) {
        boolean glued = !Press.glued(closing).isEmpty();
        return new Tree.Cost(
                0,
                (int) closing.stream().filter(meeting -> meeting.rubs(axis)).count(),
                Press.minutes(closing) > assemblyMinutes ? 1 : 0,
                glued ? 1 : 0,
                press.clamps(closing, axis));
    }

    /** Blocks put together in one go. @param blocks the first may be what an earlier go made @param closing the joints */
    record Go(List<BitSet> blocks, List<Meeting> closing) {}

    /** Blocks from one side to the other, a new go begun where the glue would not stay open for the next block. */
    List<Go> goes(List<BitSet> blocks) {
        List<Go> goes = new ArrayList<>();
        List<BitSet> now = new ArrayList<>(List.of(blocks.get(0)));
        List<Meeting> closing = new ArrayList<>();
        BitSet together = (BitSet) blocks.get(0).clone();
        for (BitSet block : blocks.subList(1, blocks.size())) {
            List<Meeting> more = press.between(together, block);
            double all = Press.minutes(closing) + Press.minutes(more);
            if (!Press.glued(closing).isEmpty() && all > assemblyMinutes) {
                goes.add(new Go(List.copyOf(now), List.copyOf(closing)));
                now = new ArrayList<>(List.of((BitSet) together.clone()));
                closing = new ArrayList<>();
            }
            now.add(block);
            closing.addAll(more);
            together.or(block);
        }
        goes.add(new Go(List.copyOf(now), List.copyOf(closing)));
        return goes;
    }

    /** Nothing comes apart: the part without which the rest does best is the one that is trapped. */
    private Tree trapped(BitSet parts) {
        Optional<Tree> best = Optional.empty();
        int culprit = -1;
        for (int part : parts.stream().toArray()) {
            BitSet rest = (BitSet) parts.clone();
            rest.andNot(rigid.get(part));
            if (rest.isEmpty()) {
                continue;
            }
            boolean parted = isOne(rest);
            for (Axis axis : Axis.values()) {
                parted |= freedom.apart(rest, axis, rigid).size() > 1;
            }
            if (parted) {
                Tree tree = solve(rest);
                if (best.isEmpty() || tree.cost().compareTo(best.get().cost()) < 0) {
                    best = Optional.of(tree);
                    culprit = part;
                }
            }
        }
        int first = culprit < 0 ? parts.nextSetBit(0) : culprit;
        List<Tree> blocks = best.stream().toList();
        Tree.Cost inside = best.map(Tree::cost).orElse(Tree.Cost.NOTHING);
        return new Tree(
                parts,
                Axis.ACROSS,
                blocks,
                List.of(new Tree.Trap(first, parts)),
                inside.plus(new Tree.Cost(1, 0, 0, 0, 0)));
    }
}
