package scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import scantling.measure.Length;

/** Writes the cuts of a board with defects: what lies between its clear stretches, and bad edges beside them, is sawn out. */
final class FlawedBoard {
    private final PlanWriter writer;
    private final Problem problem;
    private final Stock.BoardStock board;
    private final List<CutTree.Offcut> offcuts;
    private final List<PlacedPart> parts;
    private final Length kerf;
    private final Length trim;
    private final List<FlawedPlaces.Used> used = new ArrayList<>();
    private final FlawedPlaces places;

    FlawedBoard(
            PlanWriter writer,
            Problem problem,
            Bin bin,
            FlawedPlaces.Way way,
            List<PlacedPart> parts,
            List<CutTree.Offcut> offcuts) {
        this.writer = writer;
        this.problem = problem;
        this.board = (Stock.BoardStock) problem.stock(bin.type);
        this.parts = parts;
        this.offcuts = offcuts;
        this.kerf = problem.job.saw().kerf();
        this.trim = problem.job.saw().trimOf(board);
        List<Stock.Place> clear = problem.clear(bin.type);
        for (int r = 0; r < clear.size(); r++) {
            if (!bin.roots().get(r).isSpare()) {
                used.add(new FlawedPlaces.Used(clear.get(r), bin.roots().get(r)));
            }
        }
        this.places = new FlawedPlaces(problem, board, used, way);
    }

    CutTree tree() {
        return reached(trim, 0);
    }

    private Length farEdge() {
        return board.width().minus(trim);
    }

    /** What lies before a stretch is cut off, then the stretch and what is behind it. */
    private CutTree reached(Length from, int at) {
        Length start = places.start(at);
        return before(
                from, start, CutDirection.ACROSS, piece(from, trim, start.minus(kerf), farEdge()), () -> stretches(at));
    }

    /** What lies before a place is cut off; nothing is where it begins there. */
    private CutTree before(
            Length from, Length place, CutDirection direction, Stock.Place waste, Supplier<CutTree> rest) {
        if (place.compareTo(from) <= 0) {
            return rest.get();
        }
        CutTree left = leftover(waste);
        return new CutTree.Cut(direction, place.minus(kerf).minus(from), left, rest.get());
    }

    private CutTree stretches(int at) {
        List<Node> sections = used.get(at).sections();
        Length x = places.start(at);
        Length far = board.length().minus(trim);
        if (at == used.size() - 1) {
            return sections(sections, x, far, from -> leftover(piece(from, trim, far, farEdge())));
        }
        if (places.isChained(at)) {
            return sections(sections, x, far, from -> reached(from, at + 1));
        }
        Length end = places.start(at + 1).minus(kerf);
        CutTree here = sections(sections, x, end, from -> leftover(piece(from, trim, end, farEdge())));
        return new CutTree.Cut(CutDirection.ACROSS, end.minus(x), here, stretches(at + 1));
    }

    /** A stretch crosscut. @param beyond what becomes of all that lies beyond its last section, from where that begins */
    private CutTree sections(List<Node> nodes, Length x, Length end, Function<Length, CutTree> beyond) {
        if (nodes.isEmpty()) {
            return beyond.apply(x);
        }
        Length extent = problem.wood(nodes.get(0).length);
        CutTree here = ripped(nodes.get(0), x, extent);
        if (x.plus(extent).compareTo(end) >= 0) {
            return here;
        }
        CutTree rest = sections(nodes.subList(1, nodes.size()), x.plus(extent).plus(kerf), end, beyond);
        return new CutTree.Cut(CutDirection.ACROSS, extent, here, rest);
    }

    /** A section ripped, its bad edge first. */
    private CutTree ripped(Node section, Length x, Length extent) {
        Length y = places.begin(section);
        Stock.Place bad = piece(x, trim, x.plus(extent), y.minus(kerf));
        return before(trim, y, CutDirection.ALONG, bad, () -> strips(FlawedPlaces.strips(section), 0, x, y, extent));
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
