package scantling.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import scantling.measure.Dim;

/**
 * A template at true size with how it is laid on the part.
 *
 * @param drawing the template
 * @param from how far from the near end its first work stands, where neither an end nor the middle of the part is on it; such a
 *     template serves wherever along a part the same work stands
 */
public record Laid(Drawing drawing, Optional<Dim> from) {
    /** What two templates have in common that are one: all that is drawn, or, where it is moved along a part, all but from where. */
    public String likeness() {
        return from.isEmpty()
                ? String.format(Locale.ROOT, "%.1f %.1f %s", drawing.width(), drawing.height(), drawing.marks())
                : "along " + moved();
    }

    /** From its leftmost line; the figures along the part are left out. */
    private String moved() {
        double left = drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Line || mark instanceof Mark.Circle)
                .mapToDouble(mark -> Reach.of(mark).left())
                .min()
                .orElse(0);
        return drawing.marks().stream().map(mark -> told(mark, left)).collect(Collectors.joining(" "));
    }

    private static String told(Mark mark, double left) {
        if (mark instanceof Mark.Line line) {
            return spots(line.spots(), left) + line.pen();
        }
        if (mark instanceof Mark.Circle circle) {
            return spots(List.of(circle.centre()), left) + circle.radius();
        }
        if (mark instanceof Mark.Figure figure) {
            return figure.turned()
                    ? ""
                    : spots(List.of(figure.spot()), left) + figure.words().words();
        }
        Mark.Words words = (Mark.Words) mark;
        return spots(List.of(words.spot()), left) + words.words();
    }

    private static String spots(List<Spot> spots, double left) {
        return spots.stream()
                .map(spot -> String.format(Locale.ROOT, "%.0f,%.0f", spot.x() - left, spot.y()))
                .collect(Collectors.joining(";"));
    }
}
