package scantling.drawing;

import scantling.measure.LengthFormat;

/** Lines that show whether a print came out at its true size. */
public final class ProofLine {
    private static final int SHORT = 50;
    private static final int LONG = 200;
    private static final int STEP = 10;

    private ProofLine() {}

    /** A level one of 50 mm. */
    public static Drawing draw() {
        double end = SHORT * Scale.UNITS_PER_MM;
        Sketch sketch = new Sketch(LengthFormat.MM);
        sketch.line(new Spot(0, 0), new Spot(end, 0), Sketch.EDGE);
        sketch.line(new Spot(0, -6), new Spot(0, 6), Sketch.OUTLINE);
        sketch.line(new Spot(end, -6), new Spot(end, 6), Sketch.OUTLINE);
        return sketch.finish("50 mm", new Scale(10));
    }

    /** An upright one of 200 mm, with a tick at each ten. */
    public static Drawing upright() {
        Sketch sketch = new Sketch(LengthFormat.MM);
        sketch.line(new Spot(0, 0), new Spot(0, LONG * Scale.UNITS_PER_MM), Sketch.EDGE);
        for (int mm = 0; mm <= LONG; mm += STEP) {
            double y = mm * Scale.UNITS_PER_MM;
            boolean long50 = mm % SHORT == 0;
            sketch.line(new Spot(long50 ? -8 : -4, y), new Spot(long50 ? 8 : 4, y), Sketch.EDGE);
            if (long50) {
                sketch.words(new Spot(12, y + 4), String.valueOf(mm), 10.5, Mark.Anchor.START);
            }
        }
        return sketch.finish("200 mm", new Scale(10));
    }
}
