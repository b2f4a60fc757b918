package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import scantling.measure.Length;
import scantling.stock.Defect;

/**
 * How a board with defects can be cut up so that none lies in what is used. Across a defect of the whole width it is cut on
 * both sides. Beside a defect at an edge a stretch of it is narrower; how long that stretch is can be chosen, so there are
 * several ways, and the search takes the one that serves its parts best.
 */
final class ClearRuns {
    /** No saw takes a strip off that is thinner. */
    private static final Length THINNEST = Length.mm(1);
    /** Shorter stretches are of no use. */
    private static final Length SHORTEST = Length.mm(20);

    private static final int MOST_PLACES = 12;
    private static final int MOST_WAYS = 48;

    private final Stock.BoardStock board;
    private final Length kerf;
    private final Length trim;
    private final Length least;
    private final Length farEnd;
    private final TreeSet<Length> lengths = new TreeSet<>(Comparator.reverseOrder());

    private ClearRuns(Stock.BoardStock board, Saw saw, List<CutPart> parts) {
        this.board = board;
        this.kerf = saw.kerf();
        this.trim = saw.trimOf(board);
        this.least = kerf.plus(THINNEST);
        this.farEnd = board.length().minus(trim);
        parts.forEach(part -> lengths.add(part.length()));
    }

    /** Every way, each as its clear stretches from the near end on; one way at least, of no stretch when nothing is clear. */
    static List<List<Stock.Place>> of(Stock.BoardStock board, Saw saw, List<CutPart> parts) {
        ClearRuns runs = new ClearRuns(board, saw, parts);
        List<List<List<Stock.Place>>> byRun = runs.intervals().stream()
                .map(run -> runs.ways(run.from(), run.to()))
                .toList();
        Set<List<Stock.Place>> ways = new LinkedHashSet<>();
        ways.add(runs.joined(byRun, -1, 0));
        for (int run = 0; run < byRun.size(); run++) {
            for (int way = 1; way < byRun.get(run).size() && ways.size() < MOST_WAYS; way++) {
                ways.add(runs.joined(byRun, run, way));
            }
        }
        for (int way = 1; way < MOST_PLACES && ways.size() < MOST_WAYS; way++) {
            ways.add(runs.joinedAll(byRun, way));
        }
        return List.copyOf(ways);
    }

    private record Run(Length from, Length to) {}

    /** The first way of every run, but one of them in another way. */
    private List<Stock.Place> joined(List<List<List<Stock.Place>>> byRun, int other, int way) {
        List<Stock.Place> all = new ArrayList<>();
        for (int run = 0; run < byRun.size(); run++) {
            all.addAll(byRun.get(run).get(run == other ? way : 0));
        }
        return all;
    }

    private List<Stock.Place> joinedAll(List<List<List<Stock.Place>>> byRun, int way) {
        List<Stock.Place> all = new ArrayList<>();
        byRun.forEach(run -> all.addAll(run.get(Math.min(way, run.size() - 1))));
        return all;
    }

    /** The stretches between defects of the whole width, so far apart that what lies between can be sawn out. */
    private List<Run> intervals() {
        List<Run> runs = new ArrayList<>();
        Length start = trim;
        Length last = trim.minus(kerf);
        for (Defect one : sorted(Defect.Edge.WHOLE)) {
            Length from = one.from().min(farEnd);
            if (from.compareTo(start) > 0) {
                runs.add(new Run(start, from));
                last = from;
            }
            start = start.max(behind(last, one.to().min(farEnd)));
        }
        if (start.compareTo(farEnd) < 0) {
            runs.add(new Run(start, farEnd));
        }
        return runs;
    }

    /** Where the saw can begin anew at or behind a place, the last stretch having ended before it. */
    private Length behind(Length last, Length place) {
        Length cut = last.plus(kerf);
        return place.compareTo(cut) <= 0 ? cut : place.max(cut.plus(least));
    }

