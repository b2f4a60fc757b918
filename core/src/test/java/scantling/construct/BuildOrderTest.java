package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.measure.Ledger;
import scantling.piece.Element;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;

/** A piece is the same whatever the order in which what encloses and what is enclosed are written. */
class BuildOrderTest {
    private static Piece piece(String text) {
        ReadResult read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), read.problems());
        return read.piece().orElseThrow();
    }

    private static String starter(String name) {
        try (InputStream in = Starters.open(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static Piece backward(Piece piece) {
        List<Element> steps = new ArrayList<>(piece.steps());
        Collections.reverse(steps);
        return new Piece(
                piece.title(),
                piece.client(),
                piece.unit(),
                piece.width(),
                piece.depth(),
                piece.height(),
                piece.materials(),
                steps,
                piece.sizes(),
                piece.finish(),
                piece.text());
    }

    private static List<String> sorted(Piece piece) {
        Tolerances tolerances = Tolerances.standard();
        Ledger ledger = new Ledger(Map.of(), Map.of(), tolerances.of("measured at the bench"));
        Assembly assembly = Construction.assemble(piece, ledger, tolerances);
        assertEquals(List.of(), assembly.problems());
        Judge.sound(assembly);
        return Said.list(assembly).stream().sorted().toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"sideboard", "dining-table"})
    void aStarterWrittenBackwardHasTheSameParts(String name) {
        Piece piece = piece(starter(name));
        assertEquals(sorted(piece), sorted(backward(piece)));
    }

    @Test
    void aTopWrittenLastLiesOverTheCaseAndDoorsWrittenFirstHangInIt() {
        Piece piece = piece("""
            piece: Cupboard
            unit: mm
            size: 600 wide, 400 deep, 800 high
            materials: {oak: {solid: white oak, thickness: 20}, thin: {sheet: birch plywood, thickness: 6}}
            build:
              - shelves: {of: oak, count: 1, held: pins}
              - doors: {of: oak, count: 2, handles: 0}
              - case: oak
              - plinth: oak 80
              - top: {of: oak, overhang: {front: 15}}
              - back: thin
            """);
        List<String> parts = sorted(piece);
        // By ruler: sides 800 less the top 20 and the plinth 80; deep 400 less the back 6.
        assertTrue(parts.contains("left side: 700 x 394 x 20"), parts::toString);
        assertTrue(parts.contains("top: 600 x 415 x 20"), parts::toString);
        // Between the sides 560: less three gaps of 2, halved; high 660 less two gaps.
        assertTrue(
                parts.stream()
                        .anyMatch(part ->
                                part.startsWith("doors / left door") && part.contains("656") && part.contains("277")),
                parts::toString);
    }

    @Test
    void handlesZeroMeansNone() {
        String text = starter("sideboard");
        Piece piece = piece(text.replace("count: 2\n", "count: 2\n                handles: 0\n")
                .replace("fronts: {of: oak}", "fronts: {of: oak, handles: 0}"));
        Ledger ledger = new Ledger(Map.of(), Map.of(), Tolerances.standard().of("measured at the bench"));
        Assembly assembly = Construction.assemble(piece, ledger, Tolerances.standard());
        assertEquals(
                0,
                assembly.fittings().stream()
                        .filter(fitting -> fitting.what().equals("handle"))
                        .count());
    }
}
