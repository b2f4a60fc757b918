package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;
import static scantling.cutting.Jobs.turning;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.measure.Length;

/** What no plan can go below; worked by hand. */
class BoundsTest {
    private static final Saw THIN = Saw.of(Length.ZERO);

    private static Bounds bounds(CutJob job) {
        return new Bounds(new Problem(job, 0, FirstCut.ANY));
    }

    /** Area 1.7 of the large sheet: either two large (140), or one large and one small (122), or two small with room for 1.56. */
    @Test
    void wholeSheetsOfMixedSizesAreCounted() {
        Stock large = new Stock.SheetStock("large", Length.mm(1000), Length.mm(1000), OptionalInt.empty(), 70);
        Stock small = new Stock.SheetStock("small", Length.mm(1000), Length.mm(780), OptionalInt.empty(), 52);
        CutJob job = job(THIN, List.of(large, small), part("a", 100, 100, 170));

        assertEquals(122, bounds(job).cost());
    }

    /** What is on the rack is free, so only the rest has to be bought. */
    @Test
    void whatIsOnTheRackIsCountedAsFree() {
        Stock rack = new Stock.SheetStock("rack", Length.mm(1000), Length.mm(500), OptionalInt.of(1), 0);
        CutJob job = job(THIN, List.of(rack, sheet(1000, 1000, 10)), part("a", 500, 500, 10));

        assertEquals(20, bounds(job).cost());
    }

    /**
     * Four rectangles of 60 by 40 round a hole of 20 by 20 fill a square of 100; no saw can cut that edge to edge (the
     * pinwheel: the textbook example of a pattern that is not guillotine).
     */
    @Test
    void aPinwheelNeedsASecondSheet() {
        CutJob job = job(THIN, List.of(sheet(100, 100, 1)), turning("vane", 60, 40, 4));

        assertEquals(1, bounds(job).cost());
        assertEquals(2, bounds(job).deeper(() -> false));
    }

    /** The same, told from the sets of parts that come out of a sheet; three vanes do come out of one. */
    @Test
    void setsKnowThatAPinwheelNeedsASecondSheet() {
        CutJob four = job(THIN, List.of(sheet(100, 100, 1)), turning("vane", 60, 40, 4));
        CutJob three = job(THIN, List.of(sheet(100, 100, 1)), turning("vane", 60, 40, 3));

        assertEquals(2, bounds(four).bySets(List.of(), () -> false));
        assertEquals(1, bounds(three).bySets(List.of(), () -> false));
    }

    /** Three of 51 on sheets of 100: each takes one alone, by the prices of patterns as well. */
    @ParameterizedTest
    @ValueSource(ints = {3, 30})
    void halvesThatAreALittleTooLargeTakeASheetEach(int count) {
        CutJob job = job(THIN, List.of(sheet(100, 100, 1)), part("a", 51, 51, count));

        assertEquals(count, bounds(job).deeper(() -> false));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void noPlanIsEverBelowTheDeeperBound(long seed) {
        CutJob job = Jobs.kitchen(25, seed);
        CutPlan plan = SawPlans.plan(job, new Effort(9_000, seed), () -> false);

        assertTrue(plan.cost() >= bounds(job).deeper(() -> false));
        assertTrue(bounds(job).deeper(() -> false) >= bounds(job).cost());
    }
}
