package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.finishing.FinishGroup;
import scantling.finishing.FinishPlan;
import scantling.finishing.Finishing;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** What is kept bare for glue, in words. A shelf 20 thick housed 10 deep between two sides, all finished first. */
class MaskRowsTest {
    private static final String SHELF = """
        piece: A shelf
        size: 600 wide, 200 deep, 300 high
        materials:
          oak: {solid: white oak, thickness: 20}
        build:
          - board: {name: left, of: oak, on: left}
          - board: {name: right, of: oak, on: right}
          - board: {name: shelf, of: oak, on: bottom, joint: dado}
        finish:
          groups:
            all: {before assembly: yes, top: oil x 2}
        """;

    private static List<FinishPages.Mask> rows() {
        var read = PieceReader.read(SHELF, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), read.problems());
        Piece piece = read.piece().orElseThrow();
        FinishPlan plan = Finishing.plan(Planner.assemble(piece, BenchLog.EMPTY, Shop.usual()));
        FinishGroup group = plan.groups().get(0);
        return new MaskRows(LengthFormat.MM, Map.of("left", "A", "right", "A", "shelf", "B")).of(group);
    }

    /** By hand: the housing of the lowest shelf begins at the near end of the side and is as wide as the shelf is thick. */
    @Test
    void aHousingIsAStripFromAnEndOfTheSide() {
        List<FinishPages.Mask> rows = rows();
        assertTrue(
                rows.stream()
                        .anyMatch(row -> row.marks().equals("A") && row.where().startsWith("20.0 mm from the")),
                rows::toString);
    }

    @Test
    void surfacesMaskedAlikeStandOnOneLine() {
        List<FinishPages.Mask> rows = rows();
        assertEquals(
                rows.size(),
                rows.stream().map(row -> row.surface() + row.where()).distinct().count());
    }
}
