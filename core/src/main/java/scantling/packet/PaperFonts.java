package scantling.packet;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The typefaces of paper. They are given to the renderer as fonts, not as rules of a style sheet that it would have to read
 * through; only the letters used go into the document.
 */
final class PaperFonts {
    private record Face(String family, FontStyle style, int weight, String file) {}

    private static final String PARK = "National Park";
    private static final String ALEGREYA = "Alegreya Sans";
    private static final List<Face> FACES = List.of(
            new Face(PARK, FontStyle.NORMAL, 400, "national-park-400-normal.ttf"),
            new Face(PARK, FontStyle.NORMAL, 500, "national-park-500-normal.ttf"),
            new Face(PARK, FontStyle.NORMAL, 700, "national-park-700-normal.ttf"),
            new Face(ALEGREYA, FontStyle.ITALIC, 500, "alegreya-sans-500-italic.ttf"),
            new Face(ALEGREYA, FontStyle.ITALIC, 700, "alegreya-sans-700-italic.ttf"));

    private PaperFonts() {}

    /** The typefaces, ready for a document, the usual one first. @throws IOException if a typeface cannot be read */
    static List<PDType0Font> of(PDDocument document) throws IOException {
        FontMappers.set(new OwnLetters(read(FACES.get(0))));
        List<PDType0Font> letters = new ArrayList<>();
        for (Face face : FACES) {
            letters.add(PDType0Font.load(document, read(face), true));
        }
        return List.copyOf(letters);
    }

    /** Makes the typefaces known to a renderer. @param letters as made for its document */
    static void addTo(PdfRendererBuilder builder, List<PDType0Font> letters) {
        for (int i = 0; i < FACES.size(); i++) {
            Face face = FACES.get(i);
            builder.useFont(new PDFontSupplier(letters.get(i)), face.family(), face.weight(), face.style(), true);
        }
    }

    private static TrueTypeFont read(Face face) throws IOException {
        TrueTypeFont letters =
                new TTFParser().parse(new RandomAccessReadBuffer(Resources.bytes("fonts/" + face.file())));
        // Ligatures are looked for in every word when allowed, and a packet has no word that needs one.
        letters.setEnableGsub(false);
        return letters;
    }
}
