package scantling.packet;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.w3c.dom.Element;
import scantling.drawing.Drawing;
import scantling.drawing.Mark;

/**
 * The drawings of one printed packet. The page has an object of the drawing's true size where the drawing goes; it is
 * painted there with the strokes and typefaces of the page itself, so that its figures are text. One packet, one thread.
 */
final class PaperFigures implements FSObjectDrawerFactory, FSObjectDrawer {
    private static final String TYPE = "image/x-drawing";

    private final List<Drawing> drawings = new ArrayList<>();

    private boolean helped;

    /** All words on the drawings placed so far. */
    String words() {
        return drawings.stream()
                .flatMap(drawing -> drawing.marks().stream())
                .map(PaperFigures::words)
                .collect(Collectors.joining());
    }

    private static String words(Mark mark) {
        if (mark instanceof Mark.Words words) {
            return words.words();
        }
        return mark instanceof Mark.Figure figure ? figure.words().words() : "";
    }

    /** Whether words on them may need the second typeface. */
    void helped(boolean bySecond) {
        helped = bySecond;
    }

    /** Markup that holds the drawing's place. */
    String place(Drawing drawing) {
        drawings.add(drawing);
        return String.format(
                Locale.ROOT,
                "<object type=\"%s\" id=\"figure-%d\" alt=\"%s\""
                        + " style=\"display:inline-block;width:%.2fmm;height:%.2fmm\"></object>",
                TYPE,
                drawings.size() - 1,
                Figures.escape(drawing.title() + ", scale " + drawing.scale().words()),
                drawing.paperWidth(),
                drawing.paperHeight());
    }

    @Override
    public boolean isReplacedObject(Element element) {
        return element.getTagName().equals("object") && TYPE.equals(element.getAttribute("type"));
    }

    @Override
    public FSObjectDrawer createDrawer(Element element) {
        return this;
    }

    @Override
    public Map<Shape, String> drawObject(
            Element element,
            double x,
            double y,
            double width,
            double height,
            OutputDevice device,
            RenderingContext context,
            int dotsPerPixel) {
        Drawing drawing =
                drawings.get(Integer.parseInt(element.getAttribute("id").replace("figure-", "")));
        new PaperPainter((PdfBoxOutputDevice) device, context, x, y, drawing, helped).paint();
        return Map.of();
    }
}
