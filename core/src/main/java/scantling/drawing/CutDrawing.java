package scantling.drawing;

import java.util.List;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** A cutting diagram: what comes out of a board or sheet, the cuts numbered in their order, offcuts hatched. */
public final class CutDrawing {
    private static final double PAPER_LONG = 158;
    private static final double PAPER_WIDE = 120;
    private static final double ROOM = 4;

    private final Sketch sketch;
    private final Scale scale;
    private final LengthFormat format;

    private CutDrawing(CutSheet sheet, LengthFormat format) {
        this.sketch = new Sketch(format);
        this.format = format;
        this.scale = Scale.fitting(sheet.length().toMillimetres(), PAPER_LONG)
                .and(Scale.fitting(sheet.width().toMillimetres(), PAPER_WIDE));
    }

    /** Draws it. */
    public static Drawing of(CutSheet sheet, LengthFormat format) {
        CutDrawing drawing = new CutDrawing(sheet, format);
        drawing.sketch.shape(drawing.corners(Length.ZERO, Length.ZERO, sheet.length(), sheet.width()), Sketch.OUTLINE);
        sheet.offcuts().forEach(drawing::offcut);
        sheet.pieces().forEach(drawing::piece);
        sheet.cuts().forEach(drawing::cut);
        return drawing.sketch.finish(sheet.title(), drawing.scale);
    }

    private void piece(CutSheet.Placed placed) {
        sketch.shape(corners(placed.x(), placed.y(), placed.length(), placed.width()), Sketch.EDGE * 1.2);
        label(placed, placed.label(), format.format(placed.length()) + " × " + format.format(placed.width()));
    }

    private void offcut(CutSheet.Placed placed) {
        Spot low = spot(placed.x(), placed.y());
        Spot high = spot(placed.x().plus(placed.length()), placed.y().plus(placed.width()));
        Hatch.slant(sketch, new Hatch.Field(low.x(), high.y(), high.x(), low.y()), 11);
        sketch.edge(corners(placed.x(), placed.y(), placed.length(), placed.width()), Sketch.EDGE, false);
    }

    private void label(CutSheet.Placed placed, String mark, String size) {
        double wide = units(placed.length());
        double high = units(placed.width());
        Spot middle = spot(placed.x(), placed.y()).shifted(wide / 2, -high / 2);
        boolean both = high >= 2 * Sketch.TEXT + ROOM;
        if (Sketch.width(size, 11.5) + ROOM <= wide && both) {
            sketch.words(middle.shifted(0, -2), mark, Sketch.TEXT, "middle");
            sketch.words(middle.shifted(0, 11), size, 11.5, "middle");
        } else if (high >= 10) {
            sketch.words(middle.shifted(0, 4), mark, Math.min(Sketch.TEXT, high), "middle");
        }
    }

    /** The cut, its number where the saw goes in, and what the fence is set to beside that. */
    private void cut(CutSheet.Cut cut) {
        Spot from = spot(cut.from().x(), cut.from().y());
        Spot to = spot(cut.to().x(), cut.to().y());
        sketch.dashed(from, to, 1.6);
        boolean upright = cut.from().x().equals(cut.to().x());
        double lower = Math.max(from.y(), to.y());
        double left = Math.min(from.x(), to.x());
        Spot circle = upright ? new Spot(from.x(), lower + 12) : new Spot(left - 12, from.y());
        sketch.circle(circle, 9, Sketch.EDGE * 1.2);
        sketch.words(circle.shifted(0, 4), Integer.toString(cut.order()), 11.5, "middle");
        Spot fence = upright ? circle.shifted(0, 21) : circle.shifted(-12, 4);
        sketch.words(fence, format.format(cut.fence()), 10.5, upright ? "middle" : "end");
    }

    private List<Spot> corners(Length x, Length y, Length length, Length width) {
        return List.of(
                spot(x, y), spot(x.plus(length), y), spot(x.plus(length), y.plus(width)), spot(x, y.plus(width)));
    }

    private Spot spot(Length x, Length y) {
        return new Spot(units(x), -units(y));
    }

    private double units(Length length) {
        return length.toMillimetres() * scale.unitsPerMm();
    }
}
