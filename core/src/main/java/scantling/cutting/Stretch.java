package scantling.cutting;

import java.util.Iterator;

/**
 * Strips and columns as large as what they hold: where the largest part of one is taken out, its room goes back to
 * what lies beside it, and a leftover becomes larger by room from beside its strip or column when a part needs it.
 */
final class Stretch {
    private Stretch() {}

    /** What has to become larger with a leftover along an axis; a root when nothing can. */
    static Node grower(Node left, int axis) {
        return left.parent.axis == axis ? left.parent.parent : left.parent;
    }

    /** The leftover beside a piece; the piece itself when there is none. */
    static Node beside(Node piece) {
        if (!piece.isRoot()) {
            for (Node sibling : piece.parent.children) {
                if (sibling.kind == Node.LEFT) {
                    return sibling;
                }
            }
        }
        return piece;
    }

    /** Makes a leftover larger by so much of what lies beside its strip or column. */
    static void widen(Bin bin, Node left, int axis, long by) {
        Node grower = grower(left, axis);
        take(bin, beside(grower), by);
        stretch(bin, grower, axis, by);
    }

    /** Makes room of a leftover less along the axis of its siblings. */
    private static void take(Bin bin, Node spare, long by) {
        Node parent = spare.parent;
        spare.grow(parent.axis, -by);
        if (spare.extent(parent.axis) == 0) {
            bin.unregister(spare);
            parent.children.remove(spare);
        }
    }

    private static void stretch(Bin bin, Node node, int axis, long by) {
        if (node.kind >= 0) {
            wrap(bin, node, axis);
        }
        node.grow(axis, by);
        if (node.kind == Node.CUT && node.axis == axis) {
            give(bin, node, by);
        } else {
            for (Node child : node.children) {
                stretch(bin, child, axis, by);
            }
        }
    }

    /** A piece that is one part becomes one that the part is cut from. */
    private static void wrap(Bin bin, Node node, int axis) {
        bin.unregister(node);
        int item = node.kind;
        node.kind = Node.CUT;
        node.axis = axis;
        Node part = node.child(node.extent(axis));
        part.kind = item;
        part.turned = node.turned;
        bin.register(part);
    }

    /** More of what is left over in a piece that has grown along the axis of its children. */
    private static void give(Bin bin, Node parent, long by) {
        for (Node child : parent.children) {
            if (child.isSpare()) {
                child.grow(parent.axis, by);
                return;
            }
        }
        Node left = parent.child(by);
        left.kind = parent.depth < bin.stages ? Node.LEFT : Node.WASTE;
        bin.register(left);
    }

    /** Makes a piece and all it came from as small as what they hold. */
    static void tighten(Bin bin, Node from) {
        for (Node node = from; !node.isRoot(); node = node.parent) {
            int axis = node.parent.axis;
            long slack = node.extent(axis) - need(node, axis);
            if (slack > 0) {
                shrink(bin, node, axis, slack);
                give(bin, node.parent, slack);
            }
        }
    }

    private static long need(Node node, int axis) {
        if (node.isSpare()) {
            return 0;
        }
        long need = node.kind == Node.CUT && node.axis != axis ? 0 : node.extent(axis);
        for (Node child : node.children) {
            if (node.axis != axis) {
                need = Math.max(need, need(child, axis));
            } else if (child.isSpare()) {
                need -= child.extent(axis);
            }
        }
        return need;
    }

    private static void shrink(Bin bin, Node node, int axis, long by) {
        node.grow(axis, -by);
        if (node.kind != Node.CUT) {
            return;
        }
        if (node.axis != axis) {
            for (Node child : node.children) {
                shrink(bin, child, axis, by);
            }
            return;
        }
        long left = by;
        for (Iterator<Node> each = node.children.iterator(); each.hasNext() && left > 0; ) {
            Node child = each.next();
            if (child.isSpare()) {
                long some = Math.min(left, child.extent(axis));
                child.grow(axis, -some);
                left -= some;
                if (child.extent(axis) == 0) {
                    bin.unregister(child);
                    each.remove();
                }
            }
        }
        unwrap(bin, node);
    }

    /** A piece of which nothing but one part is cut becomes that part. */
    private static void unwrap(Bin bin, Node node) {
        if (node.children.size() == 1 && node.children.get(0).kind >= 0) {
            Node part = node.children.get(0);
            bin.unregister(part);
            node.children.clear();
            node.kind = part.kind;
            node.turned = part.turned;
            bin.register(node);
        }
    }
}
