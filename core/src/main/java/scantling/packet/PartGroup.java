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

    /** Takes its own copy. */
    public PartGroup {
        paths = List.copyOf(paths);
    }

    /** How many there are. */
    public int count() {
        return paths.size();
    }

    /** What they are called, in one line. */
    public String names() {
        return paths.size() <= NAMED
                ? String.join(", ", paths)
                : String.join(", ", paths.subList(0, NAMED - 1)) + " and " + (paths.size() - NAMED + 1) + " more";
    }
}
