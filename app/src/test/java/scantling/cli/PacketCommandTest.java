package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PacketCommandTest {
    @TempDir
    Path shop;

    private Path piece = Path.of("");
    private final StringWriter err = new StringWriter();

    private int scantling(String... args) {
        return Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), args);
    }

    @BeforeEach
    void aShelfIsStarted() {
        piece = shop.resolve("wall-shelf.yaml");
        assertEquals(Exit.WELL, scantling("new", piece.toString()));
    }

    private List<String> written(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void onlyWhatIsNamedIsWritten() throws IOException {
        Path out = shop.resolve("out");
        assertEquals(
                Exit.WELL,
                scantling("packet", piece.toString(), "--only", "parts,tables,labels", "--out", out.toString()));
        assertEquals(List.of("labels.pdf", "packet.pdf", "parts.csv"), written(out));
    }

    @Test
    void withoutAFolderItIsWrittenBesideThePiece() throws IOException {
        assertEquals(Exit.WELL, scantling("packet", piece.toString(), "--only", "tables,scene"));
        assertEquals(List.of("parts.csv", "piece.gltf"), written(shop.resolve("wall-shelf-packet")));
    }

    @Test
    void theMakersCostsAreWrittenOnlyWhenNamed() throws IOException {
        Path own = shop.resolve("own");
        assertEquals(
                Exit.WELL, scantling("packet", piece.toString(), "--only", "cost,timber", "--out", own.toString()));
        assertEquals(List.of("cost-sheet.pdf", "timber.pdf"), written(own));
        Path all = shop.resolve("all");
        assertEquals(Exit.WELL, scantling("packet", piece.toString(), "--out", all.toString()));
        assertTrue(written(all).contains("packet.pdf"));
        assertTrue(written(all).stream().noneMatch(file -> file.startsWith("cost") || file.startsWith("timber")));
    }

    @Test
    void aFractionThatIsNoneIsRefused() {
        assertEquals(Exit.WRONG, scantling("packet", piece.toString(), "--only", "parts", "--fraction", "12"));
        assertTrue(err.toString().contains("--fraction 12: say 16, 32, 64 or 128"), err::toString);
    }

    @Test
    void aWordThatNamesNothingIsRefusedWithAllThereAre() {
        assertEquals(Exit.WRONG, scantling("packet", piece.toString(), "--only", "parts,holes,lables"));
        assertTrue(err.toString().contains("holes, lables"), err::toString);
        assertTrue(err.toString().contains("drilling"), err::toString);
        assertTrue(err.toString().contains("labels"), err::toString);
    }

    @Test
    void whereNothingIsNamedOrNothingCanBeWrittenItIsSaidAndNoFolderIsLeft() {
        Path nothing = shop.resolve("nothing");
        for (String words : List.of("", ",", " ")) {
            assertEquals(
                    Exit.WRONG, scantling("packet", piece.toString(), "--only", words, "--out", nothing.toString()));
        }
        assertTrue(err.toString().contains("Nothing is named. Sections: cover"), err::toString);
        assertEquals(
                Exit.WRONG, scantling("packet", piece.toString(), "--only", "calendar", "--out", nothing.toString()));
        assertTrue(err.toString().contains("A calendar needs --from"), err::toString);
        assertTrue(Files.notExists(nothing), "a folder was left");
    }

    @Test
    void wordsMayStandApart() throws IOException {
        Path out = shop.resolve("apart");
        assertEquals(
                Exit.WELL,
                scantling("packet", piece.toString(), "--only", "parts, drilling, tables", "--out", out.toString()));
        assertEquals(List.of("packet.pdf", "parts.csv"), written(out));
    }

    @Test
    void aZipHoldsTheSameFilesAndTheSamePlanGivesTheSameBytes() throws IOException {
        Path one = shop.resolve("one.zip");
        Path two = shop.resolve("two.zip");
        for (Path zip : List.of(one, two)) {
            assertEquals(
                    Exit.WELL,
                    scantling("packet", piece.toString(), "--only", "tables,data,outlines", "--zip", zip.toString()));
        }
        assertEquals(-1, Files.mismatch(one, two));
        try (ZipFile zip = new ZipFile(one.toFile())) {
            assertTrue(zip.size() >= 4);
            assertTrue(zip.getEntry("plan.json").getSize() > 1000);
        }
    }

    @Test
    void paperUnitAndLabelsThatAreNotThereAreRefused() {
        assertEquals(Exit.WRONG, scantling("packet", piece.toString(), "--paper", "a3"));
        assertEquals(Exit.WRONG, scantling("packet", piece.toString(), "--unit", "ell"));
        assertEquals(Exit.WRONG, scantling("packet", piece.toString(), "--labels", "a4-7"));
        assertTrue(err.toString().contains("a4-24"), err::toString);
    }

    @Test
    void theZipOfTheLotHoldsACalendarOnceABeginningIsSaid() throws IOException {
        Path zip = shop.resolve("all.zip");
        assertEquals(
                Exit.WELL,
                scantling("packet", piece.toString(), "--from", "2026-11-25T08:00", "--zip", zip.toString()));
        try (ZipFile files = new ZipFile(zip.toFile())) {
            for (String name : List.of(
                    "packet.pdf",
                    "templates.pdf",
                    "labels.pdf",
                    "job-sheet.html",
                    "parts.csv",
                    "plan.json",
                    "piece.gltf",
                    "route.ics",
                    "drawings/front.svg")) {
                assertTrue(files.getEntry(name) != null, name);
            }
        }
    }

    @Test
    void allThatIsSaidIsSaidInTheUnitAskedFor() throws IOException {
        // The shelf is written in inches: its boards are 96 by 6 in, at 25.4 mm to the inch 2438.4 by 152.4.
        Path out = shop.resolve("metric");
        assertEquals(
                Exit.WELL,
                scantling("packet", piece.toString(), "--only", "buying", "--unit", "mm", "--out", out.toString()));
        try (PDDocument document = Loader.loadPDF(out.resolve("packet.pdf").toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("2438.4 x 152.4 mm"), text);
            assertFalse(text.contains(" in "), text);
        }
    }

    @Test
    void aUnitThatIsNoneIsRefusedBeforeAnythingIsWorkedOut() {
        assertEquals(
                Exit.WRONG, scantling("packet", shop.resolve("nowhere.yaml").toString(), "--unit", "ell"));
        assertTrue(err.toString().contains("--unit ell: say inch or mm"), err::toString);
    }

    @Test
    void aBeginningThatIsNoMomentIsRefused() {
        assertEquals(Exit.WRONG, scantling("packet", piece.toString(), "--from", "tomorrow"));
        assertTrue(err.toString().contains("2026-11-25T08:00"), err::toString);
    }
}
