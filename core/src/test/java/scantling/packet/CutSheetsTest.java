package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import scantling.drawing.CutSheet;
import scantling.measure.LengthFormat;

/** The bookcase: boards of one size, many of them cut alike. */
class CutSheetsTest {
    private static final PacketContent CONTENT = StarterPapers.content("bookcase", LengthFormat.MM);

    /** As by hand: each diagram that says how many it stands for, and the others once, are all the boards and sheets. */
    @Test
    void boardsCutAlikeAreDrawnOnceAndCounted() {
        int told = CONTENT.diagrams().stream().mapToInt(CutSheetsTest::many).sum();

        assertEquals(CONTENT.sheets().size(), told);
        assertTrue(
                CONTENT.diagrams().size() <= CONTENT.sheets().size() / 2,
                () -> CONTENT.diagrams().size() + " diagrams");
    }

    private static int many(CutSheet sheet) {
        return sheet.remarks().isEmpty()
                ? 1
                : Integer.parseInt(sheet.remarks().get(0).split(" ")[1]);
    }

    /** The two sides are a pair, so their strips have two marks and one size. */
    @Test
    void wherePartsDifferEachCopySaysWhichItGives() {
        CutSheet sides = CONTENT.diagrams().stream()
                .filter(sheet ->
                        sheet.pieces().stream().anyMatch(piece -> piece.label().equals("B1/B2")))
                .findFirst()
                .orElseThrow();

        assertEquals(3, sides.remarks().size(), sides.remarks()::toString);
        assertTrue(sides.remarks().get(1).contains(" B1 | waste"), sides.remarks()::toString);
        assertTrue(sides.remarks().get(2).contains(" B2 | waste"), sides.remarks()::toString);
    }

    @Test
    void theBenchStillHasADrawingForEveryBoardWithItsOwnParts() {
        List<String> labels = CONTENT.sheets().stream()
                .flatMap(sheet -> sheet.pieces().stream())
                .map(CutSheet.Placed::label)
                .toList();

        assertTrue(Stream.of("B1", "B2")
                .allMatch(mark -> labels.stream().filter(mark::equals).count() == 3));
        assertTrue(labels.stream().noneMatch(label -> label.contains("/")), labels::toString);
    }
}
