package scantling.drawing;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import scantling.measure.LengthFormat;

/** Says what each hatch stands for: a swatch and its words to a line. */
public final class HatchLegend {
    private static final double WIDE = 60;
    private static final double HIGH = 18;
    private static final double LINE = 26;
    private static final double GAP = 10;
    private static final double SIZE = 11.5;
    private static final double FOOT = 5;

    private HatchLegend() {}

    /** Of every hatch there is. */
    public static Drawing all() {
        return of(EnumSet.allOf(CutFace.class));
    }

    static Drawing of(Collection<CutFace> faces) {
        Sketch sketch = new Sketch(LengthFormat.MM);
        double top = 0;
        for (CutFace face : faces) {
            Hatch.Field field = new Hatch.Field(0, top, WIDE, top + HIGH);
            List<Spot> edge =
                    List.of(new Spot(0, top), new Spot(WIDE, top), new Spot(WIDE, top + HIGH), new Spot(0, top + HIGH));
            face.hatch(sketch, field);
            sketch.edge(edge, Sketch.OUTLINE, false);
            sketch.words(new Spot(WIDE + GAP, top + HIGH - FOOT), face.words(), SIZE, Mark.Anchor.START);
            top += LINE;
        }
        return sketch.finish("What the hatches mean", new Scale(10));
    }
}
