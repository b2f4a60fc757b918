package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import scantling.construct.Finding;

class AlikeFindingsTest {
    private static Finding close(String part, int hole, String far) {
        return new Finding(
                Finding.Severity.CAUTION,
                part,
                "A hole in %s / hole %d stands %s mm from its end.".formatted(part, hole, far),
                List.of(),
                "by hand",
                "Move it.");
    }

    private static List<List<String>> told(Finding... findings) {
        PacketContent shelf = Shelf.content();
        PacketContent content = new PacketContent(
                shelf.assembly(),
                shelf.features(),
                shelf.groups(),
                shelf.blanks(),
                shelf.sheets(),
                shelf.route(),
                List.of(findings),
                shelf.format(),
                shelf.job());
        return AlikeFindings.of(content).stream()
                .map(same -> same.stream().map(Finding::subject).toList())
                .toList();
    }

    @Test
    void whatIsSaidOfThreePartsIsToldOnce() {
        assertEquals(
                List.of(List.of("left end", "right end", "back rail")),
                told(close("left end", 1, "8.5"), close("right end", 1, "8.5"), close("back rail", 1, "8.5")));
    }

    @Test
    void twoAreToldEach() {
        assertEquals(
                List.of(List.of("left end"), List.of("right end")),
                told(close("left end", 1, "8.5"), close("right end", 1, "8.5")));
    }

    @Test
    void anotherFigureMakesAnotherFinding() {
        assertEquals(
                List.of(List.of("left end"), List.of("right end"), List.of("back rail")),
                told(close("left end", 1, "8.5"), close("right end", 1, "7.5"), close("back rail", 1, "8.5")));
    }

    @Test
    void onThePageTheOthersAreNamedAndMarkedWithTheSameLetter() {
        Finding[] same = Stream.of("left end", "right end", "back rail")
                .map(part -> close(part, 1, "8.5"))
                .toArray(Finding[]::new);
        PacketContent shelf = Shelf.content();
        PacketContent content = new PacketContent(
                shelf.assembly(),
                shelf.features(),
                shelf.groups(),
                shelf.blanks(),
                shelf.sheets(),
                shelf.route(),
                List.of(same),
                shelf.format(),
                shelf.job());
        PacketPage page = PacketPage.onScreen(content, Drawings.of(content));
        MarginNote note = page.allNotes().get(0);
        assertEquals("The same goes for right end; back rail.", note.sameOf());
        assertEquals(
                List.of("a"),
                MarginNote.letters(page.allNotes(), List.of("back rail")).first());
    }
}
