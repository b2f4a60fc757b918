package scantling.cutting;

import java.util.ArrayList;
import java.util.List;

/** Puts a set of parts onto a sheet, cut edge to edge as {@link PartSets} has found that it comes out. */
final class SetSheets {
    /** A set as it is cut: one part, or pieces side by side along an axis, none of which is divided along the same one. */
    private record Cut(int axis, int kind, boolean turned, List<Piece> pieces) {
        static Cut part(int kind, boolean turned) {
            return new Cut(Node.X, kind, turned, List.of());
        }

        boolean isPart() {
            return pieces.isEmpty();
        }
    }

    private record Piece(Cut cut, long length, long width) {
        long extent(int axis) {
            return axis == Node.X ? length : width;
        }
    }

    private final Problem problem;
    private final PartSets sets;
    private final int[] sample;

    /** @param sample of each kind, the item that stands for it */
    SetSheets(Problem problem, PartSets sets, int[] sample) {
        this.problem = problem;
        this.sets = sets;
        this.sample = sample.clone();
    }

    /**
     * A sheet with all of a set on it.
     *
     * @throws IllegalArgumentException if the set does not come out of this kind of stock
     */
    Bin sheet(long set, int type) {
        Bin bin = new Bin(type, problem, -1);
        Node root = bin.clearRoot();
        long[] shapes = sets.shapes(set);
        for (int i = 0; i < shapes.length; i += 2) {
            if (shapes[i] <= root.length && shapes[i + 1] <= root.width) {
                lay(bin, root, cut(set, shapes[i], shapes[i + 1]));
                return bin;
            }
        }
        throw new IllegalArgumentException("This set does not come out of stock of kind %d.".formatted(type));
    }

    /** How a set comes out of a rectangle that is one of its smallest. */
    private Cut cut(long set, long length, long width) {
        int size = PartSets.size(set);
        if (size == 1) {
            int item = sample[PartSets.kind(set, 0)];
            return Cut.part(item, problem.length[item] != length || problem.width[item] != width);
        }
        for (int mask = 1, whole = (1 << size) - 1; mask < whole; mask += 2) {
            long first = PartSets.part(set, mask, size);
            long second = PartSets.part(set, whole - mask, size);
            for (int axis : new int[] {Node.X, Node.Y}) {
                long[] both = split(sets.shapes(first), sets.shapes(second), axis, length, width);
                if (both.length > 0) {
                    return beside(axis, first, second, both);
                }
            }
        }
        throw new IllegalStateException("A set does not come out of its own shape.");
    }

    /** A rectangle of each of two sets which beside each other fill one exactly; none when there are none. */
    private static long[] split(long[] a, long[] b, int axis, long length, long width) {
        for (int i = 0; i < a.length; i += 2) {
            for (int j = 0; j < b.length; j += 2) {
                long l = axis == Node.X ? a[i] + b[j] : Math.max(a[i], b[j]);
                long w = axis == Node.Y ? a[i + 1] + b[j + 1] : Math.max(a[i + 1], b[j + 1]);
                if (l == length && w == width) {
                    return new long[] {a[i], a[i + 1], b[j], b[j + 1]};
                }
            }
        }
        return new long[0];
    }

    private Cut beside(int axis, long first, long second, long[] both) {
        List<Piece> pieces = new ArrayList<>();
        add(pieces, axis, new Piece(cut(first, both[0], both[1]), both[0], both[1]));
        add(pieces, axis, new Piece(cut(second, both[2], both[3]), both[2], both[3]));
        return new Cut(axis, Node.CUT, false, pieces);
    }

    private static void add(List<Piece> pieces, int axis, Piece piece) {
        if (!piece.cut().isPart() && piece.cut().axis() == axis) {
            pieces.addAll(piece.cut().pieces());
        } else {
            pieces.add(piece);
        }
    }

    private void lay(Bin bin, Node node, Cut cut) {
        if (cut.isPart()) {
            layPart(bin, node, cut);
            return;
        }
        long left = node.extent(cut.axis());
        node.kind = Node.CUT;
        node.axis = cut.axis();
        for (Piece piece : cut.pieces()) {
            left -= piece.extent(cut.axis());
            lay(bin, node.child(piece.extent(cut.axis())), piece.cut());
        }
        if (left > 0) {
            spare(bin, node.child(left));
        }
    }

    private void layPart(Bin bin, Node node, Cut cut) {
        int item = cut.kind();
        long length = cut.turned() ? problem.width[item] : problem.length[item];
        long width = cut.turned() ? problem.length[item] : problem.width[item];
        Node last = trimmed(bin, trimmed(bin, node, Node.X, length), Node.Y, width);
        last.kind = item;
        last.turned = cut.turned();
        bin.register(last);
    }

    /** The first piece of so much of a node, or the node itself when that is all of it. */
    private static Node trimmed(Bin bin, Node node, int axis, long extent) {
        long left = node.extent(axis) - extent;
        if (left == 0) {
            return node;
        }
        node.kind = Node.CUT;
        node.axis = axis;
        Node first = node.child(extent);
        spare(bin, node.child(left));
        return first;
    }

    private static void spare(Bin bin, Node node) {
        node.kind = Node.LEFT;
        bin.register(node);
    }
}
