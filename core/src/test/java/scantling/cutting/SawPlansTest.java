package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.kitchen;
import static scantling.cutting.Jobs.mm;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.plan;
import static scantling.cutting.Jobs.sheet;
import static scantling.cutting.Jobs.stick;
import static scantling.cutting.Jobs.turning;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import scantling.measure.Length;

/** Worked by hand, and judged by JTS, which knows nothing of saws. */
class SawPlansTest {
    private static final Saw THIN = Saw.of(Length.ZERO);
    private static final Saw SAW = Saw.of(Length.mm(3));

    @Test
    void fourQuartersWithoutKerfFillOneSheetExactly() {
        CutPlan plan = plan(job(THIN, List.of(sheet(1000, 600, 5)), part("quarter", 500, 300, 4)));

        assertEquals(CutPlan.Status.OPTIMAL, plan.status());
        assertEquals(5, plan.cost());
        assertEquals(3, plan.used().get(0).steps().size());
    }

    /** 500 + 3 + 500 is more than 1000, so a row holds one, and two rows of 300 with a kerf are more than 600. */
    @Test
    void theKerfCountsSoTheSameQuartersNeedFourSheets() {
        CutPlan plan = plan(job(SAW, List.of(sheet(1000, 600, 5)), part("quarter", 500, 300, 4)));

        assertEquals(20, plan.cost());
        assertEquals(CutPlan.Status.OPTIMAL, plan.status());
    }

    /** 10 + 490 + 3 + 487 + 10 = 1000. */
    @Test
    void trimAndKerfMayUseTheLastTenthOfAMillimetre() {
        Saw saw = new Saw(Length.mm(3), Length.mm(10), 0, FirstCut.ANY);
        CutPlan exact = plan(job(saw, List.of(sheet(1000, 320, 1)), part("a", 490, 300, 1), part("b", 487, 300, 1)));
        CutPart over = new CutPart("b", mm("487.1"), Length.mm(300), 1, false);
        CutPlan tooMuch = plan(job(saw, List.of(sheet(1000, 320, 1)), part("a", 490, 300, 1), over));

        assertEquals(1, exact.cost());
        assertEquals(mm("487"), exact.used().get(0).parts().get(1).length());
        assertEquals(mm("503"), exact.used().get(0).parts().get(1).x());
        assertEquals(2, tooMuch.cost());
    }

    @Test
    void aPartWithGrainIsNeverTurned() {
        List<Stock> stock = List.of(sheet(1000, 400, 1));
        CutPlan locked = plan(job(SAW, stock, part("door", 300, 500, 1)));
        CutPlan free = plan(job(SAW, stock, turning("door", 300, 500, 1)));

        assertEquals(CutPlan.Status.PARTS_LEFT_OUT, locked.status());
        assertTrue(free.used().get(0).parts().get(0).turned());
    }

    @Test
    void anOversizePartIsNamedAndTheRestIsPlanned() {
        CutPlan plan =
                plan(job(SAW, List.of(sheet(1000, 400, 1)), part("top", 1001, 300, 2), part("rail", 700, 60, 3)));

        assertEquals(1, plan.leftOut().size());
        assertEquals("top", plan.leftOut().get(0).part().name());
        assertEquals(2, plan.leftOut().get(0).count());
        assertTrue(plan.leftOut().get(0).reason().contains("larger than any stock"));
        assertEquals(3, plan.used().get(0).parts().size());
    }

    @Test
    void countsOfStockAreKeptAndWhatDoesNotFitIsSaid() {
        Stock one = new Stock.SheetStock("last sheet", Length.mm(1000), Length.mm(400), OptionalInt.of(1), 1);
        CutPlan plan = plan(job(SAW, List.of(one), part("side", 900, 300, 2)));

        assertEquals(1, plan.used().size());
        assertEquals(1, plan.leftOut().get(0).count());
        assertTrue(plan.leftOut().get(0).reason().contains("not enough"));
    }

    /** Two of 600 by 600 go on the large sheet for 50, or on two small ones for 60; one alone is cheaper on the small one. */
    @Test
    void moneyDecidesBetweenSheetSizes() {
        List<Stock> stock = List.of(sheet(1220, 610, 50), sheet(610, 610, 30));

        assertEquals(50, plan(job(SAW, stock, part("a", 600, 600, 2))).cost());
        assertEquals(30, plan(job(SAW, stock, part("a", 600, 600, 1))).cost());
        assertEquals(80, plan(job(SAW, stock, part("a", 600, 600, 3))).cost());
    }

    @Test
    void boardsAreCrosscutBeforeTheyAreRipped() {
        Stock board = new Stock.BoardStock("b1", Length.mm(2400), Length.mm(150), OptionalInt.of(1), 20, true);
        CutPlan plan = SawPlans.boards(
                job(SAW, List.of(board), part("leg", 700, 45, 4), part("rail", 400, 70, 4)),
                new Effort(500, 1),
                () -> false);

        assertEquals(CutPlan.Status.OPTIMAL, plan.status());
        CutTree.Cut first = (CutTree.Cut) plan.used().get(0).tree();
        assertEquals(CutDirection.ACROSS, first.direction());
    }

