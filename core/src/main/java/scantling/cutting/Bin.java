package scantling.cutting;

import java.util.ArrayList;
import java.util.List;

/** One piece of stock in use during the search: its tree, with its leftovers and its parts at hand. */
final class Bin {
    final int type;
    final int stages;
    /** Which step of the search may change this bin; others must copy it first. */
    final long owner;

    final List<Node> lefts;
    final List<Node> parts;
    /** What may be used of it: all, or the clear stretches between its defects. */
    private final List<Node> roots;

    private final double area;
    /** The settings its cuts need, worked out when asked for; of no length when they have to be worked out again. */
    private long[] settings = {};

    private boolean settled;
    private double concentration;
    private double leftArea;
    private boolean summed;

    Bin(int type, Problem problem, long owner) {
        this.type = type;
        this.stages = problem.stages;
        this.owner = owner;
        this.lefts = new ArrayList<>();
        this.parts = new ArrayList<>();
        this.roots = new ArrayList<>(1);
        long[] fields = problem.fields(type);
        double sum = 0;
        for (int f = 0; f < fields.length; f += 2) {
            Node root = Node.root(this, fields[f], fields[f + 1]);
            root.kind = Node.LEFT;
            register(root);
            roots.add(root);
            sum += root.area();
        }
        this.area = sum;
    }

    private Bin(Bin other, long owner) {
        this.type = other.type;
        this.stages = other.stages;
        this.owner = owner;
        this.lefts = new ArrayList<>(other.lefts);
        this.parts = new ArrayList<>(other.parts);
        this.roots = new ArrayList<>(other.roots.size());
        for (Node root : other.roots) {
            roots.add(root.copyTo(this));
        }
        this.area = other.area;
        this.settings = other.settings;
        this.settled = other.settled;
        this.concentration = other.concentration;
        this.leftArea = other.leftArea;
        this.summed = other.summed;
    }

    Bin copy(long newOwner) {
        return new Bin(this, newOwner);
    }

    List<Node> roots() {
        return roots;
    }

    /** Of all that may be used. */
    double area() {
        return area;
    }

    int cuts() {
        int cuts = 0;
        for (Node root : roots) {
            cuts += Settings.cuts(root);
        }
        return cuts;
    }

    /** Takes everything out. */
    void empty(List<Integer> out) {
        for (Node root : roots) {
            free(root, out);
        }
    }

    /** The root of clear stock, not yet of any kind, to be built on by the caller. */
    Node clearRoot() {
        Node root = roots.get(0);
        unregister(root);
        root.kind = Node.WASTE;
        settled = false;
        summed = false;
        return root;
    }

    boolean isEmpty() {
        return parts.isEmpty();
    }

    void register(Node node) {
        if (node.kind == Node.LEFT) {
            node.slot = lefts.size();
            lefts.add(node);
        } else if (node.kind >= 0) {
            node.slot = parts.size();
            parts.add(node);
        }
    }

    /** Puts a copied node where its original stood in the lists, so that places found in the original hold in the copy. */
    void replace(Node copy) {
        if (copy.kind == Node.LEFT) {
            lefts.set(copy.slot, copy);
        } else if (copy.kind >= 0) {
            parts.set(copy.slot, copy);
        }
    }

    void unregister(Node node) {
        List<Node> list = node.kind == Node.LEFT ? lefts : parts;
        if (node.kind == Node.LEFT || node.kind >= 0) {
            Node last = list.remove(list.size() - 1);
            if (last != node) {
                list.set(node.slot, last);
                last.slot = node.slot;
            }
        }
    }

    /** Puts an item of a size into a leftover: first sized along an axis, then along the other. */
    void place(Node left, int axis, int item, boolean turned, long length, long width) {
        settled = false;
        summed = false;
        Node strip = !left.isRoot() && left.parent.axis == axis
                ? sliced(left, axis == Node.X ? length : width)
                : split(left, axis, axis == Node.X ? length : width);
        int other = 1 - axis;
        Node last = strip.extent(other) == (other == Node.X ? length : width)
                ? strip
                : split(strip, other, other == Node.X ? length : width);
        if (last.kind == Node.LEFT) {
            unregister(last);
        }
        last.kind = item;
        last.turned = turned;
        register(last);
    }

    /** Takes a strip off a leftover in the direction its siblings lie. */
    private Node sliced(Node left, long extent) {
        int axis = left.parent.axis;
        if (left.extent(axis) == extent) {
            return left;
        }
        left.grow(axis, -extent);
        return left.parent.child(extent);
    }

    /** Turns a node into a cut one with a child of the extent and a leftover. */
    private Node split(Node node, int axis, long extent) {
        if (node.kind == Node.LEFT) {
            unregister(node);
        }
        node.kind = Node.CUT;
        node.axis = axis;
        Node first = node.child(extent);
        long rest = node.extent(axis) - extent;
        if (rest > 0) {
            Node left = node.child(rest);
            left.kind = node.depth < stages ? Node.LEFT : Node.WASTE;
            register(left);
        }
        return first;
    }

    /** Frees a node's room, and tells which items came out. */
    void free(Node node, List<Integer> out) {
        settled = false;
        summed = false;
        Node top = node;
        while (!top.isRoot() && holdsOnly(top.parent, top)) {
            top = top.parent;
        }
        clear(top, out);
        if (!top.isRoot()) {
            giveBack(top);
            Stretch.tighten(this, top.parent);
        } else {
            top.kind = Node.LEFT;
            register(top);
        }
    }

    private static boolean holdsOnly(Node parent, Node child) {
        for (Node other : parent.children) {
            if (other != child && other.kind != Node.LEFT && other.kind != Node.WASTE) {
                return false;
            }
        }
        return true;
    }

    private void clear(Node node, List<Integer> out) {
        if (node.kind >= 0) {
            out.add(node.kind);
        }
        unregister(node);
        for (Node child : node.children) {
            clear(child, out);
        }
        node.children.clear();
        node.kind = Node.WASTE;
    }

    private void giveBack(Node node) {
        Node parent = node.parent;
        for (Node sibling : parent.children) {
            if (sibling.kind == Node.LEFT) {
                sibling.grow(parent.axis, node.extent(parent.axis));
                parent.children.remove(node);
                return;
            }
        }
        node.kind = Node.LEFT;
        register(node);
    }

    /** The settings that its cuts need, in order; see {@link Settings}. Not to be changed. */
    long[] settings() {
        if (!settled) {
            settings = Settings.of(roots);
            settled = true;
        }
        return settings;
    }

    /** The sum of squares of leftover areas, each as a share of the whole: larger when the leftovers are few and large. */
    double concentration() {
        if (!summed) {
            concentration = sum();
            summed = true;
        }
        return concentration;
    }

    /** Whether an item of an area cannot lie in the leftovers, told from all of them; false does not say that it can. */
    boolean isTooFull(double area) {
        concentration();
        return area > leftArea;
    }

    private double sum() {
        double whole = area;
        double sum = 0;
        leftArea = 0;
        for (Node left : lefts) {
            leftArea += left.area();
            double share = left.area() / whole;
            sum += share * share;
        }
        return sum;
    }
}
