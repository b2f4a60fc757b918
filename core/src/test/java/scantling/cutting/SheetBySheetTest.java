package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import scantling.measure.Length;

/** Many parts, a sheet at a time; worked by hand where a number is given, and judged by the independent saw. */
class SheetBySheetTest {
    private static final Saw THIN = Saw.of(Length.ZERO);

    /** 200 quarters of a sheet are 50 sheets without waste. */
    @Test
    void quartersFillTheirSheetsExactly() {
        Problem problem =
                new Problem(job(THIN, List.of(sheet(1000, 600, 5)), part("quarter", 500, 300, 200)), 0, FirstCut.ANY);
        Layout layout =
                SheetBySheet.of(problem, () -> false).orElseThrow().next(0).orElseThrow();

        assertEquals(250, layout.cost);
        assertTrue(layout.out.isEmpty());
    }

    /** A sheet of 100 by 100 holds one of 60 by 100, worth 7, and a strip of 40 with two of 40 by 50, worth 2 each. */
    @Test
    void theTablesFindTheBestPatternOfTwoSizes() {
        Problem problem = new Problem(
                job(THIN, List.of(sheet(100, 100, 1)), part("large", 60, 100, 1), part("small", 40, 50, 4)),
                0,
                FirstCut.ANY);
        StripTables tables = new StripTables(problem, new int[] {0, 1}, Node.X, true);
        tables.offer(problem.length[0], problem.width[0], 7);
        tables.offer(problem.length[1], problem.width[1], 2);
        tables.solve();

        assertEquals(11, tables.value(0));
    }

    @ParameterizedTest
    @CsvSource({"0, ANY", "0, ALONG", "3, ANY", "3, ACROSS", "4, ALONG"})
    void whatComesOfItPassesTheIndependentSaw(int stages, FirstCut first) {
        CutJob mix = Jobs.kitchen(170, 5);
        CutJob job = new CutJob(
                new Saw(mix.saw().kerf(), mix.saw().trim(), stages, first), mix.keep(), mix.stock(), mix.parts());
        Problem problem = new Problem(job, stages, first);
        Layout layout =
                SheetBySheet.of(problem, () -> false).orElseThrow().next(0).orElseThrow();
        CutPlan plan =
                new CutPlan(CutPlan.Status.SOUND, layout.cost, 0, new PlanWriter(problem).pieces(layout), List.of());

        assertEquals(List.of(), SawCheck.problems(job, plan));
    }

    @ParameterizedTest
    @EnumSource(FirstCut.class)
    void everyPartIsThereOnce(FirstCut first) {
        Problem problem = new Problem(Jobs.kitchen(160, 2), 0, first);
        Layout layout =
                SheetBySheet.of(problem, () -> false).orElseThrow().next(0).orElseThrow();
        Set<Integer> items = new HashSet<>(layout.out);
        layout.bins.forEach(bin -> bin.parts.forEach(node -> items.add(node.kind)));

        assertEquals(IntStream.range(0, 160).boxed().collect(Collectors.toSet()), items);
    }

    @Test
    void fewPartsAreLeftToTheSearch() {
        assertTrue(SheetBySheet.of(new Problem(Jobs.kitchen(100, 1), 0, FirstCut.ANY), () -> false)
                .isEmpty());
    }
}
