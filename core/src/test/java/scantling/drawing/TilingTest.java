package scantling.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import scantling.measure.LengthFormat;

/** A template that no sheet holds, cut into tiles; all sizes by hand. */
class TilingTest {
    /** Holds 180 by 232, of which 30 are shared with a neighbour: 330 by 434 take two by two. */
    private static final Sheet SHEET = new Sheet(180, 232, 30);

    private static final double HAIR = Sketch.HAIR;

    private static Spot mm(double across, double down) {
        return new Spot(across * Scale.UNITS_PER_MM, down * Scale.UNITS_PER_MM);
    }

    /** A frame of so many millimetres with a hole near each corner. */
    private static Drawing frame(double wide, double high) {
        Sketch sketch = new Sketch(LengthFormat.MM);
        List<Spot> corners = List.of(mm(0, 0), mm(wide, 0), mm(wide, high), mm(0, high));
        for (int i = 0; i < 4; i++) {
            sketch.line(corners.get(i), corners.get((i + 1) % 4), Sketch.OUTLINE);
        }
        for (double x : new double[] {10, wide - 10}) {
            for (double y : new double[] {10, high - 10}) {
                sketch.circle(mm(x, y), 10, Sketch.EDGE);
            }
        }
        return sketch.finish("frame", new Scale(10));
    }

    private static boolean isCross(Mark mark) {
        return mark instanceof Mark.Line line && line.pen().weight() == HAIR;
    }

    /** Middles of the crosses of a tile, to the hundredth. */
    private static Set<String> crosses(Drawing tile) {
        return tile.marks().stream()
                .filter(TilingTest::isCross)
                .map(mark -> ((Mark.Line) mark).spots())
                .map(ends -> "%.2f %.2f"
                        .formatted(
                                (ends.get(0).x() + ends.get(1).x()) / 2,
                                (ends.get(0).y() + ends.get(1).y()) / 2))
                .collect(Collectors.toSet());
    }

    private static long holes(Drawing tile) {
        return tile.marks().stream().filter(Mark.Circle.class::isInstance).count();
    }

    @Test
    void whatIsTooLargeBothWaysTakesAsFewTilesAsHoldItEachNoLargerThanTheSheet() {
        List<Drawing> tiles = SHEET.tiles(frame(320, 420));
        assertEquals(4, tiles.size());
        assertEquals("frame, tile 4 of 4", tiles.get(3).title());
        for (Drawing tile : tiles) {
            assertTrue(tile.paperWidth() <= 180 && tile.paperHeight() <= 232, tile::toString);
            assertEquals(1, holes(tile), "a hole near each corner, each on one tile");
        }
    }

    @Test
    void whereTilesMeetTheirCrossesAreTheSame() {
        List<Drawing> tiles = SHEET.tiles(frame(320, 420));
        for (int[] pair : new int[][] {{0, 1}, {2, 3}, {0, 2}, {1, 3}}) {
            Set<String> shared = crosses(tiles.get(pair[0]));
            shared.retainAll(crosses(tiles.get(pair[1])));
            assertEquals(2, shared.size(), "two crosses join tiles %d and %d".formatted(pair[0] + 1, pair[1] + 1));
        }
    }

    @Test
    void sheetsThatAreTurnedMaySaveHalfOfThem() {
        Drawing frame = frame(200, 236);
        assertEquals(4, SHEET.tiles(frame).size());
        assertEquals(2, new Sheet(248, 166, 30).tiles(frame).size());
    }

    @Test
    void noPaperIsUsedWhereNothingIsDrawn() {
        // three by three, and the middle one lies within the frame
        List<Drawing> tiles = SHEET.tiles(frame(470, 620));
        assertEquals(8, tiles.size());
        assertEquals(4, tiles.stream().mapToLong(TilingTest::holes).sum());
        assertEquals("frame, tile 8 of 8", tiles.get(7).title());
    }
}
