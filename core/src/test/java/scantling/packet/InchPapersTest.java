package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;
import scantling.piece.BenchLog;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Started;

/** Papers asked for in inches are in inches; only what the trade itself names in millimetres keeps them. */
class InchPapersTest {
    static {
        XRLog.setLoggingEnabled(false);
    }

    /** Bored hinge cups, sleeves of the 32 mm system and nozzles of spray guns are sold by millimetres everywhere. */
    private static final List<Pattern> TRADE = Stream.of(
                    "35 mm cup hinge",
                    "shelf pin 5 mm",
                    "32 mm system",
                    "nozzle [\\d. to]+ mm",
                    // what is left over beside a fraction, and the line that explains it
                    "[+-]0[.]\\d ?mm",
                    "and 0[.]1 mm more",
                    "\\d+ mm \\([\\d /]+ in\\)")
            .map(Pattern::compile)
            .toList();

    private static final Pattern METRIC = Pattern.compile(".{0,60}(?<![A-Z\\d.])\\d[\\d.]* ?mm\\b.{0,20}");

    private static PacketContent content(String starter) {
        Plan plan = Planner.plan(Started.piece(starter).told(Unit.INCH), BenchLog.EMPTY, Started.shop(20))
                .plan();
        return Packet.of(plan, LengthFormat.INCH).content();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bookcase", "bedside-chest", "sideboard", "dining-table"})
    void nothingButTradeNamesIsInMillimetres(String starter) throws IOException {
        TreeSet<String> metric = new TreeSet<>();
        String text = text(PacketPdf.render(content(starter), Paper.LETTER));
        for (Pattern name : TRADE) {
            text = name.matcher(text).replaceAll("");
        }
        METRIC.matcher(text).results().forEach(found -> metric.add(found.group()));
        assertEquals(new TreeSet<>(), metric);
    }

    /** 8 and 2 inches of 25.4 mm, measured in the PDF itself. */
    @Test
    void theLinesThatProveAPrintAreWholeInchesLong() throws IOException {
        PacketContent content = content("wall-shelf");
        try (PDDocument templates =
                Loader.loadPDF(TemplatePages.pdf(content, Paper.LETTER).orElseThrow())) {
            List<Double> lines = StrokedLines.upright(templates.getPage(0));
            assertTrue(lines.stream().anyMatch(line -> Math.abs(line - 203.2) < 0.1), lines::toString);
            assertTrue(words(templates).contains("this line is 8 in from"), words(templates));
        }
        try (PDDocument packet = Loader.loadPDF(PacketPdf.render(content, Paper.LETTER))) {
            assertTrue(words(packet).contains("2 in when printed at 100 %"), words(packet));
        }
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return words(document);
        }
    }

    /** Lines run on: a size may stand at the end of one and its unit at the beginning of the next. */
    private static String words(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
}
