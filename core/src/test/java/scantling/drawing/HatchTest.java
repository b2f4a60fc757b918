package scantling.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.LengthFormat;

/** Growth rings against their definition: every ring gone through whole, and what lies outside left out. */
class HatchTest {
    private static List<Spot> drawn(Hatch.Field field) {
        Sketch sketch = new Sketch(LengthFormat.MM);
        Hatch.rings(sketch, field);
        return sketch.finish("rings", Scale.fitting(100, 100)).marks().stream()
                .flatMap(mark -> ((Mark.Line) mark).spots().stream())
                .toList();
    }

    private static List<Spot> gonethroughWhole(Hatch.Field field) {
        double x = (field.left() + field.right()) / 2;
        double y = field.bottom() + 40;
        List<Spot> all = new ArrayList<>();
        for (double r = 42; r <= Math.hypot(field.right() - field.left(), y - field.top()); r += 4.5) {
            List<Spot> run = new ArrayList<>();
            for (long i = 0; i * (0.8 / r) <= Math.PI; i++) {
                double a = i * (0.8 / r);
                Spot spot = new Spot(x + r * Math.cos(a), y - r * Math.sin(a));
                if (field.holds(spot)) {
                    run.add(spot);
                } else {
                    addTo(all, run);
                }
            }
            addTo(all, run);
        }
        return all;
    }

    /** A single spot is no line. */
    private static void addTo(List<Spot> all, List<Spot> run) {
        if (run.size() > 1) {
            all.addAll(run);
        }
        run.clear();
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 80, 12", "5, 7, 17, 300", "0, 0, 2, 2", "-40, 10, 900, 30", "0, 0, 600, 400"})
    void noRingLosesAnythingThatLiesInTheField(double left, double top, double right, double bottom) {
        Hatch.Field field = new Hatch.Field(left, top, right, bottom);
        List<Spot> drawn = drawn(field);
        assertTrue(drawn.size() > 1 || right - left < 10, "nothing is drawn");
        assertEquals(gonethroughWhole(field), drawn);
    }
}
