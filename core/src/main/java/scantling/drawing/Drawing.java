package scantling.drawing;

import java.util.List;

/**
 * A finished drawing. One drawing unit is a quarter millimetre of paper, so printed at 100 % it is true to its scale.
 *
 * @param title what it shows
 * @param scale its scale on paper
 * @param left where it begins, in drawing units
 * @param top where it begins, in drawing units
 * @param width in drawing units
 * @param height in drawing units
 * @param marks all that is drawn, in the order it is painted
 */
public record Drawing(
        String title, Scale scale, double left, double top, double width, double height, List<Mark> marks) {
    /** Takes its own copy. */
    public Drawing {
        marks = List.copyOf(marks);
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
        return new SvgWriter().write(this, "");
    }

    /** The same under another title. */
    public Drawing called(String other) {
        return new Drawing(other, scale, left, top, width, height, marks);
    }

    /** As SVG for paper: in millimetres, true to scale. */
    public String paperSvg() {
        return new SvgWriter().write(this, "mm");
    }
}
