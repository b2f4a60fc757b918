package scantling.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * The most valuable set of parts that can be cut edge to edge from a rectangle when every part may be taken as often as one
 * likes (Gilmore and Gomory 1965, over the raster points of Herz 1972). Sizes are measured in cells, rounded down for parts and
 * for stock alike, those along another than those across, which lets more fit but never less: the value is a bound from above, and exact when a cell is the unit.
 */
final class SheetKnapsack {
    /** A part in cells: as it lies, then turned; turned it has none where it may not be. */
    record Size(int length, int width, int turnedLength, int turnedWidth) {
        boolean turns() {
            return turnedLength > 0 && turnedWidth > 0;
        }
    }

    private final List<Size> parts;
    /** Positions at which cuts make sense, ascending, 0 first. */
    private final int[] alongLength;

    private final int[] alongWidth;
    private final int[] floorLength;
    private final int[] floorWidth;
    private double[] value = {};

    /** @param parts of each kind, its sizes in cells @param longest of the stock @param widest of the stock */
    SheetKnapsack(List<Size> parts, int longest, int widest) {
        this.parts = parts;
        this.alongLength = raster(parts, true, longest);
        this.alongWidth = raster(parts, false, widest);
        this.floorLength = floors(alongLength, longest);
        this.floorWidth = floors(alongWidth, widest);
    }

    /** About how many operations one table takes. */
    long work() {
        return (long) alongLength.length * alongWidth.length * (alongLength.length + alongWidth.length) / 2;
    }

    /** Sums of sizes in one direction. */
    private static int[] raster(List<Size> parts, boolean lengthwise, int whole) {
        boolean[] reached = new boolean[whole + 1];
        reached[0] = true;
        TreeSet<Integer> sizes = new TreeSet<>();
        for (Size part : parts) {
            sizes.add(lengthwise ? part.length() : part.width());
            if (part.turns()) {
                sizes.add(lengthwise ? part.turnedLength() : part.turnedWidth());
            }
        }
        for (int at = 0; at <= whole; at++) {
            if (reached[at]) {
                for (int size : sizes) {
                    if (size > 0 && at + size <= whole) {
                        reached[at + size] = true;
                    }
                }
            }
        }
        int[] points = new int[whole + 1];
        int count = 0;
        for (int at = 0; at <= whole; at++) {
            if (reached[at]) {
                points[count++] = at;
            }
        }
        return Arrays.copyOf(points, count);
    }

    private static int[] floors(int[] points, int whole) {
        int[] floors = new int[whole + 1];
        int at = 0;
        for (int size = 0; size <= whole; size++) {
            if (at + 1 < points.length && points[at + 1] == size) {
                at++;
            }
            floors[size] = at;
        }
        return floors;
    }

    /** Fills the table for prices of the kinds. */
    void solve(double[] price) {
        int across = alongWidth.length;
        value = new double[alongLength.length * across];
        for (int k = 0; k < parts.size(); k++) {
            if (price[k] > 0) {
                Size part = parts.get(k);
                put(part.length(), part.width(), price[k]);
                if (part.turns()) {
                    put(part.turnedLength(), part.turnedWidth(), price[k]);
                }
            }
        }
        Whole[] columns = new Whole[across];
        Arrays.setAll(columns, j -> new Whole());
        for (int i = 1; i < alongLength.length; i++) {
            Whole row = new Whole();
            for (int j = 1; j < across; j++) {
                fill(i, j, columns[j], row);
            }
        }
    }

    private void fill(int i, int j, Whole column, Whole row) {
        int across = alongWidth.length;
        int at = i * across + j;
        double sawnAcross = Math.max(value[at - across], bestAcross(i, j, column));
        double sawnAlong = Math.max(value[at - 1], bestAlong(i, j, row));
        double best = Math.max(value[at], Math.max(sawnAcross, sawnAlong));
        value[at] = best;
        if (best > sawnAcross) {
            column.add(i);
        }
        if (best > sawnAlong) {
            row.add(j);
        }
    }

    /**
     * The pieces of one row or column that are worth more than what cuts in its direction make of them, rising. Of all cuts in
     * that direction only those that take one of these off need be looked at: any other piece is pieces of these.
     */
    private static final class Whole {
        private int[] at = new int[8];
        private int count;

        void add(int position) {
            if (count == at.length) {
                at = Arrays.copyOf(at, 2 * count);
            }
            at[count++] = position;
        }
    }

    private void put(int l, int w, double price) {
        if (l > 0 && w > 0 && l < floorLength.length && w < floorWidth.length) {
            int at = floorLength[l] * alongWidth.length + floorWidth[w];
            value[at] = Math.max(value[at], price);
        }
    }

    private double bestAcross(int i, int j, Whole column) {
        int across = alongWidth.length;
        int whole = alongLength[i];
        double best = 0;
        for (int p = 0; p < column.count; p++) {
            int c = column.at[p];
            int rest = floorLength[whole - alongLength[c]];
            best = Math.max(best, value[c * across + j] + value[rest * across + j]);
        }
        return best;
    }

    private double bestAlong(int i, int j, Whole row) {
        int from = i * alongWidth.length;
        int whole = alongWidth[j];
        double best = 0;
        for (int p = 0; p < row.count; p++) {
            int c = row.at[p];
            best = Math.max(best, value[from + c] + value[from + floorWidth[whole - alongWidth[c]]]);
        }
        return best;
    }

    /** The value of a rectangle in cells. */
    double value(int l, int w) {
        return value[floorLength[l] * alongWidth.length + floorWidth[w]];
    }

    /** How often each kind is taken in a best set of a rectangle. */
    int[] counts(double[] price, int l, int w) {
        int[] counts = new int[parts.size()];
        trace(price, floorLength[l], floorWidth[w], counts);
        return counts;
    }

    private void trace(double[] price, int i, int j, int[] counts) {
        int across = alongWidth.length;
        double whole = value[i * across + j];
        if (whole <= 0) {
            return;
        }
        if (value[(i - 1) * across + j] == whole) {
            trace(price, i - 1, j, counts);
        } else if (value[i * across + j - 1] == whole) {
            trace(price, i, j - 1, counts);
        } else if (!isOne(price, i, j, whole, counts)) {
            traceCut(price, i, j, whole, counts);
        }
    }

    private boolean isOne(double[] price, int i, int j, double whole, int[] counts) {
        for (int k = 0; k < parts.size(); k++) {
            Size part = parts.get(k);
            boolean straight = part.length() == alongLength[i] && part.width() == alongWidth[j];
            boolean turned =
                    part.turns() && part.turnedLength() == alongLength[i] && part.turnedWidth() == alongWidth[j];
            if (price[k] == whole && (straight || turned)) {
                counts[k]++;
                return true;
            }
        }
        return false;
    }

    private void traceCut(double[] price, int i, int j, double whole, int[] counts) {
        int across = alongWidth.length;
        for (int c = 1; 2 * alongLength[c] <= alongLength[i]; c++) {
            int rest = floorLength[alongLength[i] - alongLength[c]];
            if (value[c * across + j] + value[rest * across + j] == whole) {
                trace(price, c, j, counts);
                trace(price, rest, j, counts);
                return;
            }
        }
        for (int c = 1; 2 * alongWidth[c] <= alongWidth[j]; c++) {
            int rest = floorWidth[alongWidth[j] - alongWidth[c]];
            if (value[i * across + c] + value[i * across + rest] == whole) {
                trace(price, i, c, counts);
                trace(price, i, rest, counts);
                return;
            }
        }
        throw new IllegalStateException("A value of the table has no origin.");
    }
}
