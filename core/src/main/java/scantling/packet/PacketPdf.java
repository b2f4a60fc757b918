package scantling.packet;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.GregorianCalendar;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import scantling.drawing.ProofLine;

/**
 * The packet for the bench as PDF: tagged, with an outline, sheets numbered, drawings true to scale when printed at 100 %.
 * The same content gives the same bytes.
 */
public final class PacketPdf {
    private static final String PARK = "National Park";
    private static final String ALEGREYA = "Alegreya Sans";

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
        render(
                "<html lang=\"en\"><head><title>-</title><meta name=\"subject\" content=\"-\"/><style>" + faces()
                        + Resources.text("print.css")
                        + "</style></head><body><h2>-</h2><table"
                        + " class=\"rows\"><thead><tr><th>-</th></tr></thead><tbody><tr><td class=\"mark\"><span"
                        + " class=\"n worked\">1</span></td></tr></tbody></table><p class=\"note\">-</p><div"
                        + " class=\"figure\">" + proof
                        + "</div></body></html>",
                figures);
    }

    /** Puts a page of markup on paper. */
    static byte[] render(String html, PaperFigures figures) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder(html, figures, out).buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            fix(document);
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException("A packet in memory could not be written.", e);
        }
        return out.toByteArray();
    }

    private static PdfRendererBuilder builder(String html, PaperFigures figures, ByteArrayOutputStream out) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useObjectDrawerFactory(figures);
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Scantling");
        builder.withHtmlContent(html, null);
        builder.toStream(out);
        return builder;
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
        return faces()
                + Resources.text("print.css")
                + "@page{size:%s;@bottom-left{content:\"%s\";font-family:\"National Park\";font-size:8pt}}%n"
                        .formatted(paper.css(), safe);
    }

    static String faces() {
        return Resources.face(PARK, "normal", 400, "national-park-400-normal.ttf", "ttf")
                + Resources.face(PARK, "normal", 500, "national-park-500-normal.ttf", "ttf")
                + Resources.face(PARK, "normal", 700, "national-park-700-normal.ttf", "ttf")
                + Resources.face(ALEGREYA, "italic", 500, "alegreya-sans-500-italic.ttf", "ttf")
                + Resources.face(ALEGREYA, "italic", 700, "alegreya-sans-700-italic.ttf", "ttf");
    }
}
