package scantling.packet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import scantling.construct.Part;
import scantling.feature.WorkGroup;

/**
 * Parts that are made alike: same material, sizes, shape and the same work on them.
 *
 * @param mark the letter they carry at the bench: A, B, C1
 * @param sample the first of them
 * @param paths all of them
 * @param work what is done to each
 * @param mirrors the letter of the parts that they are the mirror image of, when those come before them
 */
public record PartGroup(String mark, Part sample, List<String> paths, List<WorkGroup> work, Optional<String> mirrors) {
    private static final int NAMED = 4;
    private static final String STEP = " / ";

    /** Takes its own copy. */
    public PartGroup {
        paths = List.copyOf(paths);
        work = List.copyOf(work);
    }

    /** How many there are. */
    public int count() {
        return paths.size();
    }

    /**
     * What they are called, in one line: their own names, after what all of them belong to; three dots where they belong
     * to different things: {@code drawer units / … / box / left side}.
     */
    public String names() {
        List<List<String>> steps =
                paths.stream().map(path -> List.of(path.split(STEP, -1))).toList();
        List<List<String>> holders =
                steps.stream().map(path -> path.subList(0, path.size() - 1)).toList();
        int before = shared(holders);
        List<List<String>> rest = holders.stream()
                .map(holder -> reversed(holder.subList(before, holder.size())))
                .toList();
        int after = shared(rest);
        boolean gap = rest.stream().anyMatch(holder -> holder.size() > after);
        List<String> names = new ArrayList<>(steps.get(0).subList(0, before));
        if (gap) {
            names.add("…");
        }
        names.addAll(reversed(rest.get(0).subList(0, after)));
        names.add(own(steps));
        return String.join(STEP, names);
    }

    private static String own(List<List<String>> steps) {
        List<String> own =
                steps.stream().map(path -> path.get(path.size() - 1)).distinct().toList();
        return own.size() <= NAMED
                ? String.join(", ", own)
                : String.join(", ", own.subList(0, NAMED - 1)) + " and " + (own.size() - NAMED + 1) + " more";
    }

    private static List<String> reversed(List<String> steps) {
        List<String> turned = new ArrayList<>(steps);
        Collections.reverse(turned);
        return turned;
    }

    /** How many steps at their beginning all have in common. */
    private static int shared(List<List<String>> paths) {
        List<String> first = paths.get(0);
        int shared = 0;
        while (shared < first.size() && agree(paths, shared, first.get(shared))) {
            shared++;
        }
        return shared;
    }

    private static boolean agree(List<List<String>> paths, int at, String step) {
        return paths.stream().allMatch(path -> path.size() > at && path.get(at).equals(step));
    }
}
