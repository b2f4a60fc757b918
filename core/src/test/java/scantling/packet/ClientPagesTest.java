package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import scantling.checks.lasting.Carrying;

/** Read with PDFBox. */
class ClientPagesTest {
    private static PacketContent content(Shown shown) {
        PacketContent shelf = Shelf.content();
        return new PacketContent(
                shelf.assembly(),
                shelf.features(),
                shelf.groups(),
                shelf.blanks(),
                shelf.sheets(),
                shelf.diagrams(),
                shelf.finish(),
                shelf.buying(),
                shelf.route(),
                shelf.findings(),
                shelf.format(),
                new JobLines("Long Barn Workshop", "26-031", List.of(new JobLines.Line("Price", "1234.00"))),
                Optional.empty(),
                shown);
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static String record(Shown shown) throws IOException {
        PacketContent content = content(shown);
        return text(ClientPages.buildRecord(content, Drawings.of(content), Paper.A4));
    }

    private static byte[] handingOver(Shown shown) {
        PacketContent content = content(shown);
        return ClientPages.handingOver(content, Drawings.of(content), Paper.LETTER);
    }

    @Test
    void theRecordNamesNobodyUnlessThatIsChosen() throws IOException {
        String client = Shelf.assembly().piece().client().orElse("nobody at all");
        String silent = record(Shown.NOTHING);
        assertFalse(silent.contains("Long Barn") || silent.contains(client), silent);
        assertTrue(record(new Shown(true, List.of())).contains("Made by Long Barn Workshop"));
    }

    @Test
    void neitherSheetHoldsAPriceOrTheNumberOfTheJob() throws IOException {
        for (String sheet : List.of(record(new Shown(true, List.of())), text(handingOver(Shown.NOTHING)))) {
            assertFalse(sheet.contains("1234") || sheet.contains("Price") || sheet.contains("26-031"), sheet);
        }
    }

    @Test
    void theHandingOverSheetSaysWhatItIsMadeOfAndHowItMoves() throws IOException {
        String sheet = text(handingOver(Shown.NOTHING));
        assertTrue(sheet.contains("solid white ash"), sheet);
        assertTrue(sheet.contains("wider in the damp months"), sheet);
    }

    @Test
    void aShelfCarriesNoMoreThanItsPublishedLoadOnItsArea() {
        // Architectural Woodwork Standards, ed. 1, 1.2.21: 40 lb/ft2 in general use, 1915 Pa; on 776 by 200 at most
        // 297.2 N or 30.3 kg. 18 of ash over the 764 between the ends keeps L/144 under it.
        List<Carrying> shelves = Carrying.of(Shelf.assembly());
        assertFalse(shelves.isEmpty());
        for (Carrying shelf : shelves) {
            assertTrue(shelf.kilograms() <= 30.4, shelf::toString);
            assertTrue(shelf.kilograms() > 30.2, shelf::toString);
            assertTrue(shelf.straight() <= shelf.kilograms(), shelf::toString);
        }
    }

    @Test
    void aPhotographStandsOnTheSheetWithItsCaption() throws IOException {
        BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(image, "png", png);
        Shown shown = new Shown(false, List.of(new Shown.Picture("png", png.toByteArray(), "The ends, dry")));
        try (PDDocument document = Loader.loadPDF(handingOver(shown))) {
            int pictures = 0;
            for (var page : document.getPages()) {
                for (var name : page.getResources().getXObjectNames()) {
                    pictures += page.getResources().isImageXObject(name) ? 1 : 0;
                }
            }
            assertEquals(1, pictures);
            assertTrue(new PDFTextStripper().getText(document).contains("The ends, dry"));
        }
    }

    @Test
    void bothSheetsKeepTheirWordsOnThePaperAndApart() throws IOException {
        for (byte[] pdf : List.of(
                handingOver(Shown.NOTHING),
                ClientPages.buildRecord(content(Shown.NOTHING), Drawings.of(content(Shown.NOTHING)), Paper.A4))) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                for (int page = 1; page <= document.getNumberOfPages(); page++) {
                    List<TextBoxes.Box> boxes = TextBoxes.of(document, page);
                    assertEquals(List.of(), TextBoxes.overlaps(boxes));
                    assertEquals(
                            List.of(),
                            TextBoxes.beyond(boxes, document.getPage(page - 1).getMediaBox()));
                }
            }
        }
    }
}
