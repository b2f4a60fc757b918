package scantling.packet;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Markup that was laid out and painted on sheets, not yet written. It is open, and must be closed.
 *
 * @param document the sheets
 * @param letters its typefaces, the usual one first
 */
record Typeset(PDDocument document, List<PDType0Font> letters) implements Closeable {
    private static final COSName SUSPECTS = COSName.getPDFName("Suspects");

    /** Lays markup out. @param figures the drawings it has places for */
    static Typeset of(String html, PaperFigures figures) {
        PDDocument document = new PDDocument();
        try {
            List<PDType0Font> letters = PaperFonts.of(document);
            try (PdfBoxRenderer renderer =
                    builder(html, figures, document, letters).buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
            }
            return new Typeset(document, letters);
        } catch (IOException e) {
            throw new UncheckedIOException("A packet in memory could not be written.", e);
        }
    }

    private static PdfRendererBuilder builder(
            String html, PaperFigures figures, PDDocument document, List<PDType0Font> letters) throws IOException {
        // The renderer tells of every font and style sheet; a maker does not want to know.
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        PaperFonts.addTo(builder, letters);
        builder.useUnicodeLineBreaker(new WholeNumbers());
        builder.useObjectDrawerFactory(figures);
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Scantling");
        builder.withW3cDocument(parsed(html), null);
        builder.toStream(OutputStream.nullOutputStream());
        return builder;
    }

    private static Document parsed(String html) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("The markup of a packet is not well formed.", e);
        }
    }

    /** Puts the sheets of another behind these. It is closed by whoever opened it, after these were written. */
    void append(Typeset next) throws IOException {
        next.cutDown();
        new PDFMergerUtility().appendDocument(document, next.document());
        // It is written as false, which is what its absence says, and some readers complain of it.
        document.getDocumentCatalog().getMarkInfo().getCOSObject().removeItem(SUSPECTS);
    }

    /** Cuts its typefaces down to the letters used, which is else done when a document is written: this one never is. */
    private void cutDown() throws IOException {
        Set<COSBase> used = new HashSet<>();
        for (PDPage page : document.getPages()) {
            PDResources resources = page.getResources();
            for (COSName name : resources.getFontNames()) {
                used.add(resources.getFont(name).getCOSObject());
            }
        }
        for (PDType0Font font : letters) {
            if (used.contains(font.getCOSObject())) {
                font.subset();
            }
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException("A packet in memory could not be let go.", e);
        }
    }
}
