package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;
import static scantling.cutting.Jobs.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.measure.Length;

/** Plans from sets of parts: by hand, beside the exact answer for small jobs, and judged by the independent saw. */
class SetPlansTest {
    private static final Saw THIN = Saw.of(Length.ZERO);

    private static SetPlans of(Problem problem) {
        SetPlans sets = new Bounds(problem).sets(() -> false).orElseThrow();
        sets.demands(List.of());
        return sets;
    }

    private static SetPlans of(CutJob job) {
        return of(new Problem(job, job.saw().stages(), job.saw().firstCut()));
    }

    /** Four vanes of sixty by forty lie round a hole in a sheet of a hundred, but no saw gets in; three come out. */
    @Test
    void aPinwheelIsImpossible() {
        CutJob four = job(THIN, List.of(sheet(100, 100, 1)), turning("vane", 60, 40, 4));
        CutJob three = job(THIN, List.of(sheet(100, 100, 1)), turning("vane", 60, 40, 3));

        assertTrue(of(four).within(1).isImpossible());
        assertFalse(of(three).within(1).isImpossible());
        assertEquals(1, of(three).within(1).plan().orElseThrow().cost);
    }

    /** Nothing that is impossible has a plan, and what costs least is possible: the least cost is known exactly of small jobs. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void theLeastCostIsPossibleAndLessIsNot(long seed) {
        Problem problem = new Problem(Jobs.kitchen(11, seed), 0, FirstCut.ANY);
        long least = SmallJob.cost(problem, problem.fitting(), new int[] {0, 1}, () -> false);
        SetPlans sets = of(problem);
        SetPlans.Answer less = sets.within(least - 1);

        assertFalse(sets.within(least).isImpossible());
        assertTrue(less.plan().stream().allMatch(plan -> !plan.out.isEmpty()));
    }

    /** Sheets cut into four without waste: no plan needs more of them, and there is one. */
    @ParameterizedTest
    @CsvSource({"3, 1", "5, 3", "6, 2"})
    void itsPlansPassTheIndependentSaw(int sheets, long seed) {
        CutJob job = cutUp(sheets, new SplittableRandom(seed));
        Problem problem = new Problem(job, 0, FirstCut.ANY);
        Layout plan = of(problem).within(sheets).plan().orElseThrow();
        assertEquals(sheets, plan.cost);

        new Recreate(problem, new SplittableRandom(1), 0).fill(plan, List.copyOf(plan.out), Long.MAX_VALUE, 1);
        CutPlan whole =
                new CutPlan(CutPlan.Status.SOUND, plan.cost, 0, new PlanWriter(problem).pieces(plan), List.of());
        assertEquals(List.of(), SawCheck.problems(job, whole));
    }

    private static CutJob cutUp(int sheets, SplittableRandom random) {
        List<CutPart> parts = new ArrayList<>();
        for (int i = 0; i < sheets; i++) {
            int x = random.nextInt(300, 700);
            int y = random.nextInt(300, 700);
            int z = random.nextInt(300, 700);
            parts.add(part(i + " whole width", x, 1000, 1));
            parts.add(part(i + " beside", 1000 - x, y, 1));
            parts.add(part(i + " corner", (1000 - x) * z / 1000, 1000 - y, 1));
            parts.add(part(i + " last", 1000 - x - (1000 - x) * z / 1000, 1000 - y, 1));
        }
        return new CutJob(THIN, CutJob.Keep.USUAL, List.of(sheet(1000, 1000, 1)), parts);
    }

    /** Every set that comes out of a sheet is put onto one, with all its parts, and what is left of it is still wood. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void allSheetsMetPassTheIndependentSaw(long seed) {
        CutJob job = Jobs.kitchen(14, seed);
        Problem problem = new Problem(job, 0, FirstCut.ANY);
        List<Bin> sheets = of(problem).sheets();
        assertFalse(sheets.isEmpty());

        for (Bin sheet : sheets) {
            Layout layout = new Layout(problem, List.of());
            layout.take(sheet);
            List<Integer> others =
                    new ArrayList<>(IntStream.of(problem.fitting()).boxed().toList());
            sheet.parts.forEach(node -> others.remove((Integer) node.kind));
            new Recreate(problem, new SplittableRandom(1), 0).fill(layout, others, Long.MAX_VALUE, 1);
            CutPlan whole = new CutPlan(
                    CutPlan.Status.SOUND, layout.cost, 0, new PlanWriter(problem).pieces(layout), List.of());
            assertEquals(List.of(), SawCheck.problems(job, whole));
        }
    }

    /** Where the saw may not cut as the sets want it, they prove what they can and plan nothing. */
    @Test
    void aSawOfFewStagesGetsNoPlanFromThem() {
        CutJob job = job(
                new Saw(Length.ZERO, Length.ZERO, 2, FirstCut.ALONG),
                List.of(sheet(100, 100, 1)),
                part("a", 60, 60, 3));
        SetPlans sets = of(job);

        assertTrue(sets.sheets().isEmpty());
        assertTrue(sets.within(3).plan().isEmpty());
        assertTrue(sets.within(2).isImpossible());
    }
}
