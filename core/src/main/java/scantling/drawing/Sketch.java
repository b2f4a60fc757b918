package scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;

/** A drawing while it is being drawn: collects marks and how far they reach. One drawing, one thread. */
final class Sketch {
    static final double OUTLINE = 1.7;
    static final double EDGE = 1;
    static final double FINE = 0.7;
    static final double HAIR = 0.6;
    static final double TEXT = 12.5;
    private static final double REST = 8.6;

    private static final double MEAN_GLYPH = 0.583;
    private static final double PAD = 4;

    private final LengthFormat format;
    private final List<Mark> marks = new ArrayList<>();
    private double left = Double.MAX_VALUE;
    private double top = Double.MAX_VALUE;
    private double right = -Double.MAX_VALUE;
    private double bottom = -Double.MAX_VALUE;

    Sketch(LengthFormat format) {
        this.format = format;
    }

    void line(Spot from, Spot to, double weight) {
        add(new Mark.Line(List.of(from, to), false, false, Mark.Pen.solid(weight)), from, to);
    }

    void dashed(Spot from, Spot to, double weight) {
        Mark.Pen pen = Mark.Pen.solid(weight).dashed(6, 2.6);
        add(new Mark.Line(List.of(from, to), false, false, pen), from, to);
    }

    void path(List<Spot> spots, double weight) {
        add(new Mark.Line(spots, false, false, Mark.Pen.solid(weight)), spots.toArray(Spot[]::new));
    }

    /** A closed shape, paper inside, so that it hides what was drawn before it. */
    void shape(List<Spot> spots, double weight) {
        add(new Mark.Line(spots, true, true, Mark.Pen.solid(weight)), spots.toArray(Spot[]::new));
    }

    /** Bare paper over what was drawn before. */
    void blank(Hatch.Field field) {
        add(
                new Mark.Line(Rounded.corners(field, 0), true, true, Mark.Pen.solid(0)),
                new Spot(field.left(), field.top()),
                new Spot(field.right(), field.bottom()));
    }

    /** A closed shape that is only an edge; dashed when it is on the side away. */
    void edge(List<Spot> spots, double weight, boolean hidden) {
        Mark.Pen pen = Mark.Pen.solid(weight);
        add(new Mark.Line(spots, true, false, hidden ? pen.dashed(5, 3.2) : pen), spots.toArray(Spot[]::new));
    }

    void circle(Spot centre, double radius, double weight) {
        Mark.Circle circle = new Mark.Circle(centre, radius, Mark.Pen.solid(weight));
        add(circle, centre.shifted(-radius, -radius), centre.shifted(radius, radius));
    }

    /** Words about a middle, or from a start or to an end. */
    void words(Spot spot, String words, double size, Mark.Anchor anchor) {
        double wide = width(words, size);
        double from = switch (anchor) {
            case START -> 0;
            case MIDDLE -> -wide / 2;
            case END -> -wide;
        };
        Mark.Words mark = new Mark.Words(spot, words, size, anchor, false);
        add(mark, spot.shifted(from, -size), spot.shifted(from + wide, size / 4));
    }

    /** A number as its figure: line style by origin, its path for whoever wants its sum. */
    void figure(Spot spot, Dim dim, boolean turned) {
        LengthFormat.Typeset set = format.typeset(dim.value());
        double half = width(dim) / 2;
        Origin origin = Origin.of(dim);
        double small = width(set.rest(), REST);
        // What is left over is raised behind the fraction, as an index is.
        Optional<Mark.Words> rest = set.rest().isEmpty()
                ? Optional.empty()
                : Optional.of(new Mark.Words(
                        spot.shifted(half - small, -REST / 3), set.rest(), REST, Mark.Anchor.START, false));
        Mark.Words words = rest.isEmpty()
                ? new Mark.Words(spot, set.figure(), TEXT, Mark.Anchor.MIDDLE, true)
                : new Mark.Words(spot.shifted(half - small - 1, 0), set.figure(), TEXT, Mark.Anchor.END, true);
        Spot[] reach = turned
                ? new Spot[] {spot.shifted(-TEXT, -half), spot.shifted(4, half)}
                : new Spot[] {spot.shifted(-half, -TEXT), spot.shifted(half, 4)};
        add(new Mark.Figure(spot, turned, origin, dim.findPath(), words, rest, under(origin, spot, half)), reach);
    }

    double width(Dim dim) {
        LengthFormat.Typeset set = format.typeset(dim.value());
        return width(set.figure(), TEXT) + (set.rest().isEmpty() ? 0 : width(set.rest(), REST) + 1);
    }

    Drawing finish(String title, Scale scale) {
        return new Drawing(title, scale, left - PAD, top - PAD, right - left + 2 * PAD, bottom - top + 2 * PAD, marks);
    }

    static double width(String words, double size) {
        return words.length() * MEAN_GLYPH * size;
    }

    private static Mark.Line under(Origin origin, Spot spot, double half) {
        Mark.Pen pen = Mark.Pen.solid(EDGE);
        if (origin == Origin.MEASURED) {
            double top = 1 - TEXT;
            List<Spot> box = List.of(
                    spot.shifted(-half - 2, top),
                    spot.shifted(half + 2, top),
                    spot.shifted(half + 2, 3),
                    spot.shifted(-half - 2, 3));
            return new Mark.Line(box, true, false, pen);
        }
        List<Spot> line = List.of(spot.shifted(-half, 2.6), spot.shifted(half, 2.6));
        return new Mark.Line(line, false, false, origin == Origin.GIVEN ? pen : pen.dashed(1.2, 2));
    }

    private void add(Mark mark, Spot... reach) {
        marks.add(mark);
        for (Spot spot : reach) {
            left = Math.min(left, spot.x());
            right = Math.max(right, spot.x());
            top = Math.min(top, spot.y());
            bottom = Math.max(bottom, spot.y());
        }
    }
}
