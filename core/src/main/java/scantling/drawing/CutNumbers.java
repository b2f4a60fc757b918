package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The numbers of the cuts on a diagram. On a wide sheet each stands on its cut where nothing else is written. On a board
 * too narrow for that, numbers of cuts across stand in a row above it and those of cuts along in a row below, each with a
 * line to its cut.
 */
final class CutNumbers {
    static final double RADIUS = 8;
    static final double SMALL = 10.5;

    private static final double NARROW = 72;
    private static final double AWAY = 14;
    private static final double APART = 2 * RADIUS + 2;
    /** Where along a cut its number may stand, best first. */
    private static final List<Double> PLACES =
            List.of(0.08, 0.92, 0.2, 0.8, 0.3, 0.7, 0.4, 0.6, 0.5, 0.14, 0.86, 0.25, 0.75, 0.35, 0.65, 0.02, 0.98);

    /** The same for a number that stands aside. */
    private static final List<Double> SHARES = List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9);

    private final Sketch sketch;
    private final double high;
    private final List<Taken> taken = new ArrayList<>();
    private final List<Line> aside = new ArrayList<>();

    /** A place already written on. @param wide half its width @param high half its height */
    private record Taken(Spot middle, double wide, double high) {}

    /** A cut whose number stands aside. */
    private record Line(int order, Spot from, Spot to) {
        boolean isAcross() {
            return Math.abs(from.x() - to.x()) < Math.abs(from.y() - to.y());
        }

        Spot middle() {
            return new Spot((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        }
    }

    /** For a diagram of stock so high on paper, its foot at nought. */
    CutNumbers(Sketch sketch, double high) {
        this.sketch = sketch;
        this.high = high;
    }

    /** Keeps a place free of numbers. @param wide half its width @param high half its height */
    void keepClear(Spot middle, double wide, double high) {
        taken.add(new Taken(middle, wide, high));
    }

    void cut(int order, Spot from, Spot to) {
        if (high < NARROW) {
            aside.add(new Line(order, from, to));
            return;
        }
        Spot place = PLACES.stream()
                .map(share -> from.shifted((to.x() - from.x()) * share, (to.y() - from.y()) * share))
                .max(Comparator.comparingDouble(spot -> Math.min(clearance(spot), RADIUS * 2 + 2)))
                .orElse(from);
        taken.add(new Taken(place, RADIUS, RADIUS));
        number(place, order);
    }

    /** Writes what stands aside. */
    void finish() {
        row(aside.stream().filter(Line::isAcross).toList(), -high - AWAY, -high);
        row(aside.stream().filter(line -> !line.isAcross()).toList(), AWAY, 0);
    }

    private void row(List<Line> lines, double y, double edge) {
        double clear = Double.NEGATIVE_INFINITY;
        List<Line> sorted = lines.stream()
                .sorted(Comparator.comparingDouble((Line line) -> line.middle().x())
                        .thenComparing(Line::order))
                .toList();
        for (Line line : sorted) {
            Spot end = line.isAcross() ? new Spot(line.middle().x(), edge) : beside(line, clear);
            double x = Math.max(end.x(), clear);
            sketch.line(end, new Spot(x, y), Sketch.HAIR);
            number(new Spot(x, y), line.order());
            clear = x + APART;
        }
    }

    /** Where the line from a number below meets a cut along: as near its middle as no mark on the wood is struck through. */
    private Spot beside(Line line, double clear) {
        return SHARES.stream()
                .map(share -> new Spot(
                        line.from().x() + (line.to().x() - line.from().x()) * share,
                        line.middle().y()))
                .filter(spot -> spot.x() >= clear)
                .filter(spot -> taken.stream().noneMatch(mark -> strikes(spot, mark)))
                .findFirst()
                .orElse(line.middle());
    }

    private static boolean strikes(Spot from, Taken mark) {
        return Math.abs(from.x() - mark.middle().x()) < mark.wide() + 2
                && mark.middle().y() + mark.high() > from.y();
    }

    void number(Spot place, int order) {
        sketch.circle(place, RADIUS, Sketch.EDGE);
        sketch.words(place.shifted(0, 3.6), Integer.toString(order), SMALL, Mark.Anchor.MIDDLE);
    }

    /** How far a spot is from what is written already. */
    double clearance(Spot spot) {
        return taken.stream()
                .mapToDouble(other -> Math.max(
                        Math.abs(spot.x() - other.middle().x()) - other.wide(),
                        Math.abs(spot.y() - other.middle().y()) - other.high()))
                .min()
                .orElse(Double.MAX_VALUE);
    }
}
