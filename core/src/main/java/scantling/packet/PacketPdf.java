package scantling.packet;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.GregorianCalendar;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import scantling.drawing.ProofLine;

/**
 * The packet for the bench as PDF: tagged, with an outline, sheets numbered, drawings true to scale when printed at 100 %.
 * The same content gives the same bytes.
 */
public final class PacketPdf {
    /** So many that the renderer's inmost loops are compiled by the time the packet itself comes. */
    private static final int TRIAL_ROWS = 60;

    private PacketPdf() {}

    /** Renders it. */
    public static byte[] render(PacketContent content, Paper paper) {
        return render(content, Drawings.of(content), paper, Set.of());
    }

    /** @param only the words of the sections wanted, none for all */
    static byte[] render(PacketContent content, Drawings drawings, Paper paper, Set<String> only) {
        PaperFigures figures = new PaperFigures();
        PacketPage page = PacketPage.onPaper(content, drawings, figures, only);
        return render(Templates.render("packet.jte", page, css(content, paper)), figures);
    }

    /**
     * Gets the paper's tools ready: typefaces read, styles parsed, classes loaded. It changes no result; done while a plan
     * is worked out, it takes seconds off the first packet of a process.
     */
    public static void getReady() {
        PaperFigures figures = new PaperFigures();
        String proof = figures.place(ProofLine.draw());
        String row = "<tr><td class=\"mark\">A</td><td>two words</td><td class=\"r\"><span class=\"n"
                + " worked\">1</span></td></tr>";
        render(
                "<html lang=\"en\"><head><title>-</title><meta name=\"subject\" content=\"-\"/><style>"
                        + Resources.text("print.css")
                        + "</style></head><body><h2>-</h2><table"
                        + " class=\"rows\"><thead><tr><th>-</th><th>-</th><th>-</th></tr>"
                        + "</thead><tbody>" + row.repeat(TRIAL_ROWS)
                        + "</tbody></table><p class=\"note\">-</p><div class=\"figure\">" + proof
                        + "</div></body></html>",
                figures);
    }

    /** Puts a page of markup on paper. */
    static byte[] render(String html, PaperFigures figures) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PDDocument document = new PDDocument();
        try (PdfBoxRenderer renderer = builder(html, figures, document).buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            fix(document);
            PaperTags.slim(document);
            document.save(out, CompressParameters.NO_COMPRESSION);
        } catch (IOException e) {
            throw new UncheckedIOException("A packet in memory could not be written.", e);
        }
        return out.toByteArray();
    }

    private static PdfRendererBuilder builder(String html, PaperFigures figures, PDDocument document)
            throws IOException {
        // The renderer tells of every font and style sheet; a maker does not want to know.
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        PaperFonts.addTo(builder, document);
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

    /** Dates and the identity of the file would differ from run to run; they are set to fixed ones. */
    private static void fix(PDDocument document) {
        GregorianCalendar epoch = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        epoch.setTimeInMillis(0);
        document.getDocumentInformation().setCreationDate(epoch);
        document.getDocumentInformation().setModificationDate(epoch);
        document.setDocumentId(0L);
    }

    /** The look of paper, with the job at the foot of every sheet. */
    static String css(PacketContent content, Paper paper) {
        String lines = content.job().lines().stream()
                .map(line -> "   " + line.label() + " " + line.text())
                .collect(Collectors.joining());
        String foot = (content.job().shop() + "   " + content.job().number() + " "
                        + content.assembly().piece().title() + lines)
                .strip();
        return css(foot, paper);
    }

    /** The look of paper. @param foot what stands at the foot of every sheet */
    static String css(String foot, Paper paper) {
        String safe = foot.replace("\\", "\\\\")
                .replace("\"", "\\\"")
                .replace("<", " ")
                .replace("\n", " ");
        return Resources.text("print.css")
                + "@page{size:%s;@bottom-left{content:\"%s\";font-family:\"National Park\";font-size:8pt}}%n"
                        .formatted(paper.css(), safe);
    }
}
