package scantling.drawing;

import java.util.List;

/** How far a mark reaches on paper, words a little generously. */
final class Reach {
    private Reach() {}

    static Hatch.Field of(Mark mark) {
        if (mark instanceof Mark.Line line) {
            return of(line.spots());
        }
        if (mark instanceof Mark.Circle circle) {
            Spot centre = circle.centre();
            return around(centre, circle.radius(), circle.radius());
        }
        if (mark instanceof Mark.Figure figure) {
            double half = Sketch.width(figure.words().words(), figure.words().size());
            return around(figure.spot(), half, half);
        }
        Mark.Words words = (Mark.Words) mark;
        double wide = Sketch.width(words.words(), words.size());
        return around(words.spot(), wide, words.size());
    }

    private static Hatch.Field of(List<Spot> spots) {
        double left = spots.stream().mapToDouble(Spot::x).min().orElse(0);
        double top = spots.stream().mapToDouble(Spot::y).min().orElse(0);
        double right = spots.stream().mapToDouble(Spot::x).max().orElse(0);
        double bottom = spots.stream().mapToDouble(Spot::y).max().orElse(0);
        // A line that is level or upright has no height or width of its own; its stroke has.
        return new Hatch.Field(left - 1, top - 1, right + 1, bottom + 1);
    }

    private static Hatch.Field around(Spot centre, double wide, double high) {
        return new Hatch.Field(centre.x() - wide, centre.y() - high, centre.x() + wide, centre.y() + high);
    }
}
