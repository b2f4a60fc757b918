package scantling.packet;

import java.util.List;
import scantling.construct.Part;

/**
 * Parts that are made alike: same material, sizes, shape and the same work on them.
 *
 * @param mark the letter they carry at the bench: A, B, C1
 * @param sample the first of them
 * @param paths all of them
 */
public record PartGroup(String mark, Part sample, List<String> paths) {
    private static final int NAMED = 4;
    private static final String STEP = " / ";

    /** Takes its own copy. */
    public PartGroup {
        paths = List.copyOf(paths);
    }

    /** How many there are. */
    public int count() {
        return paths.size();
    }

    /** What they are called, in one line: their own names, after what all of them belong to. */
    public String names() {
        List<List<String>> steps =
                paths.stream().map(path -> List.of(path.split(STEP, -1))).toList();
        int shared = shared(steps);
        List<String> own =
                steps.stream().map(path -> path.get(path.size() - 1)).distinct().toList();
        String all = own.size() <= NAMED
                ? String.join(", ", own)
                : String.join(", ", own.subList(0, NAMED - 1)) + " and " + (own.size() - NAMED + 1) + " more";
        return String.join(STEP, steps.get(0).subList(0, shared)) + (shared > 0 ? STEP : "") + all;
    }

    /** How many steps, before the last, all paths have in common. */
    private static int shared(List<List<String>> paths) {
        List<String> first = paths.get(0);
        int shared = 0;
        while (shared < first.size() - 1 && agree(paths, shared, first.get(shared))) {
            shared++;
        }
        return shared;
    }

    private static boolean agree(List<List<String>> paths, int at, String step) {
        return paths.stream()
                .allMatch(path -> path.size() > at + 1 && path.get(at).equals(step));
    }
}
