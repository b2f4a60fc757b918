package scantling.drawing;

import java.util.List;

/** Numbers beside the work on a part, each where it covers neither work nor another number. */
final class WorkNumbers {
    private static final double SIZE = 10.5;
    private static final double CLEAR = 3;

    private final Sketch sketch;
    private final Taken taken;

    WorkNumbers(Sketch sketch, Taken taken) {
        this.sketch = sketch;
        this.taken = taken;
    }

    /** Writes a number inside a field that holds it, else at the first clear place around it. */
    void write(String number, Hatch.Field field) {
        double wide = Sketch.width(number, SIZE) + CLEAR;
        double high = SIZE + CLEAR;
        double x = (field.left() + field.right()) / 2;
        double y = (field.top() + field.bottom()) / 2;
        if (field.right() - field.left() > wide + 2 * CLEAR && field.bottom() - field.top() > high + CLEAR) {
            put(number, about(x, y, wide, high), true);
            return;
        }
        double right = field.right() + wide / 2 + 1;
        double left = field.left() - wide / 2 - 1;
        double above = field.top() - high / 2;
        double below = field.bottom() + high / 2;
        List<Hatch.Field> places = List.of(
                about(right, above, wide, high),
                about(x, above, wide, high),
                about(right, y, wide, high),
                about(left, above, wide, high),
                about(right, below, wide, high),
                about(left, y, wide, high),
                about(x, below, wide, high),
                about(left, below, wide, high),
                about(right + wide, above, wide, high),
                about(left - wide, above, wide, high),
                about(right + wide, below, wide, high),
                about(left - wide, below, wide, high),
                about(x, above - high, wide, high),
                about(x, below + high, wide, high));
        put(number, places.stream().filter(taken::isClear).findFirst().orElse(places.get(0)), false);
    }

    private void put(String number, Hatch.Field place, boolean onWork) {
        double x = (place.left() + place.right()) / 2;
        double y = place.bottom() - CLEAR;
        if (onWork) {
            sketch.blank(place);
        }
        sketch.words(new Spot(x, y), number, SIZE, Mark.Anchor.MIDDLE);
        taken.take(place);
    }

    private static Hatch.Field about(double x, double y, double wide, double high) {
        return new Hatch.Field(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2);
    }
}
