package scantling.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Filled pieces of stock, each with the pattern that says what lies on it, and plans put together from them. */
final class FilledSheets {
    private final Problem problem;
    private final List<List<Integer>> items;
    private final Map<Integer, Integer> kindOf = new LinkedHashMap<>();
    private final Map<Pattern, Bin> bins = new LinkedHashMap<>();

    /** @param items of each kind */
    FilledSheets(Problem problem, List<List<Integer>> items) {
        this.problem = problem;
        this.items = items;
        for (int k = 0; k < items.size(); k++) {
            for (int item : items.get(k)) {
                kindOf.put(item, k);
            }
        }
    }

    /** What lies on a piece of stock; the piece is remembered for it. */
    Pattern add(Bin bin) {
        int[] counts = new int[items.size()];
        bin.parts.forEach(node -> counts[Objects.requireNonNull(kindOf.get(node.kind))]++);
        Pattern pattern = new Pattern(bin.type, problem.stockCost[bin.type], counts);
        bins.put(pattern, bin);
        return pattern;
    }

    Collection<Bin> bins() {
        return bins.values();
    }

    Set<Pattern> patterns() {
        return bins.keySet();
    }

    /** All that is on some patterns, each part once: what a pattern has too many of comes off it. */
    Layout layout(List<Pattern> chosen) {
        List<Deque<Integer>> left = new ArrayList<>();
        items.forEach(list -> left.add(new ArrayDeque<>(list)));
        Layout layout = new Layout(problem, List.of());
        for (Pattern pattern : chosen) {
            Bin bin = layout.take(Objects.requireNonNull(bins.get(pattern)).copy(-1));
            for (Node node : List.copyOf(bin.parts)) {
                Deque<Integer> same = left.get(Objects.requireNonNull(kindOf.get(node.kind)));
                if (same.isEmpty()) {
                    bin.free(node, new ArrayList<>());
                } else {
                    node.kind = same.remove();
                }
            }
        }
        layout.closeEmpty();
        return layout;
    }
}
