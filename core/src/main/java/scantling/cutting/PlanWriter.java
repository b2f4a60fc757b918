package scantling.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import scantling.measure.Length;

/** Turns a layout of the search into a plan in real lengths, with an order among siblings: the widest strip is cut first. */
final class PlanWriter {
    private final Problem problem;
    private final int[] copies;

    PlanWriter(Problem problem) {
        this.problem = problem;
        this.copies = new int[problem.job.parts().size()];
    }

    List<CutPiece> pieces(Layout layout) {
        List<Bin> bins = new ArrayList<>(layout.bins);
        bins.sort(Comparator.comparingInt(b -> b.type));
        List<CutPiece> pieces = new ArrayList<>();
        for (Bin bin : bins) {
            pieces.add(piece(bin, pieces.size() + 1));
        }
        return pieces;
    }

    private CutPiece piece(Bin bin, int number) {
        if (problem.isFlawed(bin.type)) {
            return flawed(bin, number);
        }
        List<PlacedPart> parts = new ArrayList<>();
        List<CutTree.Offcut> offcuts = new ArrayList<>();
        Stock stock = problem.stock(bin.type);
        Length trim = problem.job.saw().trimOf(stock);
        CutTree tree = tree(bin.roots().get(0), trim, problem.sticks ? Length.ZERO : trim, parts, offcuts);
        return new CutPiece(stock, number, tree, parts, Steps.of(problem.job, stock, tree), offcuts);
    }

    /** A board with defects in each way of sharing settings; the one that needs the fewest. */
    private CutPiece flawed(Bin bin, int number) {
        int[] before = copies.clone();
        Stock stock = problem.stock(bin.type);
        List<CutPiece> ways = new ArrayList<>();
        for (FlawedPlaces.Way way : FlawedPlaces.Way.values()) {
            System.arraycopy(before, 0, copies, 0, copies.length);
            List<PlacedPart> parts = new ArrayList<>();
            List<CutTree.Offcut> offcuts = new ArrayList<>();
            CutTree tree = new FlawedBoard(this, problem, bin, way, parts, offcuts).tree();
            ways.add(new CutPiece(stock, number, tree, parts, Steps.of(problem.job, stock, tree), offcuts));
        }
        return Collections.min(
                ways,
                Comparator.comparingInt(CutPiece::settings)
                        .thenComparingInt(piece -> piece.steps().size()));
    }

    CutTree tree(Node node, Length x, Length y, List<PlacedPart> parts, List<CutTree.Offcut> offcuts) {
        Length length = problem.wood(node.length);
        Length width = problem.sticks ? Length.ZERO : problem.wood(node.width);
        if (node.kind >= 0) {
            CutPart part = problem.job.parts().get(problem.partOf[node.kind]);
            int copy = ++copies[problem.partOf[node.kind]];
            PlacedPart placed = new PlacedPart(part, copy, x, y, length, width, node.turned);
            parts.add(placed);
            return new CutTree.Part(placed);
        }
        if (node.kind != Node.CUT) {
            return leftover(x, y, length, width, offcuts);
        }
        List<Node> children = new ArrayList<>(node.children);
        boolean nearEdge = node.isRoot() && problem.job.wishes().nearEdge();
        children.sort(Comparator.<Node, Boolean>comparing(Node::isSpare)
                .thenComparing(c -> nearEdge ? c.extent(node.axis) : -c.extent(node.axis)));
        return cuts(children, 0, x, y, parts, offcuts);
    }

    private CutTree cuts(
            List<Node> children, int from, Length x, Length y, List<PlacedPart> parts, List<CutTree.Offcut> offcuts) {
        Node child = children.get(from);
        CutTree first = tree(child, x, y, parts, offcuts);
        if (from == children.size() - 1) {
            return first;
        }
        boolean across = child.parent.axis == Node.X;
        Length position = problem.wood(child.extent(child.parent.axis));
        Length onward = position.plus(problem.job.saw().kerf());
        CutTree second =
                cuts(children, from + 1, across ? x.plus(onward) : x, across ? y : y.plus(onward), parts, offcuts);
        return new CutTree.Cut(across ? CutDirection.ACROSS : CutDirection.ALONG, position, first, second);
    }

    private CutTree leftover(Length x, Length y, Length length, Length width, List<CutTree.Offcut> offcuts) {
        if (!length.isPositive() || (!width.isPositive() && !problem.sticks)) {
            return new CutTree.Nothing();
        }
        boolean keep = problem.job.keep().worth(length, width);
        CutTree.Offcut offcut = new CutTree.Offcut(x, y, length, width, keep);
        if (keep) {
            offcuts.add(offcut);
        }
        return offcut;
    }
}
