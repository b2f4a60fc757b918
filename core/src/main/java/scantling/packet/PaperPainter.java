package scantling.packet;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.AbstractOutputDevice;
import com.openhtmltopdf.render.FSFont;
import com.openhtmltopdf.render.JustificationInfo;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import scantling.drawing.Drawing;
import scantling.drawing.Mark;
import scantling.drawing.Scale;
import scantling.drawing.Spot;

/** Paints one drawing on a page of paper, in the page's dots. */
final class PaperPainter {
    private static final double MM_PER_INCH = 25.4;
    private static final double POINTS_PER_INCH = 72;
    private static final String PARK = "National Park";
    private static final float MITRE_LIMIT = 10;
    private static final FSRGBColor PAPER = new FSRGBColor(255, 255, 255);
    private static final JustificationInfo AS_IT_RUNS = new JustificationInfo();

    private final PdfBoxOutputDevice device;
    private final RenderingContext context;
    private final Drawing drawing;
    private final double x;
    private final double y;
    private final double dots;
    private final String[] families;

    /** On a device, its left upper corner at a dot of the page. @param helped whether words may need the second typeface */
    PaperPainter(
            PdfBoxOutputDevice device, RenderingContext context, double x, double y, Drawing drawing, boolean helped) {
        this.device = device;
        this.context = context;
        this.drawing = drawing;
        this.families = helped ? new String[] {PARK, Signs.SECOND} : new String[] {PARK};
        this.dots = device.getDotsPerPoint() * POINTS_PER_INCH / MM_PER_INCH / Scale.UNITS_PER_MM;
        this.x = x - drawing.left() * dots;
        this.y = y - drawing.top() * dots;
    }

    void paint() {
        Stroke before = device.getStroke();
        device.setColor(FSRGBColor.BLACK);
        device.pushClip(window());
        drawing.marks().forEach(this::mark);
        device.popClip();
        device.setStroke(before);
    }

    /** What of its marks is shown: a tile of a larger drawing ends where its neighbour goes on. */
    private Shape window() {
        Spot corner = onPage(new Spot(drawing.left(), drawing.top()));
        return new Rectangle2D.Double(corner.x(), corner.y(), drawing.width() * dots, drawing.height() * dots);
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Line line) {
            stroke(path(line.spots(), line.closed()), line.hides(), line.pen());
        } else if (mark instanceof Mark.Circle circle) {
            double radius = circle.radius() * dots;
            Spot at = onPage(circle.centre());
            stroke(new Ellipse2D.Double(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius), true, circle.pen());
        } else if (mark instanceof Mark.Words words) {
            words(words);
        } else if (mark instanceof Mark.Figure figure) {
            figure(figure);
        }
    }

    private void figure(Mark.Figure figure) {
        if (figure.turned()) {
            Spot about = fromFoot(onPage(figure.spot()));
            device.pushTransformLayer(AffineTransform.getQuadrantRotateInstance(1, about.x(), about.y()));
        }
        words(figure.words());
        figure.rest().ifPresent(this::words);
        mark(figure.under());
        if (figure.turned()) {
            device.popTransformLayer();
        }
    }

    private void stroke(Shape shape, boolean hides, Mark.Pen pen) {
        if (hides) {
            device.setColor(PAPER);
            device.fill(shape);
            device.setColor(FSRGBColor.BLACK);
        }
        if (pen.weight() > 0) {
            device.setStroke(stroke(pen));
            device.draw(shape);
        }
    }

    private BasicStroke stroke(Mark.Pen pen) {
        float weight = (float) (pen.weight() * dots);
        if (pen.dash().isEmpty()) {
            return new BasicStroke(weight, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        float[] dash = {(float) (pen.dash().get(0) * dots), (float) (pen.dash().get(1) * dots)};
        return new BasicStroke(weight, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, MITRE_LIMIT, dash, 0);
    }

    private Path2D path(List<Spot> spots, boolean closed) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, spots.size() + 1);
        for (int i = 0; i < spots.size(); i++) {
            Spot at = onPage(spots.get(i));
            if (i == 0) {
                path.moveTo(at.x(), at.y());
            } else {
                path.lineTo(at.x(), at.y());
            }
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private void words(Mark.Words words) {
        FontSpecification face = face(words);
        FSFont font = context.getFont(face);
        device.setFont(font);
        // Left from the page's last words it would have these fattened or slanted.
        ((AbstractOutputDevice) device).setFontSpecification(face);
        double wide = context.getTextRenderer().getWidth(context.getFontContext(), font, words.words());
        double back = switch (words.anchor()) {
            case START -> 0;
            case MIDDLE -> wide / 2;
            case END -> wide;
        };
        Spot at = onPage(words.spot());
        device.drawString(words.words(), (float) (at.x() - back), (float) at.y(), AS_IT_RUNS);
    }

    private FontSpecification face(Mark.Words words) {
        FontSpecification face = new FontSpecification();
        face.families = families.clone();
        face.size = (float) (words.size() * dots);
        face.fontWeight = words.strong() ? IdentValue.FONT_WEIGHT_500 : IdentValue.NORMAL;
        face.fontStyle = IdentValue.NORMAL;
        face.variant = IdentValue.NORMAL;
        return face;
    }

    private Spot onPage(Spot spot) {
        return new Spot(x + spot.x() * dots, y + spot.y() * dots);
    }

    /** The same spot as the PDF counts: from the lower left corner of the sheet; still in dots. */
    private Spot fromFoot(Spot spot) {
        PageBox page = context.getPage();
        double right = spot.x() + page.getMarginBorderPadding(context, CalculatedStyle.LEFT);
        double down = spot.y() - page.getPaintingTop() + page.getMarginBorderPadding(context, CalculatedStyle.TOP);
        double high = device.getPage().getMediaBox().getHeight() * device.getDotsPerPoint();
        return new Spot(right, high - down);
    }
}
