package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Starters;
import scantling.drawing.Drawing;
import scantling.drawing.Mark;
import scantling.feature.WorkGroup;
import scantling.measure.LengthFormat;
import scantling.plan.Plan;

/** On which sheet each drawing and its table were printed, read back with PDFBox in the order they were drawn. */
class DrawingsWithTablesTest {
    static {
        XRLog.setLoggingEnabled(false);
    }

    static Stream<String> starters() {
        return Starters.NAMES.stream();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyDrawingStandsOnTheSheetOfItsTable(String starter) throws IOException {
        Plan plan = StarterPapers.plan(starter);
        List<String> wrong = new ArrayList<>();
        for (LengthFormat format : List.of(LengthFormat.MM, LengthFormat.INCH)) {
            PacketContent content = Packet.of(plan, format).content();
            Drawings drawings = Drawings.of(content);
            List<PartGroup> groups = Drawings.drawn(content.groups()).toList();
            for (Paper paper : Paper.values()) {
                List<String> sheets = sheets(PacketPdf.render(content, drawings, paper, Set.of("drilling")));
                for (int i = 0; i < groups.size(); i++) {
                    wrong.addAll(wrong(sheets, drawings.parts().get(i), groups.get(i)));
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    private static List<String> wrong(List<String> sheets, Drawing drawing, PartGroup group) {
        String caption = plain(drawing.title() + ". Scale " + drawing.scale().words());
        List<String> with =
                sheets.stream().filter(sheet -> sheet.contains(caption)).toList();
        if (with.size() != 1) {
            return List.of("%s stands on %d sheets".formatted(caption, with.size()));
        }
        String sheet = with.get(0);
        List<String> wrong = new ArrayList<>();
        figures(drawing)
                .filter(figure -> !sheet.contains(figure))
                .forEach(figure -> wrong.add("%s: %s is drawn on another sheet".formatted(caption, figure)));
        String after = sheet.substring(sheet.indexOf(caption) + caption.length());
        if (!group.work().isEmpty()
                && !table(group.work().get(0)).matcher(after).lookingAt()) {
            wrong.add("%s: its table begins on another sheet, here is %s".formatted(caption, after));
        }
        return wrong;
    }

    /** The head of a table and the first cells of its first line. */
    private static Pattern table(WorkGroup first) {
        return Pattern.compile(
                "No\\.WorkOnthe.*?1(\\d+×)?" + plain(first.sample().kind().words())
                        + plain(first.sample().surface().words()));
    }

    private static Stream<String> figures(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Figure.class::isInstance)
                .map(mark -> plain(((Mark.Figure) mark).words().words()));
    }

    /** Spaces and line ends come as the lines fall. */
    private static String plain(String words) {
        return words.replaceAll("\\s+", "");
    }

    private static List<String> sheets(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> sheets = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                sheets.add(plain(stripper.getText(document)));
            }
            return sheets;
        }
    }
}
