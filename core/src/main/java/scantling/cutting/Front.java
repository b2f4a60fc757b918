package scantling.cutting;

import java.util.Arrays;

/** Rectangles none of which holds another: shorter ones are wider. */
final class Front {
    private final long longest;
    private final long widest;
    private long[] shapes = new long[16];
    private int size;

    /** @param longest nothing longer is taken in, nor anything wider than {@code widest} */
    Front(long longest, long widest) {
        this.longest = longest;
        this.widest = widest;
    }

    /** Lengths and widths by turns, by rising length. */
    long[] shapes() {
        return Arrays.copyOf(shapes, size);
    }

    /** Takes in a rectangle unless one here is no larger either way; those it makes needless go. */
    void add(long length, long width) {
        if (length > longest || width > widest) {
            return;
        }
        int at = 0;
        while (at < size && shapes[at] < length) {
            if (shapes[at + 1] <= width) {
                return;
            }
            at += 2;
        }
        if (at < size && shapes[at] == length && shapes[at + 1] <= width) {
            return;
        }
        int end = at;
        while (end < size && shapes[end + 1] >= width) {
            end += 2;
        }
        insert(at, end, length, width);
    }

    private void insert(int at, int end, long length, long width) {
        int grown = size - (end - at) + 2;
        if (grown > shapes.length) {
            shapes = Arrays.copyOf(shapes, 2 * grown);
        }
        System.arraycopy(shapes, end, shapes, at + 2, size - end);
        shapes[at] = length;
        shapes[at + 1] = width;
        size = grown;
    }

    /** Takes in what any rectangle of one and any of another front need, end to end and side by side. @return how much work it was */
    long join(long[] a, long[] b) {
        for (int i = 0; i < a.length; i += 2) {
            for (int j = 0; j < b.length; j += 2) {
                add(a[i] + b[j], Math.max(a[i + 1], b[j + 1]));
                add(Math.max(a[i], b[j]), a[i + 1] + b[j + 1]);
            }
        }
        return 1 + (long) a.length * b.length / 4;
    }
}
