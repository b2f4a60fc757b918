package scantling.hardware;

import java.util.ArrayList;
import java.util.List;
import scantling.measure.Dim;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Side;

/** Rows of spots and where they lie. */
final class Spots {
    private Spots() {}

    /** Whether a spot lies before a box, seen along one direction. */
    static boolean covers(Box box, Spot at, Axis through) {
        for (Axis axis : Axis.values()) {
            if (axis != through
                    && (at.on(axis).compareTo(box.plane(Side.of(axis, false))) < 0
                            || at.on(axis).compareTo(box.plane(Side.of(axis, true))) > 0)) {
                return false;
            }
        }
        return true;
    }

    /** From the first one on in whole pitches, none past the last. */
    static List<Dim> row(Dim first, Dim pitch, Dim last) {
        List<Dim> row = new ArrayList<>();
        for (int i = 0; ; i++) {
            Dim at = first.plus(pitch.times(i));
            if (at.compareTo(last) > 0) {
                return row;
            }
            row.add(at);
        }
    }

    /** The first and the last, and the one nearest the middle where three are wanted. */
    static <T> List<T> spread(List<T> row, int wanted) {
        if (row.size() <= wanted || row.size() <= 2) {
            return List.copyOf(row);
        }
        T first = row.get(0);
        T last = row.get(row.size() - 1);
        return wanted <= 2 ? List.of(first, last) : List.of(first, row.get((row.size() - 1) / 2), last);
    }
}
