package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.mm;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;
import static scantling.cutting.Jobs.turning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
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

    private static long bySets(CutJob job) {
        Bounds bounds = bounds(job);
        return bounds.bySets(bounds.sets(() -> false).orElseThrow(), List.of());
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
        assertEquals(2, bounds(job).deeper(Long.MAX_VALUE, List.of(), () -> false));
    }

    /** The same, told from the sets of parts that come out of a sheet; three vanes do come out of one. */
    @Test
    void setsKnowThatAPinwheelNeedsASecondSheet() {
        CutJob four = job(THIN, List.of(sheet(100, 100, 1)), turning("vane", 60, 40, 4));
        CutJob three = job(THIN, List.of(sheet(100, 100, 1)), turning("vane", 60, 40, 3));

        assertEquals(2, bySets(four));
        assertEquals(1, bySets(three));
    }

    /** Three of 51 on sheets of 100: each takes one alone, by the prices of patterns as well. */
    @ParameterizedTest
    @ValueSource(ints = {3, 30})
    void halvesThatAreALittleTooLargeTakeASheetEach(int count) {
        CutJob job = job(THIN, List.of(sheet(100, 100, 1)), part("a", 51, 51, count));

        assertEquals(count, bounds(job).deeper(Long.MAX_VALUE, List.of(), () -> false));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void noPlanIsEverBelowTheDeeperBound(long seed) {
        CutJob job = Jobs.kitchen(25, seed);
        CutPlan plan = SawPlans.plan(job, new Effort(9_000, seed), () -> false);

        assertTrue(plan.cost() >= bounds(job).deeper(Long.MAX_VALUE, List.of(), () -> false));
        assertTrue(bounds(job).deeper(Long.MAX_VALUE, List.of(), () -> false)
                >= bounds(job).cost());
    }

    /**
     * The sheet parts of eight cabinets. One large and five square sheets (330) have the area, and prices for the sheets' own
     * costs do not rule them out; bound and plan meet at two large and four square ones (348).
     */
    @Test
    void aMixtureThatHasTheAreaButNotTheShapesIsRuledOut() {
        Stock large = new Stock.SheetStock("large", Length.mm(2440), Length.mm(1220), OptionalInt.empty(), 70);
        Stock square = new Stock.SheetStock("square", Length.mm(1525), Length.mm(1525), OptionalInt.empty(), 52);
        CutJob job = job(
                new Saw(mm("3.2"), Length.mm(10), 0, FirstCut.ANY),
                List.of(large, square),
                part("rail", 600, 100, 16),
                part("side", 720, 578, 16),
                new CutPart("floor", mm("564.4"), Length.mm(578), 8, false),
                new CutPart("back rail", mm("564.4"), Length.mm(100), 16, false),
                new CutPart("drawer rail", mm("492.4"), Length.mm(100), 16, false),
                new CutPart("shelf", mm("562.4"), Length.mm(531), 3, false));

        assertEquals(348, bounds(job).deeper(Long.MAX_VALUE, List.of(), () -> false));
        assertEquals(348, SawPlans.plan(job, new Effort(6_000, 1), () -> false).cost());
    }

    /** Every mixture that the bound rules out is really too little: the search, which knows no bound, finds none cheaper. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void noPlanOfManyAlikeIsBelowTheBoundByMixtures(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        CutPart[] parts = new CutPart[4];
        Arrays.setAll(
                parts,
                k -> new CutPart(
                        "p" + k,
                        Length.mm(random.nextInt(200, 900)),
                        Length.mm(random.nextInt(150, 600)),
                        10,
                        random.nextBoolean()));
        Stock large = new Stock.SheetStock("large", Length.mm(2440), Length.mm(1220), OptionalInt.empty(), 70);
        Stock square = new Stock.SheetStock("square", Length.mm(1525), Length.mm(1525), OptionalInt.empty(), 52);
        CutJob job = job(new Saw(mm("3.2"), Length.mm(10), 0, FirstCut.ANY), List.of(large, square), parts);

        assertTrue(SawPlans.plan(job, new Effort(3_000, seed), () -> false).cost()
                >= bounds(job).deeper(Long.MAX_VALUE, List.of(), () -> false));
    }

    /** Sheets cut up whole into parts of many kinds, some a millimetre wide: so many sheets are enough, by construction. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void partsThinnerThanACellAskForNoMoreSheetsThanTheyWereCutFrom(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int sheets = 4;
        List<CutPart> parts = new ArrayList<>();
        for (int s = 0; s < sheets; s++) {
            cutUp(random, 300, 300, 6, parts);
        }
        Bounds bounds = bounds(job(THIN, List.of(sheet(300, 300, 1)), parts.toArray(CutPart[]::new)));
        assertTrue(parts.stream().anyMatch(part -> part.width().equals(Length.mm(1))));
        assertTrue(bounds.deeper(Long.MAX_VALUE, List.of(), () -> false) <= sheets);
    }

    private static void cutUp(SplittableRandom random, int length, int width, int depth, List<CutPart> parts) {
        if (depth == 0 || length < 4 || width < 4) {
            parts.add(part("part " + parts.size(), length, width, 1));
        } else if (depth % 2 == 0) {
            int at = depth == 2 ? 1 : random.nextInt(2, width - 1);
            cutUp(random, length, at, depth - 1, parts);
            cutUp(random, length, width - at, depth - 1, parts);
        } else {
            int at = random.nextInt(2, length - 1);
            cutUp(random, at, width, depth - 1, parts);
            cutUp(random, length - at, width, depth - 1, parts);
        }
    }
}
