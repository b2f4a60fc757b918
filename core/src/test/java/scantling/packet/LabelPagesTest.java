package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.measure.LengthFormat;

class LabelPagesTest {
    @ParameterizedTest
    @MethodSource("sheets")
    void everyCodeIsReadByAnotherReader(LabelSheet sheet) throws Exception {
        byte[] pdf = LabelPages.pdf(Shelf.content(), sheet);
        Set<String> read = new TreeSet<>();
        for (Result result : codes(pdf)) {
            read.add(result.getText());
        }
        assertEquals(
                Set.of(
                        "26-031 A1 left end",
                        "26-031 A2 right end",
                        "26-031 B lower shelf",
                        "26-031 B upper shelf",
                        "26-031 C back rail"),
                read);
    }

    private static Result[] codes(byte[] pdf) throws IOException, NotFoundException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 300);
            int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
            RGBLuminanceSource source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
            return new QRCodeMultiReader()
                    .decodeMultiple(
                            new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, true));
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everyLabelLiesOnItsPaperAndBesideTheOthers(LabelSheet sheet) {
        double wide = sheet.paper() == Paper.A4 ? 210 : 215.9;
        double high = sheet.paper() == Paper.A4 ? 297 : 279.4;
        int last = sheet.perSheet() - 1;
        assertTrue(sheet.leftOf(last) + sheet.width() <= wide + 0.01, sheet::name);
        assertTrue(sheet.topOf(last) + sheet.height() <= high + 0.01, sheet::name);
        assertTrue(sheet.leftOf(1) >= sheet.leftOf(0) + sheet.width(), sheet::name);
        assertTrue(sheet.topOf(sheet.columns()) >= sheet.topOf(0) + sheet.height(), sheet::name);
    }

    static Iterable<LabelSheet> sheets() {
        return LabelSheet.all();
    }

    @Test
    void inInchesTooALabelTellsTheWholeSize() throws IOException {
        PacketContent chest = StarterPapers.content("bedside-chest", LengthFormat.INCH);
        try (PDDocument document = Loader.loadPDF(LabelPages.pdf(chest, LabelSheet.plain(Paper.LETTER)))) {
            String text = new PDFTextStripper().getText(document);
            // By hand: the front lipping (A) is 500 long; 500 / 25.4 = 19.685, and 19 11/16 is 19.6875.
            assertTrue(text.contains("19 11/16 ×"), text);
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void onEverySheetALabelTellsTheWholeSize(LabelSheet sheet) throws IOException {
        // By hand: the first drawer front (G) is 420 by 130 by 20; in 32nds of an inch 16 17/32, 5 1/8 and 25/32.
        Map<LengthFormat, String> sizes = Map.of(
                LengthFormat.MM, "420.0 × 130.0 × 20.0",
                LengthFormat.INCH, "16 17/32 × 5 1/8 × 25/32");
        for (Map.Entry<LengthFormat, String> size : sizes.entrySet()) {
            PacketContent chest = StarterPapers.content("bedside-chest", size.getKey());
            try (PDDocument document = Loader.loadPDF(LabelPages.pdf(chest, sheet))) {
                String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
                assertTrue(text.contains(size.getValue()), text);
            }
        }
    }

    @Test
    void aVeryLongNameStaysOnItsLabel() throws IOException {
        byte[] pdf = LabelPages.pdf(Shelf.content(), LabelSheet.find("a4-65").orElseThrow());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(1, document.getNumberOfPages());
        }
    }
}
