package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.measure.Length;

/** Values fitted to a job; worked by hand, against all sets listed one by one, and against sheets cut up whole. */
class FittedRoundingsTest {
    private static final double DUST = 1e-6;

    private static List<Demand> demands(CutJob job) {
        Problem problem = new Problem(job, 0, FirstCut.ANY);
        int[] items = IntStream.range(0, problem.items).toArray();
        int[] types = IntStream.range(0, job.stock().size()).toArray();
        return new FittedRoundings(problem, items, types, () -> false).demands();
    }

    private static double most(List<Demand> demands) {
        return demands.stream().mapToDouble(d -> d.need() / d.value()[0]).max().orElseThrow();
    }

    /** By hand: two of 35 go along 100, and two of 60 do not; three of 60 beside four of 35 want three lengths and half of one. */
    @Test
    void onlyWhatGoesAlongTheStockTogetherIsCountedTogether() {
        CutJob job =
                job(Saw.of(Length.ZERO), List.of(sheet(100, 10, 1)), part("long", 60, 10, 3), part("short", 35, 10, 4));

        assertEquals(3.5, most(demands(job)), 0.01);
    }

    /** All sets of sizes that go along the stock, listed one by one. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void noSetAlongTheStockIsWorthMoreThanIt(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long[] sizes = random.longs(7, 15, 95).sorted().distinct().toArray();
        double[] wanted = random.doubles(sizes.length, 0, 10).toArray();
        FittedValues values = FittedValues.of(sizes, wanted, new long[] {100, 70}, () -> false);
        double[] worth = values.of(sizes);

        assertTrue(heaviest(sizes, worth, 0, 100) <= values.ofStock()[0] + DUST);
        assertTrue(heaviest(sizes, worth, 0, 70) <= values.ofStock()[1] + DUST);
    }

    private static double heaviest(long[] sizes, double[] worth, int from, long room) {
        double most = 0;
        for (int i = from; i < sizes.length; i++) {
            if (sizes[i] <= room) {
                most = Math.max(most, worth[i] + heaviest(sizes, worth, i, room - sizes[i]));
            }
        }
        return most;
    }

    /** Sheets cut up whole want no more sheets than that, by construction; and no less than their area, but for what fitting loses. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void partsOfSheetsCutUpWholeWantNoMoreSheets(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<CutPart> parts = new ArrayList<>();
        for (int s = 0; s < 5; s++) {
            cutUp(random, 12, 8, 4, parts);
        }
        double most =
                most(demands(job(Saw.of(Length.ZERO), List.of(sheet(120, 80, 1)), parts.toArray(CutPart[]::new))));

        assertTrue(most <= 5 + DUST);
        assertTrue(most >= 4.9);
    }

    private static void cutUp(SplittableRandom random, int length, int width, int depth, List<CutPart> parts) {
        boolean along = random.nextBoolean();
        int whole = along ? length : width;
        if (depth == 0 || whole < 2) {
            parts.add(new CutPart(
                    "part " + parts.size(), Length.mm(10L * length), Length.mm(10L * width), 1, random.nextBoolean()));
        } else {
            int at = random.nextInt(1, whole);
            cutUp(random, along ? at : length, along ? width : at, depth - 1, parts);
            cutUp(random, along ? length - at : length, along ? width : width - at, depth - 1, parts);
        }
    }

    @Test
    void nothingIsSaidOfMoreSizesThanThereIsTimeFor() {
        assertTrue(demands(Jobs.kitchen(60, 1)).isEmpty());
        assertFalse(demands(Jobs.kitchen(10, 1)).isEmpty());
    }
}
