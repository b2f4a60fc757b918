package scantling.route.glue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Ledger;
import scantling.space.Axis;
import scantling.space.Side;

/** Writes a tree of taking apart as the sessions of putting together. */
final class Writer {
    private final List<String> paths;
    private final Press press;
    private final List<BitSet> bodies;
    private final Map<String, Integer> named = new HashMap<>();
    private List<Session> sessions = new ArrayList<>();

    Writer(Assembly assembly, Press press, List<BitSet> bodies) {
        paths = assembly.parts().stream().map(Part::path).toList();
        this.press = press;
        this.bodies = bodies;
    }

    /** The sessions that make one tree, in order. */
    List<Session> write(Tree tree, Solver solver) {
        sessions = new ArrayList<>();
        List<Closing> dry = new ArrayList<>();
        visit(tree, solver, dry);
        if (!dry.isEmpty()) {
            sessions.add(session(tree.parts(), dry, List.of(), tree.along()));
        }
        return sessions;
    }

    /** What is put together without glue waits, and is put together at the beginning of the session it goes into. */
    private void visit(Tree tree, Solver solver, List<Closing> dry) {
        if (!tree.trapped().isEmpty()) {
            tree.blocks().forEach(block -> visit(block, solver, dry));
            return;
        }
        for (Tree block : tree.blocks()) {
            visit(block, solver, dry);
        }
        if (tree.blocks().isEmpty()) {
            return;
        }
        for (Solver.Go go : solver.goes(tree.blocks().stream().map(Tree::parts).toList())) {
            List<Closing> closings = closings(go, tree.along());
            if (Press.glued(go.closing()).isEmpty()) {
                dry.addAll(closings);
            } else {
                List<Closing> all = new ArrayList<>(dry);
                all.addAll(closings);
                dry.clear();
                sessions.add(session(together(go), all, go.closing(), tree.along()));
            }
        }
    }

    private static BitSet together(Solver.Go go) {
        BitSet all = new BitSet();
        go.blocks().forEach(all::or);
        return all;
    }

    private List<Closing> closings(Solver.Go go, Axis along) {
        List<Closing> closings = new ArrayList<>();
        BitSet standing = (BitSet) go.blocks().get(0).clone();
        for (BitSet block : go.blocks().subList(1, go.blocks().size())) {
            List<String> joints = press.between(standing, block).stream()
                    .map(meeting -> meeting.joint().path())
                    .toList();
            closings.add(new Closing(names(block), names(standing), Side.of(along, false), joints));
            standing.or(block);
        }
        return closings;
    }

    private List<String> names(BitSet some) {
        return some.stream().mapToObj(paths::get).toList();
    }

    private Session session(BitSet parts, List<Closing> closings, List<Meeting> closing, Axis along) {
        return new Session(
                unique(name(parts)),
                new TreeSet<>(names(parts)),
                closings,
                along,
                Press.glued(closing).stream()
                        .map(meeting -> meeting.joint().path())
                        .toList(),
                Press.minutes(closing),
                press.clamps(closing, along),
                press.clampLength(parts, along),
                press.wantsCauls(closing, along),
                Press.square(closing));
    }

    private String unique(String name) {
        int count = named.merge(name, 1, Integer::sum);
        return count == 1 ? name : "%s, step %d".formatted(name, count);
    }

    /** What the names of its parts have in common; what has nothing in common is the body, or told by two of its parts. */
    private String name(BitSet parts) {
        List<String> names = names(parts);
        List<String> common = Ledger.names(names.get(0));
        for (String name : names) {
            List<String> words = Ledger.names(name);
            int same = 0;
            while (same < Math.min(common.size(), words.size())
                    && common.get(same).equals(words.get(same))) {
                same++;
            }
            common = common.subList(0, same);
        }
        if (!common.isEmpty()) {
            return String.join(Ledger.SEPARATOR, common);
        }
        return isLargest(parts) || names.size() > 3 ? "body" : names.get(0) + " and " + names.get(1);
    }

    private boolean isLargest(BitSet parts) {
        return bodies.stream().allMatch(body -> body.cardinality() <= parts.cardinality());
    }
}
