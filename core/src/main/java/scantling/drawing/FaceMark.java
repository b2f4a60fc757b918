package scantling.drawing;

import java.util.List;
import scantling.construct.Part;
import scantling.measure.LengthFormat;

/** A small picture of a part with its marks: the loop on its face side, running out at its face edge, and its near end thick. */
public final class FaceMark {
    private static final double LONG = 46;
    private static final double WIDE = 18;

    private FaceMark() {}

    /** Draws it. */
    public static Drawing of(Part part) {
        Sketch sketch = new Sketch(LengthFormat.MM);
        sketch.shape(Rounded.corners(new Hatch.Field(0, -WIDE, LONG, 0), 0), Sketch.EDGE);
        double near = part.lie().hasNearEndRight() ? LONG : 0;
        sketch.line(new Spot(near, 0), new Spot(near, -WIDE), 3);
        loop(sketch, LONG / 2);
        return sketch.finish("marks", new Scale(10));
    }

    private static void loop(Sketch sketch, double x) {
        sketch.path(
                List.of(
                        new Spot(x - 4, 0),
                        new Spot(x, -6),
                        new Spot(x + 2, -12),
                        new Spot(x + 6, -14),
                        new Spot(x + 8, -10),
                        new Spot(x + 5, -7),
                        new Spot(x, -6),
                        new Spot(x + 4, 0)),
                Sketch.EDGE);
    }
}
