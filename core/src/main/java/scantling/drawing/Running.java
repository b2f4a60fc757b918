package scantling.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import scantling.measure.Dim;

/** Running sizes: all from one small circle, each at its own tick, its figure moved on where the last one is in its way. */
final class Running {
    private static final double AWAY = 24;
    private static final double TICK = 3;

    private final Sketch sketch;

    Running(Sketch sketch) {
        this.sketch = sketch;
    }

    /** How much paper the level ones take below what they measure. */
    double room(List<Dim> dims) {
        return dims.isEmpty()
                ? 0
                : AWAY + 18 + dims.stream().mapToDouble(sketch::width).max().orElse(0);
    }

    /** Below a drawing, figures turned. @param zero where they start @param edge the height of the drawing's lower edge */
    void level(List<Dim> dims, double zero, double edge, ToDoubleFunction<Dim> place) {
        if (dims.isEmpty()) {
            return;
        }
        double y = edge + AWAY;
        List<Dim> fromLeft =
                dims.stream().sorted(Comparator.comparingDouble(place)).toList();
        sketch.circle(new Spot(zero, y), 2.5, Sketch.EDGE);
        double clear = Double.NEGATIVE_INFINITY;
        for (Dim dim : fromLeft) {
            double x = place.applyAsDouble(dim);
            double at = Math.max(x, clear);
            sketch.line(new Spot(x, edge + 3), new Spot(x, y + TICK), Sketch.HAIR);
            sketch.line(new Spot(x, y + TICK), new Spot(at, y + 11), Sketch.HAIR);
            sketch.line(new Spot(x - TICK, y + TICK), new Spot(x + TICK, y - TICK), 1.5);
            sketch.figure(new Spot(at, y + 13 + sketch.width(dim) / 2), dim, true);
            clear = at + Sketch.TEXT + 4;
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
        sketch.circle(new Spot(x, zero), 2.5, Sketch.EDGE);
        double clear = Double.NEGATIVE_INFINITY;
        for (Dim dim : dims) {
            double y = place.applyAsDouble(dim);
            double at = Math.max(way * y, clear);
            sketch.line(new Spot(edge + 3, y), new Spot(x + TICK, y), Sketch.HAIR);
            sketch.line(new Spot(x + TICK, y), new Spot(x + 11, way * at), Sketch.HAIR);
            sketch.line(new Spot(x - TICK, y + TICK), new Spot(x + TICK, y - TICK), 1.5);
            sketch.figure(new Spot(x + 14 + sketch.width(dim) / 2, way * at + 4), dim, false);
            clear = at + Sketch.TEXT + 5;
        }
        double last = place.applyAsDouble(dims.get(dims.size() - 1));
        sketch.line(new Spot(x, zero + way * 2.5), new Spot(x, last), Sketch.FINE);
    }
}
