package scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a drawing that is larger than a sheet into tiles with an overlap. Two tiles are joined by laying their crosses on
 * each other. A tile is a drawing itself: the marks that reach into its window, cut off at its edges.
 */
public final class Tiling {
    private static final double CROSS = 10;

    private final Drawing whole;
    private final double width;
    private final double height;
    private final double overlap;

    private Tiling(Drawing whole, double widthMm, double heightMm, double overlapMm) {
        this.whole = whole;
        this.width = widthMm * Scale.UNITS_PER_MM;
        this.height = heightMm * Scale.UNITS_PER_MM;
        this.overlap = overlapMm * Scale.UNITS_PER_MM;
    }

    /** Row by row from the left upper corner; the drawing itself when one sheet holds it. All sizes in mm of paper. */
    public static List<Drawing> of(Drawing whole, double widthMm, double heightMm, double overlapMm) {
        if (whole.paperWidth() <= widthMm && whole.paperHeight() <= heightMm) {
            return List.of(whole);
        }
        return new Tiling(whole, widthMm, heightMm, overlapMm).tiles();
    }

    private List<Drawing> tiles() {
        int columns = count(whole.width(), width);
        int rows = count(whole.height(), height);
        List<Drawing> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                tiles.add(tile(row, column, rows, columns));
            }
        }
        return List.copyOf(tiles);
    }

    private int count(double whole, double one) {
        return whole <= one ? 1 : (int) Math.ceil((whole - overlap) / (one - overlap));
    }

    private Drawing tile(int row, int column, int rows, int columns) {
        double left = whole.left() + column * (width - overlap);
        double top = whole.top() + row * (height - overlap);
        Hatch.Field window = new Hatch.Field(
                left,
                top,
                left + Math.min(width, whole.left() + whole.width() - left),
                top + Math.min(height, whole.top() + whole.height() - top));
        double half = overlap / 2;
        Hatch.Field own = new Hatch.Field(
                column == 0 ? window.left() : window.left() + half,
                row == 0 ? window.top() : window.top() + half,
                column == columns - 1 ? window.right() : window.right() - half,
                row == rows - 1 ? window.bottom() : window.bottom() - half);
        List<Mark> marks = new ArrayList<>(whole.marks().stream()
                .filter(mark -> belongs(mark, window, own))
                .toList());
        marks.addAll(joins(window, row, column, rows, columns));
        String title = "%s, tile %d of %d".formatted(whole.title(), row * columns + column + 1, rows * columns);
        return new Drawing(
                title,
                whole.scale(),
                window.left(),
                window.top(),
                window.right() - window.left(),
                window.bottom() - window.top(),
                marks);
    }

    /** A line wherever it reaches in; words and figures on the one tile that holds their middle, and so all of them. */
    private static boolean belongs(Mark mark, Hatch.Field window, Hatch.Field own) {
        Hatch.Field reach = Reach.of(mark);
        if (mark instanceof Mark.Line || mark instanceof Mark.Circle) {
            return reach.meets(window);
        }
        return own.holds(new Spot((reach.left() + reach.right()) / 2, (reach.top() + reach.bottom()) / 2));
    }

    /** A cross in the middle of each overlap's two ends, and what lies beyond. */
    private List<Mark> joins(Hatch.Field window, int row, int column, int rows, int columns) {
        List<Mark> marks = new ArrayList<>();
        double middle = overlap / 2;
        double inset = CROSS + 2;
        if (column > 0 || column < columns - 1) {
            for (double y : List.of(window.top() + inset, window.bottom() - inset)) {
                if (column > 0) {
                    cross(marks, window.left() + middle, y);
                }
                if (column < columns - 1) {
                    cross(marks, window.right() - middle, y);
                }
            }
        }
        if (rows > 1) {
            for (double x : List.of(window.left() + inset, window.right() - inset)) {
                if (row > 0) {
                    cross(marks, x, window.top() + middle);
                }
                if (row < rows - 1) {
                    cross(marks, x, window.bottom() - middle);
                }
            }
        }
        return marks;
    }

    private static void cross(List<Mark> marks, double x, double y) {
        Mark.Pen pen = Mark.Pen.solid(Sketch.HAIR);
        marks.add(new Mark.Line(List.of(new Spot(x - CROSS, y), new Spot(x + CROSS, y)), false, false, pen));
        marks.add(new Mark.Line(List.of(new Spot(x, y - CROSS), new Spot(x, y + CROSS)), false, false, pen));
    }
}
