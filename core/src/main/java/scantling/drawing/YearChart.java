package scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import scantling.checks.lasting.Year;
import scantling.construct.Assembly;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** The year in the client's home: moisture of the wood month by month, and below it what that does to the piece. */
public final class YearChart {
    private static final String MONTHS = "JFMAMJJASOND";
    private static final double WIDE = 480;
    private static final double HIGH = 130;
    private static final double APART = 62;
    private static final double MARGIN = 8;

    private final LengthFormat format;
    private final Sketch sketch;
    private double top;

    private YearChart(LengthFormat format) {
        this.format = format.ofEstimates();
        this.sketch = new Sketch(format);
    }

    /** Empty for a piece without solid wood that is known to move. */
    public static Optional<Drawing> of(Assembly assembly, LengthFormat format) {
        return Year.of(assembly)
                .filter(year -> year.moisture().size() == MONTHS.length())
                .map(year -> new YearChart(format).draw(year));
    }

    private Drawing draw(Year year) {
        panel(
                "Moisture that wood comes to, %; dashed: as made",
                year.moisture(), Optional.of(year.made()), number -> String.format(Locale.ROOT, "%.1f", number));
        for (Year.Curve curve : year.curves()) {
            List<Double> each = curve.each().stream()
                    .map(dim -> dim.value().toMillimetres())
                    .toList();
            panel(
                    curve.words() + ", " + (format.inches() ? "in" : "mm"),
                    each,
                    Optional.of(0.0),
                    number -> format.format(rounded(number)));
        }
        return sketch.finish("The year: " + year.climate().name(), Scale.fitting(1, 1));
    }

    private Length rounded(double mm) {
        return Dim.worked(Length.ofMillimetres(mm), "read off the year")
                .value()
                .roundedTo(format.inches() ? Length.inches(1, 64) : Length.mm("0.1"));
    }

    /** Writes a number at the curve. */
    private interface Writes {
        String words(double number);
    }

    private void panel(String words, List<Double> each, Optional<Double> level, Writes writes) {
        double least = Math.min(least(each), level.orElse(Double.MAX_VALUE));
        double most = Math.max(most(each), level.orElse(-Double.MAX_VALUE));
        double span = most - least == 0 ? 1 : most - least;
        sketch.words(new Spot(0, top), words, Sketch.TEXT, Mark.Anchor.START);
        double from = top + 4 * MARGIN;
        List<Spot> curve = new ArrayList<>();
        for (int month = 0; month < each.size(); month++) {
            curve.add(new Spot(across(month), from + HIGH * (most - each.get(month)) / span));
        }
        level.ifPresent(at -> {
            double up = from + HIGH * (most - at) / span;
            sketch.dashed(new Spot(0, up), new Spot(WIDE, up), Sketch.FINE);
        });
        sketch.path(curve, Sketch.OUTLINE);
        mark(each, curve, most(each), writes);
        mark(each, curve, least(each), writes);
        double foot = from + HIGH + 3 * MARGIN;
        sketch.line(new Spot(0, foot - 2 * MARGIN), new Spot(WIDE, foot - 2 * MARGIN), Sketch.HAIR);
        for (int month = 0; month < MONTHS.length(); month++) {
            sketch.words(
                    new Spot(across(month), foot), MONTHS.substring(month, month + 1), Sketch.TEXT, Mark.Anchor.MIDDLE);
        }
        top = foot + APART;
    }

    /** Writes a number above the curve where it first reaches it. */
    private void mark(List<Double> each, List<Spot> curve, double number, Writes writes) {
        int month = each.indexOf(number);
        Spot spot = curve.get(month);
        sketch.circle(spot, 3, Sketch.FINE);
        sketch.words(spot.shifted(0, -MARGIN), writes.words(number), Sketch.TEXT, Mark.Anchor.MIDDLE);
    }

    private static double across(int month) {
        return WIDE * (month + 0.5) / MONTHS.length();
    }

    private static double least(List<Double> each) {
        return each.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    private static double most(List<Double> each) {
        return each.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }
}
