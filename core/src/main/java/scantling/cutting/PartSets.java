package scantling.cutting;

import java.util.Arrays;

/**
 * Sets of parts, and of each set all the smallest rectangles that it can be cut from edge to edge (two sets side by side or
 * one above the other, as Wang 1983 builds them), worked out when first asked for. A set is a number: the kinds of its parts
 * in rising order, seven bits each, so that two sets are the same when their numbers are.
 */
final class PartSets {
    /** Larger sets are not worked out: a number holds nine. */
    static final int MOST_PARTS = 9;

    private static final int BITS = 7;
    private static final int MASK = (1 << BITS) - 1;
    /** Kinds that a set can be told in. */
    static final int MOST_KINDS = MASK - 1;

    private static final long[] NONE = {};
    private static final int FIRST_ROOM = 1 << 12;

    private final long[] length;
    private final long[] width;
    private final boolean[] turn;
    private final long longest;
    private final long widest;
    private final double largest;

    private long[] keys = new long[FIRST_ROOM];
    private long[][] shapes = new long[FIRST_ROOM][];
    private int known;
    private long work;

    /** @param sample of each kind, one item @param longest of any stock @param widest of any stock */
    PartSets(Problem problem, int[] sample, long longest, long widest) {
        this.length = Arrays.stream(sample).mapToLong(i -> problem.length[i]).toArray();
        this.width = Arrays.stream(sample).mapToLong(i -> problem.width[i]).toArray();
        this.turn = new boolean[sample.length];
        for (int k = 0; k < turn.length; k++) {
            turn[k] = problem.turn[sample[k]];
        }
        this.longest = longest;
        this.widest = widest;
        this.largest = (double) longest * widest;
    }

    /** How much has been worked out so far, in sets compared. */
    long work() {
        return work;
    }

    /** How many sets are known. */
    int known() {
        return known;
    }

    /** A set with one more part of a kind. */
    static long with(long set, int kind) {
        long digit = kind + 1L;
        int shift = 0;
        while ((set >>> shift & MASK) != 0 && (set >>> shift & MASK) < digit) {
            shift += BITS;
        }
        long low = set & ((1L << shift) - 1);
        return low | digit << shift | set >>> shift << shift << BITS;
    }

    static int size(long set) {
        return (Long.SIZE - Long.numberOfLeadingZeros(set) + BITS - 1) / BITS;
    }

    /** The kind of one part of a set. */
    static int kind(long set, int at) {
        return (int) (set >>> at * BITS & MASK) - 1;
    }

    /** The smallest rectangles of a set, length and width by turns; none when it does not come out of any stock. */
    long[] shapes(long set) {
        int at = slot(set);
        if (keys[at] == set) {
            return shapes[at];
        }
        long[] made = made(set);
        put(set, made);
        return made;
    }

    private long[] made(long set) {
        int size = size(set);
        Front front = new Front(longest, widest);
        if (size == 1) {
            one(front, kind(set, 0));
            return front.shapes();
        }
        if (area(set, size) > largest) {
            return NONE;
        }
        int whole = (1 << size) - 1;
        for (int mask = 1; mask < whole; mask += 2) {
            long[] first = shapes(part(set, mask, size));
            long[] second = shapes(part(set, whole - mask, size));
            if (first.length == 0 || second.length == 0) {
                return NONE;
            }
            work += front.join(first, second);
        }
        return front.shapes();
    }

    private void one(Front front, int kind) {
        front.add(length[kind], width[kind]);
        if (turn[kind]) {
            front.add(width[kind], length[kind]);
        }
    }

    private double area(long set, int size) {
        double area = 0;
        for (int i = 0; i < size; i++) {
            int kind = kind(set, i);
            area += (double) length[kind] * width[kind];
        }
        return area;
    }

    /** The parts of a set whose bit is set. */
    static long part(long set, int mask, int size) {
        long part = 0;
        int shift = 0;
        for (int i = 0; i < size; i++) {
            if ((mask >> i & 1) != 0) {
                part |= (set >>> i * BITS & MASK) << shift;
                shift += BITS;
            }
        }
        return part;
    }

    private int slot(long set) {
        long mixed = set * 0x9E3779B97F4A7C15L;
        int at = (int) (mixed >>> 32) & keys.length - 1;
        while (keys[at] != 0 && keys[at] != set) {
            at = at + 1 & keys.length - 1;
        }
        return at;
    }

    private void put(long set, long[] made) {
        if (2 * known >= keys.length) {
            grow();
        }
        int at = slot(set);
        keys[at] = set;
        shapes[at] = made;
        known++;
    }

    private void grow() {
        long[] oldKeys = keys;
        long[][] oldShapes = shapes;
        keys = new long[2 * oldKeys.length];
        shapes = new long[2 * oldKeys.length][];
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] != 0) {
                int at = slot(oldKeys[i]);
                keys[at] = oldKeys[i];
                shapes[at] = oldShapes[i];
            }
        }
    }
}
