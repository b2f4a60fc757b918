package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

class SticksTest {
    private static CutPlan plan(List<Stock> stock, CutPart... parts) {
        return SawPlans.sticks(Jobs.job(Saw.of(Length.ZERO), stock, parts), new Effort(20_000, 1), () -> false);
    }

    /** By hand: 3 x 34 + 3 x 33 = 201, one more than two sticks of 100. */
    @Test
    void oneTooLongForTwoSticksNeedsThree() {
        CutPlan plan = plan(
                List.of(Jobs.stick(100)), CutPart.stick("a", Length.mm(34), 3), CutPart.stick("b", Length.mm(33), 3));

        assertEquals(3, plan.cost());
        assertEquals(3, plan.lowerBound());
    }

    /**
     * Worked by hand: 10 of 51 and 10 of 27 and 20 of 26 in sticks of 104. 51 + 27 + 26 =
     * 104 ten times leaves ten of 26, four to a stick: 13 sticks; the sum of lengths 1300 over 104 is 12.5.
     */
    @Test
    void aPerfectMixtureIsFoundAndProven() {
        CutPlan plan = plan(
                List.of(Jobs.stick(104)),
                CutPart.stick("a", Length.mm(51), 10),
                CutPart.stick("b", Length.mm(27), 10),
                CutPart.stick("c", Length.mm(26), 20));

        assertEquals(13, plan.cost());
        assertEquals(CutPlan.Status.OPTIMAL, plan.status());
    }

    /** Three of 40 fit the stick of 120 for 10; two sticks of 80 hold four for 14, two for 7. Seven: 10 + 14 = 24. */
    @Test
    void theCheaperMixtureOfTwoLengthsIsFound() {
        Stock shorter = new Stock.StickStock("short", Length.mm(80), OptionalInt.empty(), 7);
        Stock longer = new Stock.StickStock("long", Length.mm(120), OptionalInt.empty(), 10);
        CutPlan plan = plan(List.of(shorter, longer), CutPart.stick("a", Length.mm(40), 7));

        assertEquals(24, plan.cost());
        assertEquals(CutPlan.Status.OPTIMAL, plan.status());
    }

    /** Triplets as Falkenauer (1996) makes them: every stick is filled by exactly three, so a third of the parts is optimal. */
    @Test
    void tripletsFillTheirSticksWithoutWaste() {
        SplittableRandom random = new SplittableRandom(5);
        List<CutPart> parts = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            int first = random.nextInt(380, 490);
            int second = 250 + random.nextInt((1000 - first) / 2 - 250);
            for (int length : new int[] {first, second, 1000 - first - second}) {
                parts.add(CutPart.stick("t" + parts.size(), Length.mm(length), 1));
            }
        }
        CutPlan plan = plan(List.of(Jobs.stick(1000)), parts.toArray(CutPart[]::new));

        assertEquals(12, plan.lowerBound());
        assertTrue(plan.cost() <= 13, "one stick above the optimum at most");
    }

    @Test
    void theSameSeedGivesTheSameSticks() {
        CutPart[] parts = {CutPart.stick("a", Length.mm(437), 9), CutPart.stick("b", Length.mm(291), 11)};

        assertEquals(plan(List.of(Jobs.stick(1000)), parts), plan(List.of(Jobs.stick(1000)), parts));
    }
}
