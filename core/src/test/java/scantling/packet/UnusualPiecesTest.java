package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.cutting.Effort;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;
import scantling.route.Route;

/** Sensible pages of pieces that are out of the usual, read back with PDFBox. */
class UnusualPiecesTest {
    static {
        XRLog.setLoggingEnabled(false);
    }

    private static PacketContent content(String text) {
        Shop usual = Shop.usual();
        Shop shop = new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(5, 1));
        Piece piece = PieceReader.read(text, Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        return Packet.of(
                        Planner.plan(piece, BenchLog.EMPTY, shop).plan(),
                        LengthFormat.MM,
                        new JobLines("", "26-031", List.of(), Optional.of("http://192.168.1.20:7070/jobs/26-031")))
                .content();
    }

    private static String box(String title, String size, String name) {
        return """
            piece: "%s"
            unit: mm
            size: %s
            materials:
              "%s": {solid: white ash, thickness: 18}
            build:
              - case: {of: "%s", top: open}
            """.formatted(title, size, name, name);
    }

    private static List<byte[]> papers(PacketContent content) {
        List<byte[]> papers = new ArrayList<>(List.of(
                PacketPdf.render(content, Paper.A4),
                LabelPages.pdf(content, LabelSheet.plain(Paper.A4)),
                ClientPages.handingOver(content, Drawings.of(content), Paper.A4),
                ClientPages.buildRecord(content, Drawings.of(content), Paper.A4)));
        TemplatePages.pdf(content, Paper.A4).ifPresent(papers::add);
        return papers;
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void greekAndCyrillicNamesArePrintedAsTheyAreWritten() throws IOException {
        List<byte[]> papers =
                papers(content(box("Ящик для рубанков, κιβώτιο", "480 wide, 300 deep, 120 high", "ясень")));
        assertTrue(text(papers.get(0)).contains("Ящик для рубанков, κιβώτιο"));
        assertTrue(text(papers.get(0)).contains("ясень"));
        TextBoxes.assertTidy(papers);
    }

    @Test
    void signsThatNoTypefaceHasAreNamedByTheirNumbers() throws IOException {
        List<byte[]> papers = papers(content(box("桜の箱", "480 wide, 300 deep, 120 high", "ash")));
        String packet = text(papers.get(0));
        assertTrue(packet.contains("U+685C"), packet);
        TextBoxes.assertTidy(papers);
    }

    @Test
    void aVeryLongNameIsBrokenAndStaysOnThePaper() throws IOException {
        String name = "boards from the old threshing floor that grandfather laid in nineteen hundred and eleven";
        String word = "Donaudampfschifffahrtsgesellschaftskapitänskajütenschrankunterteilschubladenfrontplattenhalter";
        TextBoxes.assertTidy(papers(content(box(word + " " + word, "480 wide, 300 deep, 120 high", name))));
    }

    @Test
    void aPartOfThreeMetresIsTiledAtItsTrueSize() throws IOException {
        List<byte[]> papers = papers(content("""
            piece: Long shelf
            unit: mm
            size: 3036 wide, 250 deep, 400 high
            materials:
              ash: {solid: white ash, thickness: 18}
            build:
              - case: {of: ash}
              - columns: {sizes: [rest, rest, rest, rest], divider: ash}
            """));
        TextBoxes.assertTidy(papers);
        // By hand: 3000 between the sides and three dividers of 18 leave 736.5 to each column; with its tongue of 9 in
        // the side the bottom is 3018 long, and a divider begins 745.5 from its near end. The dividers are too far from
        // each other for one tile: with the near end they take four.
        String templates = text(papers.get(4));
        assertTrue(templates.contains("B1, B2, bottom, tile 4 of 4"), templates);
    }

    @Test
    void aPieceWithNothingToDoHasItsPacketAllTheSame() throws IOException {
        PacketContent shelf = Shelf.content();
        PacketContent idle = new PacketContent(
                shelf.assembly(),
                shelf.features(),
                shelf.groups(),
                List.of(),
                List.of(),
                Route.NONE,
                List.of(),
                shelf.format(),
                shelf.job());
        TextBoxes.assertTidy(papers(idle));
    }

    @Test
    void sixHundredPartsTakeManySheetsAndNoneIsSpoilt() throws IOException {
        StringBuilder text = new StringBuilder("""
            piece: A wall of pigeonholes
            unit: mm
            size: 2400 wide, 250 deep, 2400 high
            materials:
              ply: {sheet: birch plywood, thickness: 12}
            build:
              - case: {of: ply}
              - rows:
                  sizes: [rest, rest, rest]
                  divider: ply
                  spaces:
            """);
        for (int row = 1; row <= 3; row++) {
            text.append("        - name: row %d\n          build:\n            - columns:\n".formatted(row))
                    .append("                sizes: [rest, rest, rest, rest, rest, rest, rest, rest, rest, rest]\n")
                    .append("                divider: ply\n                spaces:\n");
            for (int column = 1; column <= 10; column++) {
                text.append("                  - name: column %d\n                    build:\n".formatted(column))
                        .append("                      - shelves: {of: ply, count: 20, held: pins}\n");
            }
        }
        PacketContent content = content(text.toString());
        assertTrue(
                content.assembly().parts().size() >= 600,
                "" + content.assembly().parts().size());
        byte[] packet = PacketPdf.render(content, Paper.A4);
        byte[] templates = TemplatePages.pdf(content, Paper.A4).orElseThrow();
        TextBoxes.assertTidy(List.of(packet, LabelPages.pdf(content, LabelSheet.plain(Paper.A4)), templates));
        // Three rows of ten columns are of one width: what is said of the openings in one is said of its like once.
        assertTrue(text(packet).contains("The same goes for row 2 / column 10 / shelves / opening; row 3"));
        // Each of 600 shelves has its pins on two dividers; most stand as others do, a little further along.
        try (PDDocument document = Loader.loadPDF(templates)) {
            assertTrue(document.getNumberOfPages() < 100, "sheets: " + document.getNumberOfPages());
        }
    }
}
