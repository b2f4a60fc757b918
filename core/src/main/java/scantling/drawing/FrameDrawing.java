package scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import scantling.checks.frame.Frames;
import scantling.checks.frame.Framing;
import scantling.checks.frame.Vector;
import scantling.construct.Assembly;
import scantling.measure.Length;
import scantling.measure.LengthFormat;

/** The piece as a frame under the push that moves it most: as built in dashed lines, moved many times too far in full. */
public final class FrameDrawing {
    private static final double PAPER = 70;
    /** How far the place that moves most is drawn to move, of the size of the piece. */
    private static final double SHOWN = 0.08;

    private static final double COS = Math.cos(Math.toRadians(30));
    private static final double SIN = 0.5;
    private static final double GAP = 18;

    private final LengthFormat format;
    private final Sketch sketch;
    private double units;
    private double lowest = -Double.MAX_VALUE;
    private double leftmost = Double.MAX_VALUE;

    private FrameDrawing(LengthFormat format) {
        this.format = format.ofEstimates();
        this.sketch = new Sketch(format);
    }

    /** Empty for a piece that is no frame, or of a wood whose stiffness no table has. */
    public static Optional<Drawing> of(Assembly assembly, LengthFormat format) {
        return Frames.of(assembly).flatMap(framing -> of(framing, format));
    }

    /** The same for a frame that is solved already. */
    public static Optional<Drawing> of(Framing framing, LengthFormat format) {
        return framing.cases().stream()
                .filter(each -> !each.load().direction().equals("down"))
                .max(Comparator.comparingDouble(Framing.Case::most))
                .map(each -> new FrameDrawing(format).draw(framing, each));
    }

    private Drawing draw(Framing framing, Framing.Case under) {
        double reach = reach(framing.lines());
        Scale scale = Scale.fitting(reach, PAPER);
        units = scale.unitsPerMm();
        double times = under.most() > 0 ? Math.max(1, Math.round(reach * SHOWN / under.most())) : 1;
        List<Framing.Line> lines = framing.lines();
        for (Framing.Line line : lines) {
            sketch.dashed(spot(line.from()), spot(line.to()), Sketch.HAIR);
        }
        for (int i = 0; i < lines.size(); i++) {
            Framing.Moved moved = under.moved().get(i);
            Vector from = lines.get(i).from().plus(moved.from().times(times));
            Vector to = lines.get(i).to().plus(moved.to().times(times));
            sketch.line(spot(from), spot(to), Sketch.OUTLINE);
        }
        List<String> words = words(under, times);
        for (int i = 0; i < words.size(); i++) {
            sketch.words(new Spot(leftmost, lowest + GAP * (i + 1)), words.get(i), Sketch.TEXT, Mark.Anchor.START);
        }
        return sketch.finish("Pushed at the top", scale);
    }

    private List<String> words(Framing.Case under, double times) {
        List<String> words = new ArrayList<>();
        words.add("%s at %s"
                .formatted(
                        format.formatWithUnit(Length.ofMillimetres(under.most()).roundedTo(step())), under.where()));
        words.add("under " + under.load().words());
        words.add(String.format(Locale.ROOT, "drawn %.0f times as far", times));
        return words;
    }

    private Length step() {
        return format.inches() ? Length.inches(1, 64) : Length.mm("0.1");
    }

    private static double reach(List<Framing.Line> lines) {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (Framing.Line line : lines) {
            for (Vector end : List.of(line.from(), line.to())) {
                double level = (end.across() + end.deep()) * COS;
                double high = end.up() + (end.deep() - end.across()) * SIN;
                least = Math.min(least, Math.min(level, high));
                most = Math.max(most, Math.max(level, high));
            }
        }
        return Math.max(1, most - least);
    }

    private Spot spot(Vector place) {
        Spot spot = new Spot(
                (place.across() + place.deep()) * COS * units,
                -(place.up() + (place.deep() - place.across()) * SIN) * units);
        lowest = Math.max(lowest, spot.y());
        leftmost = Math.min(leftmost, spot.x());
        return spot;
    }
}
