package scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** Rectangles with round corners, as short chords. */
final class Rounded {
    private static final int CHORDS = 5;

    private Rounded() {}

    /** Its corners in order; square where the radius is nothing. */
    static List<Spot> corners(Hatch.Field field, double radius) {
        double r = Math.min(radius, Math.min(field.right() - field.left(), field.bottom() - field.top()) / 2);
        if (r <= 0) {
            return List.of(
                    new Spot(field.left(), field.top()),
                    new Spot(field.right(), field.top()),
                    new Spot(field.right(), field.bottom()),
                    new Spot(field.left(), field.bottom()));
        }
        List<Spot> spots = new ArrayList<>();
        quarter(spots, field.right() - r, field.top() + r, r, -90);
        quarter(spots, field.right() - r, field.bottom() - r, r, 0);
        quarter(spots, field.left() + r, field.bottom() - r, r, 90);
        quarter(spots, field.left() + r, field.top() + r, r, 180);
        return spots;
    }

    private static void quarter(List<Spot> spots, double x, double y, double r, double from) {
        for (int i = 0; i <= CHORDS; i++) {
            double angle = Math.toRadians(from + 90.0 * i / CHORDS);
            spots.add(new Spot(x + r * Math.cos(angle), y + r * Math.sin(angle)));
        }
    }
}
