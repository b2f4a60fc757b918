package scantling.cutting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The items of a job by kind: those of one size that all may turn, or all may not. */
final class PartKinds {
    private final List<List<Integer>> items;
    private final int[] samples;
    private final int[] wanted;

    PartKinds(Problem problem, int[] of) {
        Map<Long, List<Integer>> kinds = new LinkedHashMap<>();
        for (int item : of) {
            long key = problem.kind(item) * 2L + (problem.turn[item] ? 1 : 0);
            kinds.computeIfAbsent(key, k -> new ArrayList<>()).add(item);
        }
        this.items = List.copyOf(kinds.values());
        this.samples = items.stream().mapToInt(list -> list.get(0)).toArray();
        this.wanted = items.stream().mapToInt(List::size).toArray();
    }

    int count() {
        return items.size();
    }

    /** One item of each kind. */
    int[] samples() {
        return samples.clone();
    }

    /** One item of a kind. */
    int sample(int kind) {
        return samples[kind];
    }

    /** How many there are of each kind. */
    int[] wanted() {
        return wanted.clone();
    }

    /** An item of a kind that is not gone; -1 when all are. */
    int next(int kind, BitSet gone) {
        for (int item : items.get(kind)) {
            if (!gone.get(item)) {
                return item;
            }
        }
        return -1;
    }

    /** The items of a kind. */
    List<Integer> items(int kind) {
        return items.get(kind);
    }
}
