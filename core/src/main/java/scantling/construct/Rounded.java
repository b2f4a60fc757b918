package scantling.construct;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Dim;
import scantling.space.Outline;

/** Outlines of rectangles with round corners. */
final class Rounded {
    private static final int CHORDS = 6;
    private static final long PARTS = 1_000_000;

    private Rounded() {}

    /** A rectangle whose four corners are round, each in short chords. */
    static Outline rectangle(Dim length, Dim width, Dim radius) {
        List<Outline.Corner> corners = new ArrayList<>();
        for (int i = CHORDS; i >= 0; i--) {
            corners.add(new Outline.Corner(in(radius, i, true), in(radius, i, false)));
        }
        for (int i = 0; i <= CHORDS; i++) {
            corners.add(new Outline.Corner(length.minus(in(radius, i, true)), in(radius, i, false)));
        }
        for (int i = CHORDS; i >= 0; i--) {
            corners.add(new Outline.Corner(length.minus(in(radius, i, true)), width.minus(in(radius, i, false))));
        }
        for (int i = 0; i <= CHORDS; i++) {
            corners.add(new Outline.Corner(in(radius, i, true), width.minus(in(radius, i, false))));
        }
        return new Outline(corners);
    }

    /** How far in from one edge the arc has come after so many chords: the radius less its cosine or sine. */
    private static Dim in(Dim radius, int chord, boolean along) {
        double angle = Math.PI / 2 * chord / CHORDS;
        double part = 1 - (along ? StrictMath.sin(angle) : StrictMath.cos(angle));
        return radius.share(Math.round(part * PARTS), PARTS);
    }
}
