package scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import scantling.measure.Dim;
import scantling.measure.LengthFormat;

/** A drawing while it is being drawn: collects marks and how far they reach. One drawing, one thread. */
final class Sketch {
    static final double OUTLINE = 1.7;
    static final double EDGE = 1;
    static final double FINE = 0.7;
    static final double HAIR = 0.6;
    static final double TEXT = 12.5;

    private static final double MEAN_GLYPH = 0.583;
    private static final double PAD = 4;

    private final LengthFormat format;
    private final List<Svg> marks = new ArrayList<>();
    private double left = Double.MAX_VALUE;
    private double top = Double.MAX_VALUE;
    private double right = -Double.MAX_VALUE;
    private double bottom = -Double.MAX_VALUE;

    Sketch(LengthFormat format) {
        this.format = format;
    }

    void line(Spot from, Spot to, double weight) {
        add(stroke(segment(from, to), weight), from, to);
    }

    void dashed(Spot from, Spot to, double weight) {
        add(stroke(segment(from, to), weight).with("stroke-dasharray", "6 2.6"), from, to);
    }

    void path(List<Spot> spots, double weight) {
        Svg svg = Svg.of("polyline").with("points", points(spots)).with("fill", "none");
        add(stroke(svg, weight), spots.toArray(Spot[]::new));
    }

    /** A closed shape, paper inside, so that it hides what was drawn before it. */
    void shape(List<Spot> spots, double weight) {
        Svg svg = Svg.of("polygon")
                .with("points", points(spots))
                .with("class", "sheetfill")
                .with("fill", "#fff");
        add(stroke(svg, weight).with("stroke-linejoin", "round"), spots.toArray(Spot[]::new));
    }

    /** A closed shape that is only an edge; dashed when it is on the side away. */
    void edge(List<Spot> spots, double weight, boolean hidden) {
        Svg svg = stroke(Svg.of("polygon").with("points", points(spots)).with("fill", "none"), weight);
        add(hidden ? svg.with("stroke-dasharray", "5 3.2") : svg, spots.toArray(Spot[]::new));
    }

    void circle(Spot centre, double radius, double weight) {
        Svg svg = Svg.of("circle")
                .with("cx", centre.x())
                .with("cy", centre.y())
                .with("r", radius)
                .with("class", "sheetfill")
                .with("fill", "#fff");
        add(stroke(svg, weight), centre.shifted(-radius, -radius), centre.shifted(radius, radius));
    }

    /** Words about a middle, or from a start or to an end: the anchor as in SVG. */
    void words(Spot spot, String words, double size, String anchor) {
        add(text(spot, words, size, anchor), around(spot, words, size, anchor));
    }

    /** A number as its figure: line style by origin, its path for whoever wants its sum. */
    void figure(Spot spot, Dim dim, boolean turned) {
        String figure = format.format(dim.value());
        double half = width(figure, TEXT) / 2;
        Origin origin = Origin.of(dim);
        Svg group = Svg.of("g").with("class", "n " + origin.style());
        group = dim.findPath().isPresent()
                ? group.with("data-path", dim.findPath().get())
                : group;
        if (turned) {
            group = group.with("transform", "rotate(-90 %s %s)".formatted(Svg.number(spot.x()), Svg.number(spot.y())));
        }
        List<Svg> inside =
                new ArrayList<>(List.of(text(spot, figure, TEXT, "middle").with("font-weight", "500")));
        inside.add(underline(origin, spot, half));
        Spot[] reach = turned
                ? new Spot[] {spot.shifted(-TEXT, -half), spot.shifted(4, half)}
                : new Spot[] {spot.shifted(-half, -TEXT), spot.shifted(half, 4)};
        add(group.holding(inside), reach);
    }

    double width(Dim dim) {
        return width(format.format(dim.value()), TEXT);
    }

    Drawing finish(String title, Scale scale) {
        return new Drawing(
                title,
                scale,
                left - PAD,
                top - PAD,
                right - left + 2 * PAD,
                bottom - top + 2 * PAD,
                List.copyOf(marks));
    }

    static double width(String words, double size) {
        return words.length() * MEAN_GLYPH * size;
    }

    private static Svg underline(Origin origin, Spot spot, double half) {
        if (origin == Origin.MEASURED) {
            return stroke(Svg.of("rect"), EDGE)
                    .with("x", spot.x() - half - 2)
                    .with("y", spot.y() - TEXT + 1)
                    .with("width", 2 * half + 4)
                    .with("height", TEXT + 2)
                    .with("fill", "none")
                    .with("class", "u");
        }
        Svg line = stroke(segment(spot.shifted(-half, 2.6), spot.shifted(half, 2.6)), EDGE)
                .with("class", "u");
        return origin == Origin.GIVEN ? line : line.with("stroke-dasharray", "1.2 2");
    }

    private static Svg text(Spot spot, String words, double size, String anchor) {
        return Svg.of("text")
                .with("x", spot.x())
                .with("y", spot.y())
                .with("font-size", size)
                .with("text-anchor", anchor)
                .with("fill", "currentColor")
                .saying(words);
    }

    private static Spot[] around(Spot spot, String words, double size, String anchor) {
        double wide = width(words, size);
        double from = anchor.equals("middle") ? -wide / 2 : anchor.equals("end") ? -wide : 0;
        return new Spot[] {spot.shifted(from, -size), spot.shifted(from + wide, size / 4)};
    }

    private static Svg segment(Spot from, Spot to) {
        return Svg.of("line")
                .with("x1", from.x())
                .with("y1", from.y())
                .with("x2", to.x())
                .with("y2", to.y());
    }

    private static Svg stroke(Svg svg, double weight) {
        return svg.with("stroke", "currentColor").with("stroke-width", weight);
    }

    private static String points(List<Spot> spots) {
        return spots.stream()
                .map(spot -> Svg.number(spot.x()) + "," + Svg.number(spot.y()))
                .collect(Collectors.joining(" "));
    }

    private void add(Svg svg, Spot... reach) {
        marks.add(svg);
        for (Spot spot : reach) {
            left = Math.min(left, spot.x());
            right = Math.max(right, spot.x());
            top = Math.min(top, spot.y());
            bottom = Math.max(bottom, spot.y());
        }
    }
}
