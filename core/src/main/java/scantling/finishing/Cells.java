package scantling.finishing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A rectangle on which others are laid; each spot of it keeps the strongest of what lies on it. For areas of what is
 * covered, however the covers overlap.
 */
final class Cells {
    /** What lies on a spot, the stronger the higher. */
    enum Cover {
        /** Nothing, nor anything before it. */
        NONE,
        /** Nothing, but something stands before it. */
        FACED,
        /** Wood without glue. */
        COVERED,
        /** Glue. */
        GLUED
    }

    /** A rectangle laid on. */
    record Rect(double fromX, double toX, double fromY, double toY) {
        Rect within(Rect other) {
            return new Rect(
                    Math.max(fromX, other.fromX),
                    Math.min(toX, other.toX),
                    Math.max(fromY, other.fromY),
                    Math.min(toY, other.toY));
        }

        boolean isMoreThan(double sliver) {
            return toX - fromX > sliver && toY - fromY > sliver;
        }
    }

    private record Laid(Rect rect, Cover cover) {}

    private final Rect whole;
    private final List<Laid> laid = new ArrayList<>();

    Cells(Rect whole) {
        this.whole = whole;
    }

    void lay(Rect rect, Cover cover) {
        laid.add(new Laid(rect, cover));
    }

    /** The area under each cover, by its number. */
    double[] areas() {
        double[] xs = cuts(true);
        double[] ys = cuts(false);
        int[][] strongest = new int[xs.length - 1][ys.length - 1];
        for (Laid one : laid) {
            paint(strongest, xs, ys, one);
        }
        double[] areas = new double[Cover.values().length];
        for (int x = 0; x < strongest.length; x++) {
            for (int y = 0; y < strongest[x].length; y++) {
                areas[strongest[x][y]] += (xs[x + 1] - xs[x]) * (ys[y + 1] - ys[y]);
            }
        }
        return areas;
    }

    private static void paint(int[][] strongest, double[] xs, double[] ys, Laid one) {
        for (int x = 0; x < strongest.length; x++) {
            if (xs[x] >= one.rect().fromX() && xs[x + 1] <= one.rect().toX()) {
                for (int y = 0; y < strongest[x].length; y++) {
                    if (ys[y] >= one.rect().fromY() && ys[y + 1] <= one.rect().toY()) {
                        strongest[x][y] = Math.max(strongest[x][y], one.cover().ordinal());
                    }
                }
            }
        }
    }

    private double[] cuts(boolean x) {
        TreeSet<Double> cuts = new TreeSet<>();
        cuts.add(x ? whole.fromX() : whole.fromY());
        cuts.add(x ? whole.toX() : whole.toY());
        for (Laid one : laid) {
            cuts.add(x ? one.rect().fromX() : one.rect().fromY());
            cuts.add(x ? one.rect().toX() : one.rect().toY());
        }
        return cuts.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
