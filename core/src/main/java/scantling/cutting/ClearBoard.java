package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import scantling.measure.Length;
import scantling.stock.Defect;

/**
 * What any plan can have of a board with defects, however it is cut up: the stretches between defects over the whole width,
 * as no part lies on both sides of one, and the area that no defect takes. Sizes are those of the search, a kerf added to
 * every part; so the clear face, too, is a kerf longer and wider wherever it ends.
 */
final class ClearBoard {
    private final Problem problem;
    private final long length;
    private final Length width;
    private final Length trim;
    private final List<Defect> defects;

    ClearBoard(Problem problem, int type) {
        this.problem = problem;
        this.length = problem.stockLength[type] - problem.kerf;
        this.trim = problem.job.saw().trimOf(problem.stock(type));
        this.width = problem.stock(type).width().minus(trim.times(2));
        this.defects = problem.stock(type).defects();
    }

    /** A place along the board, from where it begins when it is trimmed. */
    private long scaled(Length at) {
        return Math.max(0, Math.min(length, problem.withKerf(at.minus(trim)) - problem.kerf));
    }

    /** The lengths of the stretches between defects over the whole width. */
    List<Long> stretches() {
        List<Long> all = new ArrayList<>();
        long from = 0;
        List<Defect> whole = defects.stream()
                .filter(defect -> defect.edge() == Defect.Edge.WHOLE)
                .sorted(Comparator.comparing(Defect::from))
                .toList();
        for (Defect defect : whole) {
            if (scaled(defect.from()) > from) {
                all.add(scaled(defect.from()) - from + problem.kerf);
            }
            from = Math.max(from, scaled(defect.to()));
        }
        if (length > from) {
            all.add(length - from + problem.kerf);
        }
        return all;
    }

    /** A slice of the board. @param length along it @param open how wide it is at most, a kerf with it */
    record Slice(long length, long open) {}

    /** The area that parts can take, their kerfs with them: slice by slice along the board. */
    double area() {
        return slices().stream()
                .mapToDouble(slice -> (double) slice.length() * slice.open())
                .sum();
    }

    /** How wide anything can be, a kerf with it. */
    long widest() {
        return slices().stream().mapToLong(Slice::open).max().orElse(0);
    }

    /** The board slice by slice: of parts that reach into one side by side, kerfs with them, widths add up to its own at most. */
    List<Slice> slices() {
        TreeSet<Long> ends = new TreeSet<>(List.of(0L, length, length + problem.kerf));
        for (Defect defect : defects) {
            for (long end : new long[] {scaled(defect.from()), scaled(defect.to())}) {
                ends.add(end);
                ends.add(Math.min(length, end + problem.kerf));
            }
        }
        List<Slice> all = new ArrayList<>();
        long from = 0;
        for (long to : ends) {
            if (to > from) {
                all.add(new Slice(to - from, open(from, to)));
            }
            from = to;
        }
        return all;
    }

    /** How wide a slice is at most, where a part that ends up to a kerf before it reaches into it with its kerf. */
    private long open(long from, long to) {
        TreeSet<Long> places = new TreeSet<>();
        places.add(from);
        places.add(Math.max(0, from - problem.kerf));
        for (Defect defect : defects) {
            long end = scaled(defect.to());
            if (end > from - problem.kerf && end < to) {
                places.add(end);
            }
        }
        Length near = width;
        Length far = width;
        for (long at : places) {
            near = near.min(taken(at, Defect.Edge.NEAR));
            far = far.min(taken(at, Defect.Edge.FAR));
        }
        Length open = width.minus(near).minus(far);
        return open.isPositive() ? problem.withKerf(open) : 0;
    }

    /** How much of the width defects take from one edge, just beyond a place; all of it where one goes over the whole width. */
    private Length taken(long at, Defect.Edge edge) {
        Length taken = Length.ZERO;
        for (Defect defect : defects) {
            boolean here = scaled(defect.from()) <= at && at < scaled(defect.to());
            if (here && defect.edge() == Defect.Edge.WHOLE) {
                return width;
            }
            if (here && defect.edge() == edge) {
                taken = taken.max(defect.deep().minus(trim).min(width));
            }
        }
        return taken;
    }
}
