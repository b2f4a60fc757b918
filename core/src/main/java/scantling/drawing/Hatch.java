package scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** Hatches as real lines, cut off at the rectangle they fill. */
final class Hatch {
    private static final double STEP = 0.8;
    /** How far below what is drawn the middle of the tree lies. */
    private static final double PITH = 40;

    /** A rectangle on paper. */
    record Field(double left, double top, double right, double bottom) {
        boolean holds(Spot spot) {
            return spot.x() >= left && spot.x() <= right && spot.y() >= top && spot.y() <= bottom;
        }

        boolean meets(Field other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean isLevel() {
            return right - left >= bottom - top;
        }
    }

    private Hatch() {}

    /** Growth rings: solid wood cut across its grain. Only the turns of a ring that may lie in the field are gone through. */
    static void rings(Sketch sketch, Field field) {
        double y = field.bottom + PITH;
        double half = (field.right - field.left) / 2;
        double far = Math.hypot(2 * half, y - field.top);
        for (double r = 42; r <= far; r += 4.5) {
            double from = Math.max(Math.asin(Math.min(1, PITH / r)), Math.acos(Math.min(1, half / r)));
            double to = r > y - field.top ? Math.asin((y - field.top) / r) : Math.PI / 2;
            if (to >= Math.PI / 2) {
                arc(sketch, field, r, from, Math.PI - from);
            } else if (from <= to) {
                arc(sketch, field, r, from, to);
                arc(sketch, field, r, Math.PI - to, Math.PI - from);
            }
        }
    }

    /** Turns of a ring around the pith, which lies below the field. */
    private static void arc(Sketch sketch, Field field, double r, double from, double to) {
        double x = (field.left + field.right) / 2;
        double y = field.bottom + PITH;
        double turn = STEP / r;
        List<Spot> arc = new ArrayList<>();
        for (long i = (long) Math.floor(from / turn); i * turn <= to + turn; i++) {
            arc.add(new Spot(x + r * Math.cos(i * turn), y - r * Math.sin(i * turn)));
        }
        clipped(sketch, field, arc, Sketch.HAIR);
    }

    /** Long grain: solid wood cut along its grain. */
    static void waves(Sketch sketch, Field field) {
        boolean level = field.isLevel();
        double length = level ? field.right - field.left : field.bottom - field.top;
        double width = level ? field.bottom - field.top : field.right - field.left;
        for (double off = 2.5; off < width; off += 4) {
            List<Spot> wave = new ArrayList<>();
            for (double t = 0; t <= length; t += 2) {
                double sway = off + Math.sin(t / 13 + off) * 0.8;
                wave.add(
                        level
                                ? new Spot(field.left + t, field.top + sway)
                                : new Spot(field.left + sway, field.top + t));
            }
            clipped(sketch, field, wave, Sketch.HAIR);
        }
    }

    /** Plywood: five plies, every second one ticked across. */
    static void plies(Sketch sketch, Field field) {
        boolean level = field.isLevel();
        double length = level ? field.right - field.left : field.bottom - field.top;
        double width = level ? field.bottom - field.top : field.right - field.left;
        double ply = width / 5;
        for (int i = 1; i < 5; i++) {
            sketch.line(at(field, level, 0, i * ply), at(field, level, length, i * ply), Sketch.HAIR);
        }
        for (int i = 1; i < 5; i += 2) {
            for (double t = 2.5; t < length; t += 2.5) {
                sketch.line(at(field, level, t, i * ply), at(field, level, t, (i + 1) * ply), Sketch.HAIR);
            }
        }
    }

    /** Fibreboard and veneered panels: dots. */
    static void dots(Sketch sketch, Field field) {
        int row = 0;
        for (double y = field.top + 2; y < field.bottom - 0.5; y += 3.5) {
            for (double x = field.left + (row % 2 == 0 ? 2 : 4); x < field.right - 0.8; x += 4) {
                sketch.line(new Spot(x, y), new Spot(x + 0.8, y), 0.9);
            }
            row++;
        }
    }

    /** Slanting lines: an offcut that is kept. */
    static void slant(Sketch sketch, Field field, double step) {
        for (double c = field.left + field.top + step; c < field.right + field.bottom; c += step) {
            double from = Math.max(field.left, c - field.bottom);
            double to = Math.min(field.right, c - field.top);
            if (to > from) {
                sketch.line(new Spot(from, c - from), new Spot(to, c - to), Sketch.HAIR);
            }
        }
    }

    private static Spot at(Field field, boolean level, double along, double off) {
        return level ? new Spot(field.left + along, field.top + off) : new Spot(field.left + off, field.top + along);
    }

    private static void clipped(Sketch sketch, Field field, List<Spot> line, double weight) {
        List<Spot> run = new ArrayList<>();
        for (Spot spot : line) {
            if (field.holds(spot)) {
                run.add(spot);
            } else {
                end(sketch, run, weight);
            }
        }
        end(sketch, run, weight);
    }

    private static void end(Sketch sketch, List<Spot> run, double weight) {
        if (run.size() > 1) {
            sketch.path(List.copyOf(run), weight);
        }
        run.clear();
    }
}
