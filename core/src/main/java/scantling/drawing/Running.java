package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import scantling.measure.Dim;

/** Running sizes: all from one small circle, each at its own tick, its figure moved on where something is in its way. */
final class Running {
    private static final double AWAY = 24;
    private static final double BESIDE = 28;
    private static final double TICK = 3;

    private static final double STEP = 2;

    private final Sketch sketch;
    private final Taken taken;

    private final boolean whole;

    Running(Sketch sketch, Taken taken) {
        this(sketch, taken, true);
    }

    private Running(Sketch sketch, Taken taken, boolean whole) {
        this.sketch = sketch;
        this.taken = taken;
        this.whole = whole;
    }

    /** Running from the edge itself, or broken because the drawing begins beyond it. */
    Running from(boolean edge) {
        return new Running(sketch, taken, edge);
    }

    /** Where they run from: a small circle, or two strokes where the line is broken off. */
    private void start(Spot zero, double along, double up) {
        if (whole) {
            sketch.circle(zero, 2.5, Sketch.EDGE);
            return;
        }
        for (double back : List.of(0.0, 3.0)) {
            Spot middle = zero.shifted(along * back, up * back);
            sketch.line(middle.shifted(-3, 3), middle.shifted(3, -3), Sketch.FINE);
        }
    }

    /** How much paper the level ones take below what they measure. */
    double room(List<Dim> dims) {
        return dims.isEmpty()
                ? 0
                : AWAY + 18 + dims.stream().mapToDouble(sketch::width).max().orElse(0);
    }

    /** How much paper the upright ones take beside what they measure. */
    double side(List<Dim> dims) {
        return dims.isEmpty()
                ? 0
                : BESIDE + dims.stream().mapToDouble(sketch::width).max().orElse(0);
    }

    /** Below a drawing, figures turned. @param zero where they start @param edge the height of the drawing's lower edge */
    void level(List<Dim> dims, double zero, double edge, ToDoubleFunction<Dim> place) {
        if (dims.isEmpty()) {
            return;
        }
        double y = edge + AWAY;
        List<Dim> fromLeft =
                dims.stream().sorted(Comparator.comparingDouble(place)).toList();
        start(new Spot(zero, y), 1, 0);
        for (Dim dim : fromLeft) {
            double x = place.applyAsDouble(dim);
            double half = sketch.width(dim) / 2;
            double at = x;
            while (!taken.isClear(turned(at, y + 13 + half, half))) {
                at += STEP;
            }
            taken.take(turned(at, y + 13 + half, half));
            sketch.line(new Spot(x, edge + 3), new Spot(x, y + TICK), Sketch.HAIR);
            sketch.line(new Spot(x, y + TICK), new Spot(at, y + 11), Sketch.HAIR);
            sketch.line(new Spot(x - TICK, y + TICK), new Spot(x + TICK, y - TICK), 1.5);
            sketch.figure(new Spot(at, y + 13 + half), dim, true);
        }
        Spot last = new Spot(
                fromLeft.stream()
                        .mapToDouble(place)
                        .boxed()
                        .max(Comparator.comparingDouble(x -> Math.abs(x - zero)))
                        .orElse(zero),
                y);
        sketch.line(new Spot(zero + Math.signum(last.x() - zero) * 2.5, y), last, Sketch.FINE);
    }

    /**
     * Beside a drawing, figures level.
     *
     * @param zero the height they start from
     * @param edge where the drawing ends at the right
     * @param upward whether they run up the paper
     */
    void upright(List<Dim> dims, double zero, double edge, boolean upward, ToDoubleFunction<Dim> place) {
        if (dims.isEmpty()) {
            return;
        }
        double x = edge + 14;
        double way = upward ? -1 : 1;
        start(new Spot(x, zero), 0, way);
        for (Dim dim : dims) {
            double y = place.applyAsDouble(dim);
            double half = sketch.width(dim) / 2;
            double at = y;
            while (!taken.isClear(level(x + 14 + half, at + 4, half))) {
                at += way * STEP;
            }
            taken.take(level(x + 14 + half, at + 4, half));
            sketch.line(new Spot(edge + 3, y), new Spot(x + TICK, y), Sketch.HAIR);
            sketch.line(new Spot(x + TICK, y), new Spot(x + 11, at), Sketch.HAIR);
            sketch.line(new Spot(x - TICK, y + TICK), new Spot(x + TICK, y - TICK), 1.5);
            sketch.figure(new Spot(x + 14 + half, at + 4), dim, false);
        }
        double last = place.applyAsDouble(dims.get(dims.size() - 1));
        sketch.line(new Spot(x, zero + way * 2.5), new Spot(x, last), Sketch.FINE);
    }

    /** A figure about a spot on its foot line, turned a quarter to the left. */
    private static Hatch.Field turned(double x, double y, double half) {
        return new Hatch.Field(x - Sketch.TEXT, y - half - 2, x + 4, y + half + 2);
    }

    private static Hatch.Field level(double x, double y, double half) {
        return new Hatch.Field(x - half - 2, y - Sketch.TEXT, x + half + 2, y + 5);
    }

    /** In order, and what is told the same only once. */
    static List<Dim> distinct(List<Dim> dims) {
        List<Dim> all = new ArrayList<>();
        dims.stream().sorted(Comparator.naturalOrder()).forEach(dim -> {
            if (all.isEmpty() || !all.get(all.size() - 1).value().equals(dim.value())) {
                all.add(dim);
            }
        });
        return all;
    }
}
