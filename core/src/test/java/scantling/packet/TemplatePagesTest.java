package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import scantling.feature.Features;

/** Measured in the PDF itself, with PDFBox, at 72 points to the inch of 25.4 mm. */
class TemplatePagesTest {
    private static final byte[] BYTES =
            TemplatePages.pdf(Shelf.content(), Paper.A4).orElseThrow();

    @Test
    void theProofLineIsTwoHundredMillimetresToATenth() throws IOException {
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            List<Double> lines = StrokedLines.upright(document.getPage(0));
            assertTrue(lines.stream().anyMatch(line -> Math.abs(line - 200) < 0.1), lines.toString());
        }
    }

    @Test
    void aHoleTemplateHasItsHolesAtTheirTrueDistanceFromTheNamedEdges() throws IOException {
        // By hand: the rail's screw holes are 60 from its near end; it is 764 long, so the template is dashed at the
        // other side.
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("C: back rail / screws, wall screw, 5 × 70, face side"), text);
            assertTrue(text.contains("near end"), text);
        }
    }

    @Test
    void aSettingOutStripLongerThanASheetIsTiled() throws IOException {
        // By hand: an end is 600 long, a tile 180, and what stands on it stands near its two ends.
        try (PDDocument document = Loader.loadPDF(BYTES)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("A1, left end, tile 2 of 2"), text);
        }
    }

    @Test
    void aPieceWithoutHolesShapesOrPlacesNeedsNone() {
        PacketContent content = Shelf.content();
        PacketContent plain = new PacketContent(
                content.assembly(),
                Features.NONE,
                PartGroups.of(content.assembly(), Features.NONE),
                content.blanks(),
                content.sheets(),
                content.route(),
                content.findings(),
                content.format(),
                content.job());
        assertEquals(Optional.empty(), TemplatePages.pdf(plain, Paper.A4));
    }
}
