package scantling.drawing;

import java.util.List;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** A cutting diagram: what comes out of a board or sheet, the cuts numbered in their order, pieces that are cut
 * again with their letters, offcuts hatched, defects crossed out. */
public final class CutDrawing {
    private static final double PAPER_LONG = 158;
    private static final double PAPER_WIDE = 92;
    private static final double ROOM = 4;
    private static final double LETTER_STEP = 12;
    private final Sketch sketch;
    private final Scale scale;
    private final LengthFormat format;
    private final CutNumbers numbers;

    private CutDrawing(CutSheet sheet, LengthFormat format) {
        this.sketch = new Sketch(format);
        this.format = format;
        this.scale = Scale.fitting(sheet.length().toMillimetres(), PAPER_LONG)
                .and(Scale.fitting(sheet.width().toMillimetres(), PAPER_WIDE));
        this.numbers = new CutNumbers(sketch, units(sheet.width()));
    }

    /** Draws it. */
    public static Drawing of(CutSheet sheet, LengthFormat format) {
        CutDrawing drawing = new CutDrawing(sheet, format);
        drawing.sketch.shape(drawing.corners(Length.ZERO, Length.ZERO, sheet.length(), sheet.width()), Sketch.OUTLINE);
        sheet.offcuts().forEach(drawing::offcut);
        sheet.pieces().forEach(drawing::piece);
        sheet.defects().forEach(drawing::defect);
        sheet.cuts().forEach(drawing::cut);
        sheet.letters().forEach(drawing::letter);
        drawing.numbers.finish();
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
        double letters = Math.min(Sketch.TEXT, Math.max(high - 1, 5));
        if (Sketch.width(size, CutNumbers.SMALL) + ROOM <= wide && high >= 2 * Sketch.TEXT + ROOM) {
            sketch.words(middle.shifted(0, -2), mark, Sketch.TEXT, Mark.Anchor.MIDDLE);
            sketch.words(middle.shifted(0, 11), size, CutNumbers.SMALL, Mark.Anchor.MIDDLE);
            numbers.keepClear(middle, Sketch.width(size, CutNumbers.SMALL) / 2, Sketch.TEXT);
        } else {
            sketch.words(middle.shifted(0, letters / 3), mark, letters, Mark.Anchor.MIDDLE);
            numbers.keepClear(middle, Sketch.width(mark, letters) / 2, letters / 2);
        }
    }

    private void cut(CutSheet.Cut cut) {
        Spot from = spot(cut.from().x(), cut.from().y());
        Spot to = spot(cut.to().x(), cut.to().y());
        sketch.dashed(from, to, 1.6);
        numbers.cut(cut.order(), from, to);
    }

    /** What no part may have: crossed out. */
    private void defect(CutSheet.Placed bad) {
        Spot low = spot(bad.x(), bad.y());
        Spot high = spot(bad.x().plus(bad.length()), bad.y().plus(bad.width()));
        sketch.edge(corners(bad.x(), bad.y(), bad.length(), bad.width()), Sketch.EDGE * 1.2, false);
        sketch.line(low, high, Sketch.EDGE);
        sketch.line(new Spot(low.x(), high.y()), new Spot(high.x(), low.y()), Sketch.EDGE);
    }

    /** A letter in its corner; where it would stand on something else, or not on its piece, it is left to the table. */
    private void letter(CutSheet.Letter letter) {
        double in = 3 + CutNumbers.SMALL / 2 + letter.behind() * LETTER_STEP;
        Spot place = spot(letter.at().x(), letter.at().y()).shifted(in, -4);
        Spot middle = place.shifted(0, -CutNumbers.SMALL / 3);
        boolean room = in + LETTER_STEP <= units(letter.length()) && 2 * CutNumbers.SMALL <= units(letter.width());
        if (room && numbers.clearance(middle) > LETTER_STEP / 2) {
            sketch.words(place, letter.mark(), CutNumbers.SMALL, Mark.Anchor.MIDDLE);
            numbers.keepClear(middle, CutNumbers.SMALL / 2, CutNumbers.SMALL / 2);
        }
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
