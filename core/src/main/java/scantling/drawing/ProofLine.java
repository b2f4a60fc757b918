package scantling.drawing;

import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** Lines that show whether a print came out at its true size, as long as the maker's own rule can tell at a glance. */
public final class ProofLine {
    private static final double END = 6;
    private static final double TICK = 4;
    private static final double FIGURE = 10.5;

    private ProofLine() {}

    /**
     * What lines are drawn for a rule.
     *
     * @param step from tick to tick of the long one
     * @param figure from figure to figure of the long one; the whole of the short one
     * @param steps of the long one
     */
    private record Rule(Length step, Length figure, int steps) {
        static Rule of(LengthFormat format) {
            return format.inches()
                    ? new Rule(Length.inches(1, 2), Length.inches(2), 16)
                    : new Rule(Length.mm(10), Length.mm(50), 20);
        }

        Length whole() {
            return step.times(steps);
        }

        double at(int tick) {
            return units(step.times(tick));
        }

        boolean hasFigure(int tick) {
            return tick * step.toMillimetres() % figure.toMillimetres() == 0;
        }
    }

    private static double units(Length length) {
        return length.toMillimetres() * Scale.UNITS_PER_MM;
    }

    private static String words(Length length, LengthFormat format) {
        return plain(format).formatWithUnit(length);
    }

    /** Whole millimetres need no tenths. */
    private static LengthFormat plain(LengthFormat format) {
        return format.inches() ? format : new LengthFormat(false, 1, 0);
    }

    /** A level one of 50 mm, or of 2 in; its title says which. */
    public static Drawing draw(LengthFormat format) {
        Length length = Rule.of(format).figure();
        double end = units(length);
        Sketch sketch = new Sketch(format);
        sketch.line(new Spot(0, 0), new Spot(end, 0), Sketch.EDGE);
        sketch.line(new Spot(0, -END), new Spot(0, END), Sketch.OUTLINE);
        sketch.line(new Spot(end, -END), new Spot(end, END), Sketch.OUTLINE);
        return sketch.finish(words(length, format), new Scale(10));
    }

    /** An upright one of 200 mm with a tick at each ten, or of 8 in with a tick at each half; its title says which. */
    public static Drawing upright(LengthFormat format) {
        Rule rule = Rule.of(format);
        Sketch sketch = new Sketch(format);
        sketch.line(new Spot(0, 0), new Spot(0, units(rule.whole())), Sketch.EDGE);
        for (int tick = 0; tick <= rule.steps(); tick++) {
            double y = rule.at(tick);
            double out = rule.hasFigure(tick) ? 2 * TICK : TICK;
            sketch.line(new Spot(-out, y), new Spot(out, y), Sketch.EDGE);
            if (rule.hasFigure(tick)) {
                String figure = plain(format).format(rule.step().times(tick));
                sketch.words(new Spot(12, y + TICK), figure, FIGURE, Mark.Anchor.START);
            }
        }
        return sketch.finish(words(rule.whole(), format), new Scale(10));
    }
}
