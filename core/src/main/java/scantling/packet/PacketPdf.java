package scantling.packet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import scantling.drawing.ProofLine;
import scantling.measure.Beside;
import scantling.measure.LengthFormat;

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
        PacketMatter matter = new PacketMatter(content, drawings, false);
        String css = css(content, paper);
        List<Callable<Optional<Typeset>>> shares = shares(only).stream()
                .<Callable<Optional<Typeset>>>map(share -> () -> share(matter, share, css))
                .toList();
        List<Typeset> sheets =
                Beside.all(shares).stream().flatMap(Optional::stream).toList();
        return numbered(sheets.isEmpty() ? List.of(sheets(matter, only, css)) : sheets);
    }

    /** Its sheets; none when it has nothing to say. */
    private static Optional<Typeset> share(PacketMatter matter, Set<String> share, String css) {
        return share.stream().anyMatch(matter::has) ? Optional.of(sheets(matter, share, css)) : Optional.empty();
    }

    private static Typeset sheets(PacketMatter matter, Set<String> only, String css) {
        PaperFigures figures = new PaperFigures();
        PacketPage page = PacketPage.onPaper(matter, figures, only);
        return typeset(Templates.render("packet.jte", page, css), figures);
    }

    /**
     * Two shares of the sections wanted, laid out beside each other: the second begins with a section that begins a sheet, and
     * has about half of the sheets.
     */
    private static List<Set<String>> shares(Set<String> only) {
        List<String> all = PacketSections.words();
        int middle = all.indexOf("joints");
        return Stream.of(all.subList(0, middle), all.subList(middle, all.size()))
                .map(share -> share.stream()
                        .filter(word -> only.isEmpty() || only.contains(word))
                        .collect(Collectors.toSet()))
                .filter(share -> !share.isEmpty())
                .toList();
    }

    /**
     * Gets the paper's tools ready: typefaces read, styles parsed, classes loaded. It changes no result; done while a plan
     * is worked out, it takes seconds off the first packet of a process.
     */
    public static void getReady() {
        PaperFigures figures = new PaperFigures();
        String proof = figures.place(ProofLine.draw(LengthFormat.MM));
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

    /** Puts a page of markup on sheets of paper, and numbers them. */
    static byte[] render(String html, PaperFigures figures) {
        return numbered(List.of(typeset(html, figures)));
    }

    /** Puts a page of markup on sheets of paper that bear nothing else. */
    static byte[] unnumbered(String html, PaperFigures figures) {
        try (Typeset sheets = typeset(html, figures)) {
            return written(sheets.document());
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private static Typeset typeset(String html, PaperFigures figures) {
        Signs signs = Signs.of(html + figures.words());
        figures.helped(!signs.helped().isEmpty());
        return Typeset.of(signs.on(html), figures);
    }

    private static byte[] numbered(List<Typeset> sheets) {
        try {
            Typeset first = sheets.get(0);
            for (Typeset next : sheets.subList(1, sheets.size())) {
                first.append(next);
            }
            SheetNumbers.write(first.document(), first.letters().get(0));
            return written(first.document());
        } catch (IOException e) {
            throw failed(e);
        } finally {
            sheets.forEach(Typeset::close);
        }
    }

    private static byte[] written(PDDocument document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        fix(document);
        PaperTags.slim(document);
        document.save(out, CompressParameters.NO_COMPRESSION);
        return out.toByteArray();
    }

    private static UncheckedIOException failed(IOException why) {
        return new UncheckedIOException("A packet in memory could not be written.", why);
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
