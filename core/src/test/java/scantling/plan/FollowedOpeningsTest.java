package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;

/** What is not yet cut follows the opening it lies in, before or across, once the bench has measured that. */
class FollowedOpeningsTest {
    private static final String CASE = """
        piece: Cabinet
        unit: mm
        size: 600 wide, 400 deep, 800 high
        materials:
          ply: {sheet: birch plywood, thickness: 18}
          oak: {solid: white oak, thickness: 20}
          box: {sheet: birch plywood, thickness: 12}
          thin: {sheet: birch plywood, thickness: 6}
        build:
          - case: {of: ply}
        """;

    private static Assembly measured(String more, Map<String, String> sizes) {
        Piece piece = PieceReader.read(CASE + more, Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        Span span = new Span(1, 1, 0, 0);
        List<BenchLog.Measured> log = sizes.entrySet().stream()
                .map(size -> new BenchLog.Measured(size.getKey(), Length.mm(size.getValue()), span))
                .toList();
        Assembly assembly = Planner.assemble(piece, new BenchLog(log, List.of()), Shop.usual());
        assertEquals(List.of(), assembly.problems());
        return assembly;
    }

    private static String size(Assembly assembly, String path) {
        return String.valueOf(length(assembly, path));
    }

    private static Length length(Assembly assembly, String path) {
        return Objects.requireNonNull(assembly.names().get(path), path).value();
    }

    @ParameterizedTest
    @CsvSource({"564, 596 mm", "562.9, 594.9 mm", "564.7, 596.7 mm"})
    void anOverlayDoorLapsOverTheOpeningAsItIs(String opening, String door) {
        Assembly assembly = measured(
                "  - doors: {of: oak, set: overlay, overlay: 16}\n", Map.of("doors / opening / width", opening));
        assertEquals(door, size(assembly, "doors / door / board / width"));
    }

    @Test
    void anOverlayFrontIsAsHighAsItsOpeningAndItsLaps() {
        String drawers =
                "  - drawers: {rows: 1 equal, fronts: {of: oak, set: overlay, overlay: 16}, box: {of: box, floor:"
                        + " thin}}\n";
        Assembly drawn = measured(drawers, Map.of());
        String opening = "drawers / drawer 1 / opening / width";
        Length wide = length(drawn, opening);
        Length front = length(drawn, "drawers / drawer 1 / front / length");
        Length more = Length.mm("0.7");
        Assembly after = measured(
                drawers, Map.of(opening, Double.toString(wide.plus(more).toMillimetres())));
        assertEquals(front.plus(more), length(after, "drawers / drawer 1 / front / length"));
    }

    @ParameterizedTest
    @CsvSource({"pins, 562, 560.9", "dado, 576, 574.9"})
    void aShelfIsAsLongAsItsOpeningIsWide(String held, String planned, String after) {
        String shelves = "  - shelves: {of: ply, count: 1, held: %s, housed: 6}\n".formatted(held);
        assertEquals(planned + " mm", size(measured(shelves, Map.of()), word(held) + " / length"));
        Assembly measured = measured(shelves, Map.of("shelves / opening / width", "562.9"));
        assertEquals(after + " mm", size(measured, word(held) + " / length"));
    }

    private static String word(String held) {
        return held.equals("pins") ? "adjustable shelf" : "shelf";
    }

    @Test
    void aDoorInAFaceFrameFollowsTheOpeningOfTheFrame() {
        String frame = "  - face frame: {stiles: oak 45, build: [doors: {of: oak, gap: 2}]}\n";
        assertEquals("506 mm", size(measured(frame, Map.of()), "doors / door / board / width"));
        Assembly measured = measured(frame, Map.of("face frame / opening / width", "509.3"));
        assertEquals("505.3 mm", size(measured, "doors / door / board / width"));
    }
}
