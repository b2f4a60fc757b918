package scantling.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;
import scantling.measure.Unit;

final class PieceReaderTest {
    private static Length mm(String decimal) {
        return Length.mm(decimal);
    }

    @Test
    void readsTheHeadOfTheDescription() {
        Piece piece = Bench.piece(Bench.CHEST);
        assertEquals("Bedside chest, three drawers", piece.title());
        assertEquals(Optional.of("O. Finchweir"), piece.client());
        assertEquals(Unit.MM, piece.unit());
        assertEquals(
                List.of(mm("500"), mm("420"), mm("620")),
                List.of(
                        piece.width().value(),
                        piece.depth().value(),
                        piece.height().value()));
        assertEquals(
                List.of("drawers / drawer 2 / front / width"),
                List.copyOf(piece.sizes().keySet()));
        assertTrue(piece.sizes().values().stream().allMatch(size -> size.value().equals(mm("149"))));
        assertEquals(List.of("stain", "seal", "top"), List.copyOf(piece.finish().keySet()));
    }
}
