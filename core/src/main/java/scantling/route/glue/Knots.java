package scantling.route.glue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.function.IntFunction;

/** The strongly connected parts of a blocking graph (Tarjan 1972), what blocks before what it blocks. */
final class Knots {
    private final IntFunction<BitSet> blockers;
    private final int[] number;
    private final int[] lowest;
    private final Deque<Integer> open = new ArrayDeque<>();
    private final BitSet isOpen = new BitSet();
    private final List<BitSet> found = new ArrayList<>();
    private int next = 1;

    Knots(BitSet parts, IntFunction<BitSet> blockers) {
        this.blockers = blockers;
        number = new int[parts.length()];
        lowest = new int[parts.length()];
        parts.stream().filter(part -> number[part] == 0).forEach(this::visit);
    }

    private void visit(int part) {
        number[part] = next;
        lowest[part] = next++;
        open.push(part);
        isOpen.set(part);
        blockers.apply(part).stream().forEach(other -> {
            if (number[other] == 0) {
                visit(other);
                lowest[part] = Math.min(lowest[part], lowest[other]);
            } else if (isOpen.get(other)) {
                lowest[part] = Math.min(lowest[part], number[other]);
            }
        });
        if (lowest[part] == number[part]) {
            BitSet knot = new BitSet();
            int last;
            do {
                last = open.pop();
                isOpen.clear(last);
                knot.set(last);
            } while (last != part);
            found.add(knot);
        }
    }

    /** Each knot behind those that are in its way. */
    List<BitSet> inOrder() {
        return List.copyOf(found);
    }
}
