package scantling.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle in the search's tree of cuts. All sizes hold one kerf more than the wood does, on both sides, so that sizes of
 * siblings add up exactly and the search need not know the kerf. Siblings have no order until the plan is written out.
 */
final class Node {
    static final int LEFT = -1;
    static final int CUT = -2;
    static final int WASTE = -3;

    /** The axis that cuts across divide: length. */
    static final int X = 0;
    /** The axis that cuts along divide: width. */
    static final int Y = 1;

    final Bin bin;
    Node parent;
    long length;
    long width;
    /** An item number, or LEFT, CUT, WASTE. */
    int kind;

    boolean turned;
    /** For CUT: which axis its children share out. */
    int axis;
    /** How many levels of cuts are above. */
    final int depth;
    /** Where this stands in its bin's list of leftovers or of parts. */
    int slot;

    final List<Node> children;

    private Node(Bin bin, int depth, long length, long width, int branches) {
        this.bin = bin;
        this.depth = depth;
        this.length = length;
        this.width = width;
        this.kind = WASTE;
        this.parent = this;
        this.children = new ArrayList<>(branches);
    }

    static Node root(Bin bin, long length, long width) {
        return new Node(bin, 0, length, width, 0);
    }

    /** A new child, not yet of any kind, of an extent along this node's axis and full in the other. */
    Node child(long extent) {
        long l = axis == X ? extent : length;
        long w = axis == Y ? extent : width;
        Node made = new Node(bin, depth + 1, l, w, 0);
        made.parent = this;
        children.add(made);
        return made;
    }

    boolean isRoot() {
        return parent == this;
    }

    /** Whether no part is to come out of this. */
    boolean isSpare() {
        return kind == LEFT || kind == WASTE;
    }

    long extent(int along) {
        return along == X ? length : width;
    }

    void grow(int along, long by) {
        if (along == X) {
            length += by;
        } else {
            width += by;
        }
    }

    double area() {
        return (double) length * width;
    }

    /** A copy of this and all below it, registered in another bin. */
    Node copyTo(Bin other) {
        Node copy = new Node(other, depth, length, width, children.size());
        copy.kind = kind;
        copy.turned = turned;
        copy.axis = axis;
        copy.slot = slot;
        other.replace(copy);
        for (int i = 0; i < children.size(); i++) {
            Node below = children.get(i).copyTo(other);
            below.parent = copy;
            copy.children.add(below);
        }
        return copy;
    }
}
