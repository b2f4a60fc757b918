package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;
import static scantling.cutting.Jobs.turning;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Length;

/** Many parts alike; worked by hand where a number is given, and judged by the independent saw. */
class SheetDiveTest {
    private static final Saw THIN = Saw.of(Length.ZERO);

    private static Layout dive(Problem problem) {
        return SheetDive.of(problem, 1, () -> false).orElseThrow().next().orElseThrow();
    }

    /**
     * By hand: six rails fill a sheet, so do four sides and five blocks: 6 and 10 sheets. The ten blocks left want one more, and
     * all of it is 16.67 sheets by area.
     */
    @Test
    void sheetsThatCanBeFilledAreFilled() {
        Problem problem = new Problem(
                job(
                        THIN,
                        List.of(sheet(1000, 600, 5)),
                        part("rail", 500, 200, 36),
                        part("side", 250, 400, 40),
                        part("block", 200, 200, 60)),
                0,
                FirstCut.ANY);

        assertEquals(17 * 5, dive(problem).cost);
    }

    /**
     * By hand: a sheet holds two doors and two shelves, one door and five shelves, or eight shelves; a door counted as 3/8 of a
     * sheet and a shelf as 1/8, that is no more than one each time. 30 doors and 60 shelves are 18.75.
     */
    @Test
    void whatIsLeftOfTheMixtureIsMadeWholeToo() {
        Problem problem = new Problem(
                job(THIN, List.of(sheet(1000, 1000, 1)), part("door", 700, 400, 30), turning("shelf", 400, 300, 60)),
                0,
                FirstCut.ANY);
        Layout layout = dive(problem);

        assertEquals(90, layout.bins.stream().mapToInt(bin -> bin.parts.size()).sum());
        assertEquals(19, layout.cost);
    }

    @ParameterizedTest
    @CsvSource({"0, ANY", "0, ALONG", "3, ANY", "3, ACROSS", "4, ALONG"})
    void whatComesOfItPassesTheIndependentSaw(int stages, FirstCut first) {
        CutJob mix = alike(Jobs.kitchen(12, 5));
        CutJob job = new CutJob(
                new Saw(mix.saw().kerf(), mix.saw().trim(), stages, first), mix.keep(), mix.stock(), mix.parts());
        Problem problem = new Problem(job, stages, first);
        Layout layout = dive(problem);
        CutPlan plan =
                new CutPlan(CutPlan.Status.SOUND, layout.cost, 0, new PlanWriter(problem).pieces(layout), List.of());

        assertEquals(List.of(), SawCheck.problems(job, plan));
    }

    /** Five of each. */
    private static CutJob alike(CutJob job) {
        List<CutPart> parts = IntStream.range(0, job.parts().size())
                .mapToObj(i -> job.parts().get(i))
                .map(p -> new CutPart(p.name(), p.length(), p.width(), 5, p.turn()))
                .toList();
        return new CutJob(job.saw(), job.keep(), job.stock(), parts);
    }

    @Test
    void nothingIsSaidWhereHardlyTwoPartsAreAlike() {
        assertTrue(SheetDive.of(new Problem(Jobs.kitchen(60, 1), 0, FirstCut.ANY), 1, () -> false)
                .isEmpty());
    }

    /** Doors, sides, floors, shelves and rails of twenty like cabinets: by area 22 and a half sheets. */
    @Test
    void itDoesNoWorseThanFillingSheetAfterSheet() {
        CutJob job = job(
                new Saw(Length.mm("3.2"), Length.mm(10), 0, FirstCut.ANY),
                List.of(sheet(2440, 1220, 70), sheet(1525, 1525, 52)),
                part("door", 717, 597, 20),
                part("side", 720, 560, 40),
                turning("floor", 564, 560, 40),
                turning("shelf", 562, 510, 20),
                turning("rail", 564, 100, 40));
        Problem problem = new Problem(job, 0, FirstCut.ANY);
        long bySheet =
                SheetBySheet.of(problem, () -> false).orElseThrow().next(0).orElseThrow().cost;

        assertTrue(dive(problem).cost <= bySheet);
    }
}
