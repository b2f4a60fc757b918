package scantling.drawing;

import java.util.List;

/** A finished drawing. One drawing unit is a quarter millimetre of paper, so printed at 100 % it is true to its scale. */
public final class Drawing {
    private final String title;
    private final Scale scale;
    private final double left;
    private final double top;
    private final double width;
    private final double height;
    private final List<Svg> marks;

    Drawing(String title, Scale scale, double left, double top, double width, double height, List<Svg> marks) {
        this.title = title;
        this.scale = scale;
        this.left = left;
        this.top = top;
        this.width = width;
        this.height = height;
        this.marks = marks;
    }

    /** What it shows. */
    public String title() {
        return title;
    }

    /** Its scale on paper. */
    public Scale scale() {
        return scale;
    }

    /** Its width on paper, in millimetres. */
    public double paperWidth() {
        return width / Scale.UNITS_PER_MM;
    }

    /** Its height on paper, in millimetres. */
    public double paperHeight() {
        return height / Scale.UNITS_PER_MM;
    }

    /** As SVG for a screen: one drawing unit to a pixel, narrower where there is less room. */
    public String screenSvg() {
        return written(svg(Svg.number(width), Svg.number(height)));
    }

    /** As SVG for paper: in millimetres, true to scale. */
    public String paperSvg() {
        // A tagged PDF asks for the words under another name.
        return written(svg(Svg.number(paperWidth()) + "mm", Svg.number(paperHeight()) + "mm")
                .with("alt", title + ", scale " + scale.words()));
    }

    private String written(Svg svg) {
        StringBuilder out = new StringBuilder();
        svg.write(out);
        return out.toString();
    }

    private Svg svg(String wide, String high) {
        return Svg.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("class", "draw")
                .with("role", "img")
                .with("aria-label", title)
                .with("color", "#1D1A16")
                .with("font-family", "National Park")
                .with("width", wide)
                .with("height", high)
                .with(
                        "viewBox",
                        String.join(" ", Svg.number(left), Svg.number(top), Svg.number(width), Svg.number(height)))
                .holding(marks);
    }
}
