package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.plan;
import static scantling.cutting.Jobs.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

/** Fronts cut in a row so that the grain runs through; figures worked by hand. */
class RowsTest {
    private static final Saw SAW = new Saw(Length.mm(3), Length.ZERO, 0, FirstCut.ANY);

    private static CutPart front(String name, long length, long width) {
        return part(name, length, width, 1).inRow("fronts");
    }

    private static List<PlacedPart> fronts(CutPlan plan) {
        return plan.used().stream()
                .flatMap(piece -> piece.parts().stream())
                .filter(placed -> !placed.part().row().isEmpty())
                .sorted(Comparator.comparing(PlacedPart::x))
                .toList();
    }

    /** 400 + 3 + 500 + 3 + 300 = 1206. */
    @Test
    void frontsOfARowLieOneAfterTheOtherInTheirOrder() {
        CutPlan plan = plan(job(
                SAW,
                List.of(sheet(2440, 1220, 1)),
                part("side", 700, 560, 3),
                front("left", 400, 150),
                front("middle", 500, 150),
                front("right", 300, 150)));
        List<PlacedPart> fronts = fronts(plan);

        assertEquals(
                List.of("left", "middle", "right"),
                fronts.stream().map(f -> f.part().name()).toList());
        assertEquals(fronts.get(0).x().plus(Length.mm(403)), fronts.get(1).x());
        assertEquals(fronts.get(0).x().plus(Length.mm(906)), fronts.get(2).x());
        assertEquals(1, fronts.stream().map(PlacedPart::y).distinct().count());
    }

    @Test
    void aNarrowerFrontIsRippedFromTheSameRow() {
        CutPlan plan = plan(job(SAW, List.of(sheet(1000, 400, 1)), front("a", 400, 200), front("b", 400, 150)));

        assertEquals(1, fronts(plan).stream().map(PlacedPart::y).distinct().count());
        assertEquals(
                List.of(),
                SawCheck.problems(
                        job(SAW, List.of(sheet(1000, 400, 1)), front("a", 400, 200), front("b", 400, 150)), plan));
    }

    @Test
    void aRowLongerThanAnyStockIsNamedPartByPart() {
        CutPlan plan = plan(job(SAW, List.of(sheet(1000, 400, 1)), front("a", 600, 200), front("b", 600, 200)));

        assertEquals(2, plan.leftOut().size());
        assertTrue(plan.leftOut().get(0).reason().contains("in a row"), plan.leftOut()::toString);
    }

    @Test
    void theCheckFindsARowThatIsBroken() {
        CutJob loose = job(SAW, List.of(sheet(1000, 400, 1)), part("b", 400, 200, 1), part("a", 500, 200, 1));
        CutJob strict = job(SAW, List.of(sheet(1000, 400, 1)), front("b", 400, 200), front("a", 500, 200));
        CutPlan plan = plan(loose);
        List<String> wrong = new ArrayList<>(SawCheck.problems(strict, asRow(plan)));

        assertFalse(wrong.isEmpty());
        assertTrue(wrong.stream().anyMatch(text -> text.contains("does not lie in its row")), wrong::toString);
    }

    /** The same plan with its parts said to be of a row; the wider one is cut off first, so the order is wrong. */
    private static CutPlan asRow(CutPlan plan) {
        CutPiece piece = plan.used().get(0);
        CutTree tree = asRow(piece.tree());
        List<PlacedPart> parts = piece.parts().stream().map(RowsTest::asRow).toList();
        return new CutPlan(
                plan.status(),
                plan.cost(),
                plan.lowerBound(),
                List.of(new CutPiece(piece.stock(), 1, tree, parts, piece.steps(), piece.offcuts())),
                List.of());
    }

    private static CutTree asRow(CutTree tree) {
        if (tree instanceof CutTree.Cut cut) {
            return new CutTree.Cut(cut.direction(), cut.position(), asRow(cut.first()), asRow(cut.second()));
        }
        return tree instanceof CutTree.Part part ? new CutTree.Part(asRow(part.placed())) : tree;
    }

    private static PlacedPart asRow(PlacedPart p) {
        return new PlacedPart(p.part().inRow("fronts"), p.copy(), p.x(), p.y(), p.length(), p.width(), p.turned());
    }

    @Test
    void differentCountsInARowAreRefused() {
        CutJob job = job(
                SAW,
                List.of(sheet(1000, 400, 1)),
                front("a", 400, 200),
                front("b", 400, 200).times(2));

        assertThrows(IllegalArgumentException.class, () -> plan(job));
    }
}
