package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PacketPdfTest {
    private static final double TENTH = 0.1;
    private static final byte[] BYTES = PacketPdf.render(Shelf.content(), Paper.A4);

    @Test
    void theOverallWidthMeasuresTrueToItsScaleOnPaper() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            // 800 mm at 1 : 8, and at the next scales as a proof that another length is not found by chance.
            List<Double> lines = StrokedLines.level(document.getPage(0));
            assertTrue(hasLine(lines, 800 / 8.0));
            assertFalse(hasLine(lines, 800 / 8.5));
            assertFalse(hasLine(lines, 800 / 15.0));
        }
    }

    @Test
    void figuresInDrawingsAreText() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            String cover = text(document, 1);
            // The width and the height of the shelf, as the front view has them.
            assertTrue(cover.contains("Front. Scale 1 : 8"), cover);
            assertTrue(
                    cover.lines().filter(line -> line.strip().equals("800.0")).count() == 1, cover);
        }
    }

    @Test
    void theProofLineIsFiftyMillimetresLong() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            int page = text(document, 1).contains("50 mm when printed") ? 0 : 1;
            assertTrue(text(document, page + 1).contains("50 mm when printed"));
            assertTrue(hasLine(StrokedLines.level(document.getPage(page)), 50));
        }
    }

    @Test
    void everySheetIsNumberedAndNamed() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                String text = text(document, page);
                assertTrue(text.contains("sheet " + page + " of " + pages), text);
                assertTrue(text.contains("26-031 Wall shelf"), text);
            }
        }
    }

    @Test
    void theStopStandsOnTheFirstSheetAndTheWholePacketIsThere() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            assertTrue(text(document, 1).contains("The lower shelf bends too far"));
            String all = new PDFTextStripper().getText(document);
            for (String words : List.of(
                    "Parts",
                    "Milling list",
                    "Cutting diagrams",
                    "Each part from its marks",
                    "Joints",
                    "Hardware",
                    "Will it last",
                    "Findings",
                    "776.0",
                    "this uses 1.")) {
                assertTrue(all.contains(words), words);
            }
        }
    }

    @Test
    void everyPartDrawingStandsOnTheSheetOfItsCaption() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                String text = text(document, page);
                if (text.contains("Front. Scale") || text.contains("From above")) {
                    continue; // the whole piece has lines as long, at the same scale
                }
                List<Double> lines = StrokedLines.level(document.getPage(page - 1));
                // 776 mm and 764 mm at 1 : 8.
                assertEquals(text.contains("B, lower shelf, upper shelf"), hasLine(lines, 97.0), text);
                assertEquals(text.contains("C, back rail."), hasLine(lines, 95.5), text);
            }
        }
    }

    @Test
    void itIsTaggedTitledAndHasAnOutline() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertEquals("26-031 Wall shelf", document.getDocumentInformation().getTitle());
            List<String> outline = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                outline.add(item.getTitle());
            }
            assertEquals(
                    List.of(
                            "Drawing",
                            "Parts",
                            "Milling list",
                            "Cutting diagrams",
                            "Each part from its marks",
                            "Machine settings",
                            "Joints",
                            "Hardware",
                            "Will it last",
                            "Findings"),
                    outline);
        }
    }

    @Test
    void everyEntryOfTheOutlineOpensTheSheetItsSectionBeginsOn() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                int page = document.getPages().indexOf(item.findDestinationPage(document));
                String heading = item.getTitle().equals("Drawing") ? "Wall shelf" : item.getTitle();
                String text = text(document, page + 1);
                assertTrue(text.lines().anyMatch(line -> line.strip().equals(heading)), heading + ": " + text);
            }
        }
    }

    @Test
    void tagsOfAllSheetsHangOnOneTree() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
            Set<Integer> numbers = new HashSet<>();
            for (PDPage page : document.getPages()) {
                int number = page.getStructParents();
                assertTrue(numbers.add(number), "two sheets have " + number);
                assertTrue(root.getParentTree().getValue(number) != null, "nothing hangs on " + number);
            }
        }
    }

    @Test
    void sheetsHaveTheSizeOfThePaper() throws IOException {
        // ISO 216: A4 is 210 by 297 mm; US Letter is 8 1/2 by 11 in; a point is 1/72 in.
        assertSize(BYTES, 210 / 25.4 * 72, 297 / 25.4 * 72);
        assertSize(PacketPdf.render(Shelf.content(), Paper.LETTER), 8.5 * 72, 11 * 72);
    }

    @Test
    void theSamePacketIsTheSameBytes() {
        assertArrayEquals(BYTES, PacketPdf.render(Shelf.content(), Paper.A4));
    }

    private static void assertSize(byte[] pdf, double width, double height) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                assertEquals(width, page.getMediaBox().getWidth(), 0.5);
                assertEquals(height, page.getMediaBox().getHeight(), 0.5);
            }
        }
    }

    private static boolean hasLine(List<Double> lines, double millimetres) {
        return lines.stream().anyMatch(line -> Math.abs(line - millimetres) <= TENTH);
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }
}
