package scantling.packet;

import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDFont;

/**
 * 'Sheet 3 of 24' at the foot of every sheet, put there when all are laid out, for only then is it known how many there
 * are. For those who have a document read to them it is no part of the text (ISO 32000-1, 14.8.2.2: an artifact).
 */
final class SheetNumbers {
    /** As the other words at the foot, whose size and height above the edge are those of the style sheet. */
    private static final float POINTS = 8;

    private static final float UP = 16.875f;
    private static final float POINTS_PER_MM = 72 / 25.4f;
    private static final float MARGIN = 14 * POINTS_PER_MM;
    private static final float PER_EM = 1000;

    private SheetNumbers() {}

    /** @param letters a typeface of the document */
    static void write(PDDocument document, PDFont letters) throws IOException {
        int count = document.getNumberOfPages();
        int number = 0;
        for (PDPage page : document.getPages()) {
            number++;
            write(document, page, letters, "sheet " + number + " of " + count);
        }
    }

    private static void write(PDDocument document, PDPage page, PDFont letters, String words) throws IOException {
        float wide = letters.getStringWidth(words) * POINTS / PER_EM;
        try (var on = new PDPageContentStream(document, page, AppendMode.APPEND, false, false)) {
            on.beginMarkedContent(COSName.ARTIFACT);
            on.beginText();
            on.setFont(letters, POINTS);
            on.newLineAtOffset(page.getMediaBox().getWidth() - MARGIN - wide, UP);
            on.showText(words);
            on.endText();
            on.endMarkedContent();
        }
    }
}
