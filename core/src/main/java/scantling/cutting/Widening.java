package scantling.cutting;

/**
 * A leftover made large enough for a part by room from beside its strip and its column, and how much that spoils: the same sum of
 * squared leftover areas as for a part that fits as it is, over all leftovers that change, with what can never be used counted double.
 */
final class Widening {
    private final Node left;
    private final Node column;
    private final Node strip;
    private final Node besideColumn;
    private final Node besideStrip;
    /** The direction in which the leftover lies beside its siblings, and sizes along it; the others are across it. */
    private final int axis;

    private final long partAlong;
    private final long partAcross;
    private final long moreAlong;
    private final long moreAcross;
    private final boolean last;

    private double squares;
    private double waste;
    private double largest;

    /** @param left at least two levels of cuts down */
    Widening(Node left, long length, long width) {
        this.left = left;
        this.column = left.parent;
        this.strip = column.parent;
        this.axis = column.axis;
        this.besideColumn = Stretch.beside(column);
        this.besideStrip = Stretch.beside(strip);
        this.partAlong = axis == Node.X ? length : width;
        this.partAcross = axis == Node.X ? width : length;
        this.moreAlong = Math.max(0, partAlong - left.extent(axis));
        this.moreAcross = Math.max(0, partAcross - left.extent(1 - axis));
        this.last = left.depth >= left.bin.stages;
    }

    /** Whether there is so much room. */
    boolean fits() {
        return (moreAlong == 0 || besideStrip != strip && besideStrip.extent(axis) >= moreAlong)
                && (moreAcross == 0 || besideColumn != column && besideColumn.extent(1 - axis) >= moreAcross);
    }

    /** What is spoilt. @param wasteWeight how much worse waste is */
    double loss(double wasteWeight) {
        change(left.area(), 0);
        if (moreAlong > 0) {
            change(besideStrip.area(), (double) (besideStrip.extent(axis) - moreAlong) * besideStrip.extent(1 - axis));
            otherColumns();
        }
        if (besideColumn != column) {
            change(
                    besideColumn.area(),
                    (double) (besideColumn.extent(1 - axis) - moreAcross) * (besideColumn.extent(axis) + moreAlong));
        }
        place();
        return squares + wasteWeight * waste * largest;
    }

    private void change(double before, double after) {
        squares += before * before - after * after;
        largest = Math.max(largest, before);
    }

    /** What is left over in the other columns grows with the strip. */
    private void otherColumns() {
        for (Node other : strip.children) {
            if (other != column && other != besideColumn) {
                double before = 0;
                for (Node child : other.children) {
                    before = child.kind == Node.LEFT ? child.area() : before;
                }
                change(before, before + (double) moreAlong * other.extent(1 - axis));
            }
        }
    }

    private void place() {
        double tail = (double) partAlong * (left.extent(1 - axis) + moreAcross - partAcross);
        double rest = (double) (left.extent(axis) + moreAlong - partAlong) * (left.extent(1 - axis) + moreAcross);
        change(0, rest);
        if (last) {
            waste = tail + (double) moreAcross * (column.extent(axis) - left.extent(axis));
        } else {
            change(0, tail);
        }
    }

    long longer() {
        return axis == Node.X ? moreAlong : moreAcross;
    }

    long wider() {
        return axis == Node.X ? moreAcross : moreAlong;
    }
}
