package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.measure.Unit;
import scantling.piece.Piece;

class ChangesTest {
    private static Piece piece(String text) {
        return new Piece(
                "test",
                Optional.empty(),
                Unit.MM,
                Said.mm("1"),
                Said.mm("1"),
                Said.mm("1"),
                Map.of(),
                List.of(),
                Map.of(),
                Map.of(),
                text);
    }

    private static String entered(String text) {
        return Changes.enter("accepted", "top / sag", "thin", piece(text))
                .map(change -> change.applyTo(text))
                .orElse("refused");
    }

    @Test
    void theFirstEntryMakesItsKey() {
        assertEquals("piece: a\naccepted:\n  \"top / sag\": \"thin\"\n", entered("piece: a"));
    }

    @Test
    void furtherEntriesStandAsTheOthersDo() {
        assertEquals(
                "accepted:   # mine\n    \"top / sag\": \"thin\"\n    b / c: d\n",
                entered("accepted:   # mine\n    b / c: d\n"));
        assertEquals("accepted: {b / c: d, \"top / sag\": \"thin\"}", entered("accepted: {b / c: d}"));
        assertEquals("accepted: {\"top / sag\": \"thin\"}", entered("accepted: {}"));
    }

    @Test
    void whatGoesOnOverLinesIsLeftAlone() {
        assertEquals("refused", entered("accepted: {b: c,\n  d: e}"));
    }
}
