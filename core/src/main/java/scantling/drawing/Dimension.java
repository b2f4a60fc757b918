package scantling.drawing;

import java.util.List;
import scantling.measure.Dim;

/** Dimension lines: oblique ticks, the figure above the line, read from the foot or from the right. */
final class Dimension {
    private static final double TICK = 4;
    private static final double OVERRUN = 4;
    private static final double GAP = 3;

    private Dimension() {}

    /** A level one between two places; extension lines come from the height {@code edge}. */
    static void level(Sketch sketch, double from, double to, double edge, double at, Dim dim) {
        double away = Math.signum(at - edge);
        for (double x : List.of(from, to)) {
            sketch.line(new Spot(x, edge + away * GAP), new Spot(x, at + away * OVERRUN), Sketch.HAIR);
            sketch.line(new Spot(x - TICK, at + TICK), new Spot(x + TICK, at - TICK), 1.5);
        }
        sketch.line(new Spot(from, at), new Spot(to, at), Sketch.FINE);
        double wide = sketch.width(dim) + 2 * TICK;
        double middle = to - from >= wide ? (from + to) / 2 : to + wide / 2 + TICK;
        sketch.figure(new Spot(middle, at - 5), dim, false);
    }

    /** A level one in a row of many under the drawing: a figure wider than its line is turned and stands below it. */
    static void levelInRow(Sketch sketch, double from, double to, double at, Dim dim) {
        if (to - from >= sketch.width(dim) + 2 * TICK) {
            level(sketch, from, to, 0, at, dim);
            return;
        }
        for (double x : List.of(from, to)) {
            sketch.line(new Spot(x, GAP), new Spot(x, at + OVERRUN), Sketch.HAIR);
            sketch.line(new Spot(x - TICK, at + TICK), new Spot(x + TICK, at - TICK), 1.5);
        }
        sketch.line(new Spot(from, at), new Spot(to, at), Sketch.FINE);
        sketch.figure(new Spot((from + to) / 2 + TICK, at + 2 * OVERRUN + sketch.width(dim) / 2), dim, true);
    }

    /** An upright one between two heights, the lower first; extension lines come from the place {@code edge}. */
    static void upright(Sketch sketch, double from, double to, double edge, double at, Dim dim) {
        uprightLine(sketch, from, to, edge, at);
        double high = sketch.width(dim) + 2 * TICK;
        double middle = from - to >= high ? (from + to) / 2 : to - high / 2 - TICK;
        sketch.figure(new Spot(at - 5, middle), dim, true);
    }

    /** An upright one in a column of many beside the drawing: a figure longer than its line stands level, outside it. */
    static void uprightInColumn(Sketch sketch, double from, double to, double edge, double at, Dim dim) {
        if (from - to >= sketch.width(dim) + 2 * TICK) {
            upright(sketch, from, to, edge, at, dim);
            return;
        }
        uprightLine(sketch, from, to, edge, at);
        double away = Math.signum(at - edge);
        double aside = at + away * (2 * OVERRUN + sketch.width(dim) / 2);
        sketch.figure(new Spot(aside, (from + to) / 2 + TICK), dim, false);
    }

    private static void uprightLine(Sketch sketch, double from, double to, double edge, double at) {
        double away = Math.signum(at - edge);
        for (double y : List.of(from, to)) {
            sketch.line(new Spot(edge + away * GAP, y), new Spot(at + away * OVERRUN, y), Sketch.HAIR);
            sketch.line(new Spot(at - TICK, y + TICK), new Spot(at + TICK, y - TICK), 1.5);
        }
        sketch.line(new Spot(at, from), new Spot(at, to), Sketch.FINE);
    }
}
