package scantling.drawing;

import scantling.measure.LengthFormat;

/** A line of 50 mm that shows whether a print came out at its true size. */
public final class ProofLine {
    private static final double LONG = 50 * Scale.UNITS_PER_MM;

    private ProofLine() {}

    /** Draws it. */
    public static Drawing draw() {
        Sketch sketch = new Sketch(LengthFormat.MM);
        sketch.line(new Spot(0, 0), new Spot(LONG, 0), Sketch.EDGE);
        sketch.line(new Spot(0, -6), new Spot(0, 6), Sketch.OUTLINE);
        sketch.line(new Spot(LONG, -6), new Spot(LONG, 6), Sketch.OUTLINE);
        return sketch.finish("50 mm", new Scale(10));
    }
}