    private List<Defect> sorted(Defect.Edge edge) {
        return board.defects().stream()
                .filter(one -> one.edge() == edge && one.to().compareTo(trim) > 0)
                .sorted(Comparator.comparing(Defect::from).thenComparing(Defect::to))
                .toList();
    }

    /** One stretch cut apart at a few places: at all ends of its defects first, then nowhere, then at one or two places. */
    private List<List<Stock.Place>> ways(Length from, Length to) {
        List<Length> ends = ends(from, to);
        Set<List<Stock.Place>> ways = new LinkedHashSet<>();
        ways.add(cut(from, to, ends));
        ways.add(cut(from, to, List.of()));
        List<Length> places = places(from, to, ends);
        for (int i = 0; i < places.size() && ways.size() < MOST_WAYS; i++) {
            ways.add(cut(from, to, List.of(places.get(i))));
        }
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size() && ways.size() < MOST_WAYS; j++) {
                ways.add(cut(from, to, List.of(places.get(i), places.get(j))));
            }
        }
        return List.copyOf(ways);
    }

    private List<Length> ends(Length from, Length to) {
        TreeSet<Length> ends = new TreeSet<>();
        for (Defect.Edge edge : List.of(Defect.Edge.NEAR, Defect.Edge.FAR)) {
            for (Defect one : sorted(edge)) {
                ends.add(one.from());
                // The saw takes its kerf behind the place, so a cut at a defect's end may lie in the defect.
                ends.add(one.to().minus(kerf));
            }
        }
        return ends.stream()
                .filter(end -> end.compareTo(from) > 0 && end.compareTo(to) < 0)
                .toList();
    }

    /** Where it may be worth cutting: the ends of defects, and so far from there as a part is long. */
    private List<Length> places(Length from, Length to, List<Length> ends) {
        if (ends.isEmpty()) {
            return List.of();
        }
        Set<Length> places = new LinkedHashSet<>(ends);
        List<Length> starts = new ArrayList<>(List.of(from));
        ends.forEach(end -> starts.add(end.plus(kerf)));
        for (Length start : starts) {
            for (Length length : lengths) {
                Length place = start.plus(length);
                if (place.compareTo(to) < 0 && places.size() < MOST_PLACES) {
                    places.add(place);
                }
            }
        }
        return List.copyOf(places);
    }

    private List<Stock.Place> cut(Length from, Length to, List<Length> at) {
        List<Stock.Place> clear = new ArrayList<>();
        Length start = from;
        for (Length place : at.stream().sorted().toList()) {
            if (place.compareTo(start) > 0) {
                add(clear, start, place);
                start = place.plus(kerf);
            }
        }
        add(clear, start, to);
        return clear;
    }

    private void add(List<Stock.Place> clear, Length from, Length to) {
        Length low = trim;
        Length high = board.width().minus(trim);
        for (Defect one : board.defects()) {
            if (one.edge() != Defect.Edge.WHOLE
                    && one.from().compareTo(to) < 0
                    && one.to().compareTo(from) > 0) {
                boolean near = one.edge() == Defect.Edge.NEAR;
                low = near ? low.max(one.deep().max(trim.plus(least))) : low;
                high = near ? high : high.min(board.width().minus(one.deep()));
            }
        }
        if (to.minus(from).compareTo(SHORTEST) >= 0 && high.compareTo(low) > 0) {
            clear.add(new Stock.Place(from, low, to.minus(from), high.minus(low)));
        }
    }

    /** Whether a piece of a board has a clear stretch that is worth keeping. */
    static boolean worth(Stock.BoardStock board, Stock.Place piece, CutJob.Keep keep) {
        Stock.BoardStock alone = (Stock.BoardStock) board.inHand("left over", piece);
        return of(alone, Saw.of(Length.ZERO), List.of()).stream()
                .flatMap(List::stream)
                .anyMatch(clear -> keep.worth(clear.length(), clear.width()));
    }
}
