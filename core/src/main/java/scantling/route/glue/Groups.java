package scantling.route.glue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Parts gathered by what joins them. */
final class Groups {
    private Groups() {}

    /** The sets of parts that some joints hold together, in the order of their first parts. */
    static List<BitSet> joinedBy(int count, List<Meeting> meetings, Predicate<Meeting> holding) {
        int[] root = new int[count];
        for (int i = 0; i < count; i++) {
            root[i] = i;
        }
        for (Meeting meeting : meetings) {
            if (holding.test(meeting)) {
                int one = find(root, meeting.entering());
                int other = find(root, meeting.receiving());
                root[Math.max(one, other)] = Math.min(one, other);
            }
        }
        Map<Integer, BitSet> groups = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            groups.computeIfAbsent(find(root, i), k -> new BitSet()).set(i);
        }
        return List.copyOf(groups.values());
    }

    private static int find(int[] root, int i) {
        int at = i;
        while (root[at] != at) {
            at = root[at];
        }
        return at;
    }

    /** For every part the group it is in. */
    static List<BitSet> byPart(int count, List<BitSet> groups) {
        List<BitSet> of = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int part = i;
            of.add(groups.stream().filter(group -> group.get(part)).findFirst().orElseThrow());
        }
        return of;
    }
}