    /** 2000 = 1200 + 3 + 797; 2000 = 1000 + 3 + 997; the bound is 4994 + kerfs over 2003, three sticks. */
    @Test
    void sticksAreCutWithKerf() {
        CutPlan plan = SawPlans.sticks(
                job(
                        SAW,
                        List.of(stick(2000)),
                        CutPart.stick("long", Length.mm(1200), 1),
                        CutPart.stick("short", Length.mm(797), 1),
                        CutPart.stick("half", Length.mm(1000), 1),
                        CutPart.stick("other half", Length.mm(997), 1),
                        CutPart.stick("more", Length.mm(1000), 1)),
                new Effort(500, 1),
                () -> false);

        assertEquals(3, plan.cost());
        assertEquals(CutPlan.Status.OPTIMAL, plan.status());
    }

    @Test
    void theFirstCutIsTheOneAskedFor() {
        for (FirstCut first : List.of(FirstCut.ALONG, FirstCut.ACROSS)) {
            CutJob job = job(
                    new Saw(Length.mm(3), Length.ZERO, 2, first),
                    List.of(sheet(2000, 1000, 1)),
                    part("a", 400, 200, 12));
            CutPlan plan = plan(job);

            assertEquals(
                    first.name(),
                    ((CutTree.Cut) plan.used().get(0).tree()).direction().name());
            assertEquals(1, plan.cost());
        }
    }

    @Test
    void equalSettingsFollowEachOtherSoTheFenceIsMovedTwice() {
        CutPlan plan = plan(job(THIN, List.of(sheet(1000, 600, 1)), part("strip", 500, 100, 12)));

        assertTrue(plan.used().get(0).settings() <= 2, plan.used().get(0).steps()::toString);
    }

    @Test
    void aLargeOffcutGoesBackToTheRackAndASmallOneDoesNot() {
        CutPlan plan = plan(job(SAW, List.of(sheet(2000, 600, 1)), part("a", 1000, 590, 1)));

        assertEquals(1, plan.used().get(0).offcuts().size());
        assertEquals(mm("997"), plan.used().get(0).offcuts().get(0).length());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aGeometryLibraryFindsNoOverlapAndNothingOffTheSheet(long seed) {
        CutJob job = kitchen(60, seed);
        CutPlan plan = SawPlans.sheets(job, new Effort(400, seed), () -> false);

        assertTrue(plan.leftOut().isEmpty());
        assertTrue(plan.cost() >= plan.lowerBound());
        for (CutPiece piece : plan.used()) {
            List<Geometry> shapes =
                    piece.parts().stream().map(SawPlansTest::shape).toList();
            Geometry inside = new GeometryFactory()
                    .toGeometry(new Envelope(
                            10,
                            piece.stock().length().toMillimetres() - 10,
                            10,
                            piece.stock().width().toMillimetres() - 10));
            for (int i = 0; i < shapes.size(); i++) {
                assertTrue(inside.buffer(1e-6).contains(shapes.get(i)));
                for (int j = 0; j < i; j++) {
                    assertTrue(shapes.get(i).distance(shapes.get(j)) >= 3.2 - 1e-6);
                }
            }
        }
    }

    private static Geometry shape(PlacedPart p) {
        double x = p.x().toMillimetres();
        double y = p.y().toMillimetres();
        return new GeometryFactory()
                .toGeometry(new Envelope(
                        x, x + p.length().toMillimetres(), y, y + p.width().toMillimetres()));
    }

    @Test
    void theSameSeedAndStepsGiveTheSamePlan() {
        assertEquals(
                SawPlans.sheets(kitchen(50, 9), new Effort(600, 3), () -> false),
                SawPlans.sheets(kitchen(50, 9), new Effort(600, 3), () -> false));
    }

    @Test
    void stoppingAtOnceStillGivesAWholePlan() {
        CutPlan plan = SawPlans.sheets(kitchen(100, 5), Effort.untilStopped(1), () -> true);

        assertTrue(plan.leftOut().isEmpty());
    }

    @Test
    void moreStepsNeverCostMore() {
        long few =
                SawPlans.sheets(kitchen(80, 4), new Effort(0, 3), () -> false).cost();
        long many = SawPlans.sheets(kitchen(80, 4), new Effort(3000, 3), () -> false)
                .cost();

        assertTrue(many <= few);
    }

    @Test
    void inchFractionsAndMillimetresMixExactly() {
        Stock ply = new Stock.SheetStock("ply", Length.inches(96), Length.inches(48), OptionalInt.empty(), 1);
        CutPart half = new CutPart(
                "half", Length.inches(96), Length.inches(48).minus(mm("3.2")).over(2), 2, false);

        assertEquals(1, plan(job(Saw.of(mm("3.2")), List.of(ply), half)).cost());
    }

    @Test
    void sheetsAreNotPlannedAsSticks() {
        CutJob job = job(SAW, List.of(sheet(1000, 400, 1)), part("a", 10, 10, 1));

        assertThrows(IllegalArgumentException.class, () -> SawPlans.sticks(job, new Effort(1, 1), () -> false));
    }

    @Test
    void nothingWantedCostsNothing() {
        assertEquals(0, plan(job(SAW, List.of(sheet(1000, 400, 1)))).cost());
    }
}
