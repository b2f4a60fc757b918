package scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** Places of a drawing where something is written or drawn that must stay readable. One drawing, one thread. */
final class Taken {
    private final List<Hatch.Field> fields = new ArrayList<>();

    void take(Hatch.Field field) {
        fields.add(field);
    }

    boolean isClear(Hatch.Field place) {
        return fields.stream().noneMatch(other -> other.meets(place));
    }

    /** Words about a start, a middle or an end. */
    static Hatch.Field words(Spot spot, String words, double size, Mark.Anchor anchor) {
        double wide = Sketch.width(words, size);
        double from = switch (anchor) {
            case START -> 0;
            case MIDDLE -> -wide / 2;
            case END -> -wide;
        };
        return new Hatch.Field(
                spot.x() + from - 1, spot.y() - size * 0.8, spot.x() + from + wide + 1, spot.y() + size * 0.25);
    }
}
