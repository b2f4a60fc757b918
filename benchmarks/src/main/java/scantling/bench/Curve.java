package scantling.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import scantling.drawing.Drawing;
import scantling.drawing.Mark;
import scantling.drawing.Scale;
import scantling.drawing.Spot;

/**
 * A curve of what was measured, as a drawing: how something grows with something else.
 *
 * @param title what is shown
 * @param across what grows, with its unit
 * @param up what is measured, with its unit
 * @param logarithmic whether both axes go by tenfolds rather than evenly
 */
public record Curve(String title, String across, String up, boolean logarithmic) {
    private static final double WIDE = 520;
    private static final double HIGH = 240;
    private static final double LEFT = 62;
    private static final double TEXT = 12;
    private static final double MARGIN = 26;
    private static final double ASIDE = 6;
    private static final double ROUND = 2.4;
    private static final Mark.Pen BOLD = new Mark.Pen(1.6, List.of());
    private static final Mark.Pen THIN = new Mark.Pen(0.5, List.of());
    private static final Mark.Pen LIMIT = new Mark.Pen(0.8, List.of(6.0, 4.0));

    /** One measured point. @param x how much @param y how long or how large @param name written beside it, or nothing */
    public record Point(double x, double y, String name) {}

    /** Writes it as SVG. @param limit what was asked for, drawn dashed; 0 for none */
    public void write(Path file, List<Point> points, double limit) throws IOException {
        Files.writeString(file, draw(points, limit).screenSvg() + "\n");
        System.out.println("drawn: " + file);
    }

    private Drawing draw(List<Point> points, double limit) {
        Axis x = axis(points, Point::x, 0);
        Axis y = axis(points, Point::y, limit);
        List<Mark> marks = new ArrayList<>();
        for (double tick : x.ticks()) {
            double at = LEFT + WIDE * x.share(tick);
            marks.add(line(at, 0, at, HIGH, THIN));
            marks.add(words(at, HIGH + TEXT + 4, figure(tick), Mark.Anchor.MIDDLE));
        }
        for (double tick : y.ticks()) {
            double at = HIGH * (1 - y.share(tick));
            marks.add(line(LEFT, at, LEFT + WIDE, at, THIN));
            marks.add(words(LEFT - 6, at + 4, figure(tick), Mark.Anchor.END));
        }
        if (limit > 0) {
            double at = HIGH * (1 - y.share(limit));
            marks.add(line(LEFT, at, LEFT + WIDE, at, LIMIT));
            marks.add(words(LEFT + WIDE, at - 4, "asked " + figure(limit), Mark.Anchor.END));
        }
        List<Spot> spots = points.stream()
                .map(point -> new Spot(LEFT + WIDE * x.share(point.x()), HIGH * (1 - y.share(point.y()))))
                .toList();
        marks.add(new Mark.Line(spots, false, false, BOLD));
        for (int i = 0; i < spots.size(); i++) {
            if (!points.get(i).name().isEmpty()) {
                marks.add(new Mark.Circle(spots.get(i), ROUND, BOLD));
                // names of neighbours stand on either side of the curve
                boolean left = i % 2 == 0;
                double x0 = spots.get(i).x() + (left ? -ASIDE : ASIDE);
                double y0 = spots.get(i).y() + (left ? -ASIDE : ASIDE + TEXT / 2);
                marks.add(words(x0, y0, points.get(i).name(), left ? Mark.Anchor.END : Mark.Anchor.START));
            }
        }
        marks.add(words(LEFT, -TEXT, up, Mark.Anchor.START));
        marks.add(words(LEFT + WIDE, HIGH + 2 * TEXT + 8, across, Mark.Anchor.END));
        return new Drawing(
                title, Scale.fitting(1, 1), 0, -MARGIN, LEFT + WIDE + MARGIN, HIGH + MARGIN + 3 * TEXT + 8, marks);
    }

    private static Mark line(double x1, double y1, double x2, double y2, Mark.Pen pen) {
        return new Mark.Line(List.of(new Spot(x1, y1), new Spot(x2, y2)), false, false, pen);
    }

    private static Mark words(double x, double y, String words, Mark.Anchor anchor) {
        return new Mark.Words(new Spot(x, y), words, TEXT, anchor, false);
    }

    private static String figure(double number) {
        return number >= 10 || number == Math.rint(number)
                ? String.format(Locale.ROOT, "%,.0f", number)
                : String.format(Locale.ROOT, "%.3g", number).replaceAll("0+$", "");
    }

    private Axis axis(List<Point> points, ToDoubleFunction<Point> of, double limit) {
        double most = Math.max(limit, points.stream().mapToDouble(of).max().orElse(1));
        double least = points.stream().mapToDouble(of).min().orElse(1);
        if (logarithmic) {
            double from = Math.floor(Math.log10(limit > 0 ? Math.min(limit, least) : least));
            double to = Math.max(from + 1, Math.ceil(Math.log10(most)));
            List<Double> ticks = new ArrayList<>();
            for (double power = from; power <= to; power++) {
                ticks.add(Math.pow(10, power));
            }
            return new Axis(from, to, true, ticks);
        }
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double step = most < 2 * power ? power / 5 : power;
        double top = Math.ceil(most / step) * step;
        List<Double> ticks = new ArrayList<>();
        for (double tick = 0; tick <= top + step / 2; tick += step) {
            ticks.add(tick);
        }
        return new Axis(0, top, false, ticks);
    }

    /** How a number is placed. @param from where it begins @param to where it ends, both as powers of ten when logarithmic */
    private record Axis(double from, double to, boolean logarithmic, List<Double> ticks) {
        double share(double number) {
            double at = logarithmic ? Math.log10(number) : number;
            return (at - from) / (to - from);
        }
    }
}
