package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which fence settings a tree of the search needs. Cuts of one level go the same way and are made after each other, so each
 * level needs each of its sizes once. The last of the pieces that fill a strip exactly needs no cut: it is what is left.
 */
final class Settings {
    private static final int LEVELS = 64;

    private final List<Long> keys = new ArrayList<>();

    private Settings() {}

    /** One number for a size at a level. */
    static long key(long extent, int depth) {
        return extent * LEVELS + Math.min(depth, LEVELS - 1);
    }

    /** The settings of some trees, each once, in ascending order. */
    static long[] of(List<Node> roots) {
        Settings all = new Settings();
        roots.forEach(root -> all.add(root, root.depth + 1));
        return all.keys.stream().mapToLong(k -> k).sorted().distinct().toArray();
    }

    static boolean has(long[] settings, long extent, int depth) {
        return Arrays.binarySearch(settings, key(extent, depth)) >= 0;
    }

    /** @param level that its children are cut at: what a piece of one child alone is cut into belongs to the level above */
    private void add(Node node, int level) {
        if (node.kind != Node.CUT) {
            return;
        }
        if (node.children.size() == 1 && !node.isRoot()) {
            add(node.children.get(0), level - 1);
            return;
        }
        boolean spare = false;
        long least = Long.MAX_VALUE;
        for (Node child : node.children) {
            spare |= child.isSpare();
            least = Math.min(least, child.extent(node.axis));
        }
        boolean free = !spare;
        for (Node child : node.children) {
            long extent = child.extent(node.axis);
            if (free && extent == least) {
                free = false;
            } else if (!child.isSpare()) {
                keys.add(key(extent, level));
            }
            add(child, level + 1);
        }
    }

    /** How many cuts a tree has. */
    static int cuts(Node node) {
        int cuts = node.kind == Node.CUT ? node.children.size() - 1 : 0;
        for (Node child : node.children) {
            cuts += cuts(child);
        }
        return cuts;
    }
}
