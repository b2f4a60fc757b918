package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where each piece of text stands on a page, level or turned, in points from the lower left. */
final class TextBoxes extends PDFTextStripper {
    /** A glyph's ink is this much of its font's height at most. */
    private static final double INK = 0.62;

    /** A run of glyphs set in one go. */
    record Box(String text, Rectangle2D place) {}

    private final List<Box> glyphs = new ArrayList<>();

    private TextBoxes() {
        setSortByPosition(false);
    }

    static List<Box> of(PDDocument document, int page) throws IOException {
        TextBoxes boxes = new TextBoxes();
        boxes.setStartPage(page);
        boxes.setEndPage(page);
        boxes.getText(document);
        return boxes.glyphs;
    }

    @Override
    protected void processTextPosition(TextPosition text) {
        if (text.getUnicode().isBlank()) {
            return;
        }
        double x = text.getTextMatrix().getTranslateX();
        double y = text.getTextMatrix().getTranslateY();
        double long1 = text.getWidthDirAdj();
        double high = text.getFontSizeInPt() * INK;
        Rectangle2D place = text.getDir() == 90
                ? new Rectangle2D.Double(x - high, y, high, long1)
                : new Rectangle2D.Double(x, y, long1, high);
        glyphs.add(new Box(text.getUnicode(), place));
    }

    /** Pairs of glyphs that stand on each other. */
    static List<String> overlaps(List<Box> boxes) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                Rectangle2D both =
                        boxes.get(i).place().createIntersection(boxes.get(j).place());
                if (both.getWidth() > 0.8 && both.getHeight() > 0.8) {
                    all.add("%s on %s at %.0f %.0f"
                            .formatted(boxes.get(i).text(), boxes.get(j).text(), both.getCenterX(), both.getCenterY()));
                }
            }
        }
        return all;
    }

    /** Glyphs that reach over the edge of the paper. */
    static List<String> beyond(List<Box> boxes, PDRectangle paper) {
        Rectangle2D sheet = new Rectangle2D.Double(0, 0, paper.getWidth(), paper.getHeight());
        return boxes.stream()
                .filter(box -> !sheet.contains(box.place()))
                .map(box -> "%s at %.0f %.0f"
                        .formatted(box.text(), box.place().getX(), box.place().getY()))
                .toList();
    }

    /** Nothing on anything else, nothing over an edge. */
    static void assertTidy(List<byte[]> papers) throws IOException {
        List<String> wrong = new ArrayList<>();
        for (byte[] pdf : papers) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                for (int page = 1; page <= document.getNumberOfPages(); page++) {
                    List<Box> boxes = of(document, page);
                    String sheet = "paper " + papers.indexOf(pdf) + ", sheet " + page + ": ";
                    overlaps(boxes).forEach(one -> wrong.add(sheet + one));
                    beyond(boxes, document.getPage(page - 1).getMediaBox()).forEach(one -> wrong.add(sheet + one));
                }
            }
        }
        assertEquals(List.of(), wrong);
    }
}
