package scantling.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cut trees back to a layout of the search, so that it can begin where an older plan stood. */
final class LayoutReader {
    private final Problem problem;
    private final Map<String, Deque<Integer>> items = new HashMap<>();

    private LayoutReader(Problem problem) {
        this.problem = problem;
        for (int i = 0; i < problem.items; i++) {
            if (problem.fitsSomewhere(i)) {
                items.computeIfAbsent(key(problem.job.parts().get(problem.partOf[i])), k -> new ArrayDeque<>())
                        .add(i);
            }
        }
    }

    private static String key(CutPart part) {
        return "%s / %s / %s".formatted(part.name(), part.length(), part.width());
    }

    /** A layout with the trees on their stock, and what they do not hold put where it fits. */
    static Layout read(Problem problem, List<Rest.Begun> begun, Recreate recreate, long step) {
        LayoutReader reader = new LayoutReader(problem);
        Layout layout = new Layout(problem, List.of());
        for (Rest.Begun one : begun) {
            int type = problem.firstType(one.stock());
            if (type >= 0 && !problem.isFlawed(type) && layout.used[type] < problem.stockCount[type]) {
                Bin bin = layout.open(type, step);
                reader.tree(bin, one.tree());
            }
        }
        layout.closeEmpty();
        List<Integer> left = new ArrayList<>();
        reader.items.values().forEach(left::addAll);
        left.sort(Comparator.<Integer>comparingDouble(i -> -problem.area[i]).thenComparingInt(i -> i));
        layout.out.addAll(left);
        recreate.fill(layout, left, Long.MAX_VALUE, step);
        return layout;
    }

    private void tree(Bin bin, CutTree tree) {
        Node root = bin.clearRoot();
        if (tree instanceof CutTree.Cut cut && !problem.firstCut.allows(cut.direction())) {
            root.kind = Node.CUT;
            root.axis = cut.direction() == CutDirection.ACROSS ? Node.Y : Node.X;
            fill(bin, root.child(root.extent(root.axis)), tree);
        } else {
            fill(bin, root, tree);
        }
    }

    private void fill(Bin bin, Node node, CutTree tree) {
        if (tree instanceof CutTree.Cut cut) {
            node.kind = Node.CUT;
            node.axis = cut.direction() == CutDirection.ACROSS ? Node.X : Node.Y;
            chain(bin, node, cut);
            return;
        }
        if (tree instanceof CutTree.Part part) {
            Deque<Integer> same = items.getOrDefault(key(part.placed().part()), new ArrayDeque<>());
            if (!same.isEmpty()) {
                node.kind = same.remove();
                node.turned = part.placed().turned();
                bin.register(node);
                return;
            }
        }
        spare(bin, node);
    }

    private void spare(Bin bin, Node node) {
        node.kind = node.isRoot() || node.parent.depth < problem.stages ? Node.LEFT : Node.WASTE;
        bin.register(node);
    }

    /** Cuts that go on the same way become siblings. What is left over among them is gathered in one. */
    private void chain(Bin bin, Node node, CutTree.Cut top) {
        long rest = node.extent(node.axis);
        long spare = 0;
        CutTree at = top;
        while (at instanceof CutTree.Cut cut && cut.direction() == top.direction()) {
            long extent = Math.min(rest, problem.withKerf(cut.position()));
            rest -= extent;
            spare += place(bin, node, extent, cut.first());
            at = cut.second();
        }
        spare += rest == 0 ? 0 : place(bin, node, rest, at);
        if (spare > 0) {
            spare(bin, node.child(spare));
        }
    }

    private long place(Bin bin, Node node, long extent, CutTree tree) {
        if (tree instanceof CutTree.Offcut || tree instanceof CutTree.Nothing) {
            return extent;
        }
        fill(bin, node.child(extent), tree);
        return 0;
    }
}
