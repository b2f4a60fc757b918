package scantling.checks.frame;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Numbers nodes so that those that hold each other stand close together: Cuthill and McKee (1969), reversed. */
final class Ordering {
    private final List<Set<Integer>> beside = new ArrayList<>();

    private Ordering(Frame frame) {
        for (int i = 0; i < frame.nodes().size(); i++) {
            beside.add(new TreeSet<>());
        }
        for (Member member : frame.members()) {
            int[] nodes = member.nodes();
            for (int one : nodes) {
                for (int other : nodes) {
                    if (one != other) {
                        beside.get(one).add(other);
                    }
                }
            }
        }
    }

    /** The place of each node. */
    static int[] places(Frame frame) {
        List<Integer> order = new Ordering(frame).order();
        int[] places = new int[order.size()];
        for (int i = 0; i < order.size(); i++) {
            places[order.get(i)] = order.size() - 1 - i;
        }
        return places;
    }

    private List<Integer> order() {
        List<Integer> order = new ArrayList<>();
        boolean[] seen = new boolean[beside.size()];
        Comparator<Integer> fewest = Comparator.<Integer>comparingInt(
                        node -> beside.get(node).size())
                .thenComparingInt(node -> node);
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i < beside.size(); i++) {
            starts.add(i);
        }
        starts.sort(fewest);
        for (int start : starts) {
            if (!seen[start]) {
                walk(start, seen, order, fewest);
            }
        }
        return order;
    }

    private void walk(int start, boolean[] seen, List<Integer> order, Comparator<Integer> fewest) {
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        seen[start] = true;
        while (!open.isEmpty()) {
            int next = open.remove();
            order.add(next);
            beside.get(next).stream().filter(node -> !seen[node]).sorted(fewest).forEach(node -> {
                seen[node] = true;
                open.add(node);
            });
        }
    }
}
