package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import scantling.measure.Length;

/** Writes the cuts of a board with defects: its clear stretches stay where they are, and what lies between is sawn out. */
final class FlawedBoard {
    private final PlanWriter writer;
    private final Problem problem;
    private final Stock.BoardStock board;
    private final List<CutTree.Offcut> offcuts;
    private final List<PlacedPart> parts;
    private final Length kerf;
    private final Length trim;

    FlawedBoard(
            PlanWriter writer,
            Problem problem,
            Stock.BoardStock board,
            List<PlacedPart> parts,
            List<CutTree.Offcut> offcuts) {
        this.writer = writer;
        this.problem = problem;
        this.board = board;
        this.parts = parts;
        this.offcuts = offcuts;
        this.kerf = problem.job.saw().kerf();
        this.trim = problem.job.saw().trimOf(board);
    }

    /** A clear stretch and what is cut from it. */
    private record Used(Stock.Place clear, Node root) {}

    CutTree tree(Bin bin) {
        List<Stock.Place> clear = problem.clear(bin.type);
        List<Used> used = new ArrayList<>();
        for (int r = 0; r < clear.size(); r++) {
            if (!bin.roots().get(r).isSpare()) {
                used.add(new Used(clear.get(r), bin.roots().get(r)));
            }
        }
        Length first = used.get(0).clear().x();
        return before(
                trim,
                first,
                CutDirection.ACROSS,
                piece(trim, trim, first.minus(kerf), farEdge()),
                () -> stretches(used, 0));
    }

    private Length farEdge() {
        return board.width().minus(trim);
    }

    private interface Later {
        CutTree tree();
    }

    /** What lies before a place is cut off; nothing is where it begins there. */
    private CutTree before(Length from, Length place, CutDirection direction, Stock.Place waste, Later rest) {
        if (place.compareTo(from) <= 0) {
            return rest.tree();
        }
        CutTree left = leftover(waste);
        return new CutTree.Cut(direction, place.minus(kerf).minus(from), left, rest.tree());
    }

    private CutTree stretches(List<Used> used, int at) {
        Used now = used.get(at);
        Length x = now.clear().x();
        if (at == used.size() - 1) {
            return sections(now, board.length().minus(trim));
        }
        Length end = used.get(at + 1).clear().x().minus(kerf);
        CutTree here = sections(now, end);
        return new CutTree.Cut(CutDirection.ACROSS, end.minus(x), here, stretches(used, at + 1));
    }

    private static List<Node> inOrder(Node node) {
        return node.children.stream()
                .filter(child -> !child.isSpare())
                .sorted(Comparator.comparingLong(child -> -child.extent(node.axis)))
                .toList();
    }

    /** A stretch crosscut: at its end what is left of it and what lies beyond are one piece. */
    private CutTree sections(Used used, Length end) {
        boolean whole = used.root().kind >= 0 || used.root().axis == Node.Y;
        return sections(
                whole ? List.of(used.root()) : inOrder(used.root()),
                0,
                used.clear(),
                used.clear().x(),
                end);
    }

    private CutTree sections(List<Node> nodes, int at, Stock.Place clear, Length x, Length end) {
        if (at == nodes.size()) {
            return leftover(piece(x, trim, end, farEdge()));
        }
        Length extent = problem.wood(nodes.get(at).length);
        CutTree here = strips(nodes.get(at), clear, x, extent);
        if (x.plus(extent).compareTo(end) >= 0) {
            return here;
        }
        CutTree rest = sections(nodes, at + 1, clear, x.plus(extent).plus(kerf), end);
        return new CutTree.Cut(CutDirection.ACROSS, extent, here, rest);
    }

    /** A section ripped, its bad edge first. */
    private CutTree strips(Node section, Stock.Place clear, Length x, Length extent) {
        List<Node> nodes = section.kind >= 0 || section.axis == Node.X ? List.of(section) : inOrder(section);
        Stock.Place bad = piece(x, trim, x.plus(extent), clear.y().minus(kerf));
        return before(trim, clear.y(), CutDirection.ALONG, bad, () -> strips(nodes, 0, x, clear.y(), extent));
    }

    private CutTree strips(List<Node> nodes, int at, Length x, Length y, Length extent) {
        if (at == nodes.size()) {
            return leftover(piece(x, y, x.plus(extent), farEdge()));
        }
        Length width = problem.wood(nodes.get(at).width);
        CutTree here = writer.tree(nodes.get(at), x, y, parts, offcuts);
        if (y.plus(width).compareTo(farEdge()) >= 0) {
            return here;
        }
        CutTree rest = strips(nodes, at + 1, x, y.plus(width).plus(kerf), extent);
        return new CutTree.Cut(CutDirection.ALONG, width, here, rest);
    }

    private static Stock.Place piece(Length x, Length y, Length farX, Length farY) {
        return new Stock.Place(x, y, farX.minus(x), farY.minus(y));
    }

    private CutTree leftover(Stock.Place at) {
        if (!at.length().isPositive() || !at.width().isPositive()) {
            return new CutTree.Nothing();
        }
        boolean keep =
                problem.job.keep().worth(at.length(), at.width()) && ClearRuns.worth(board, at, problem.job.keep());
        CutTree.Offcut offcut = new CutTree.Offcut(at.x(), at.y(), at.length(), at.width(), keep);
        if (keep) {
            offcuts.add(offcut);
        }
        return offcut;
    }
}
