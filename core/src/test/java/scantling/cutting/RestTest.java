package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;
import static scantling.cutting.Jobs.stick;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.measure.Length;

/** Where the maker is, and what is left; figures worked by hand. */
class RestTest {
    private static final Saw SAW = new Saw(Length.mm(3), Length.mm(10), 0, FirstCut.ANY);
    private static final Effort EFFORT = new Effort(800, 1);

    private static Rest rest(CutJob job, CutPlan plan, Map<Integer, Integer> made, Map<String, Integer> spoilt) {
        Rest.Answer answer = Rest.of(job, plan, new Rest.Progress(made, spoilt));
        assertEquals(List.of(), answer.problems());
        return answer.rest().orElseThrow();
    }

    private static CutPlan plan(CutJob job) {
        return SawPlans.plan(job, EFFORT, () -> false);
    }

    private static CutPlan again(Rest rest) {
        return SawPlans.rest(rest, EFFORT, () -> false);
    }

    private static int count(CutPlan plan) {
        return plan.used().stream().mapToInt(piece -> piece.parts().size()).sum();
    }

    @Test
    void beforeTheFirstCutEverythingIsLeft() {
        CutJob job = Jobs.kitchen(20, 1);
        CutPlan plan = plan(job);
        Rest rest = rest(job, plan, Map.of(), Map.of());

        assertEquals(job.parts(), rest.job().parts());
        assertTrue(again(rest).cost() <= plan.cost());
    }

    @Test
    void whenEverythingIsCutNothingIsLeft() {
        CutJob job = Jobs.kitchen(20, 1);
        CutPlan plan = plan(job);
        Map<Integer, Integer> all = new HashMap<>();
        plan.used().forEach(piece -> all.put(piece.number(), piece.steps().size()));
        Rest rest = rest(job, plan, all, Map.of());

        assertEquals(List.of(), rest.job().parts());
        assertEquals(0, again(rest).used().size());
    }

    /** After any cut: what is free and what the rest holds are the parts that were wanted, and no sheet more is bought. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void afterAnyCutOnlyTheRestIsPlannedAndNoMoreIsBought(long seed) {
        CutJob job = Jobs.kitchen(30, seed);
        CutPlan plan = plan(job);
        SplittableRandom random = new SplittableRandom(seed);
        Map<Integer, Integer> made = new HashMap<>();
        long opened = 0;
        for (CutPiece piece : plan.used()) {
            int cuts = random.nextInt(piece.steps().size() + 1);
            made.put(piece.number(), cuts);
            long trims = piece.steps().stream().filter(CutStep::isTrim).count();
            opened += cuts >= trims ? piece.stock().cost() : 0;
        }
        Rest rest = rest(job, plan, made, Map.of());
        CutPlan next = again(rest);
        int left = rest.job().parts().stream().mapToInt(CutPart::count).sum();

        assertEquals(left, count(next));
        assertTrue(opened + next.cost() <= plan.cost());
    }

    /** One sheet 1000 by 400 gives two of 480; one is spoilt, so a third of 480 needs a second sheet, or the offcut 190 high. */
    @Test
    void aSpoiltPartIsCutAgainFromTheOffcutWhenItFits() {
        CutJob job = job(SAW, List.of(sheet(1000, 400, 70)), part("rail", 480, 150, 2));
        CutPlan plan = plan(job);
        int cuts = plan.used().get(0).steps().size();
        CutPlan next = again(rest(job, plan, Map.of(1, cuts), Map.of("rail", 1)));

        assertEquals(0, next.cost());
        assertEquals(1, count(next));
        assertTrue(
                next.used().get(0).stock().name().startsWith("offcut "),
                next.used().get(0).stock()::name);
    }

    @Test
    void aSpoiltPartThatNoOffcutHoldsNeedsAFreshSheet() {
        CutJob job = job(SAW, List.of(sheet(1000, 400, 70)), part("door", 900, 370, 1));
        CutPlan plan = plan(job);
        int cuts = plan.used().get(0).steps().size();
        CutPlan next = again(rest(job, plan, Map.of(1, cuts), Map.of("door", 1)));

        assertEquals(70, next.cost());
    }

    @Test
    void aPieceInHandIsNotTrimmedAgain() {
        CutJob job = job(SAW, List.of(sheet(1000, 400, 70)), part("a", 480, 150, 2), part("b", 300, 100, 2));
        CutPlan plan = plan(job);
        long trims = plan.used().get(0).steps().stream().filter(CutStep::isTrim).count();
        Rest rest = rest(job, plan, Map.of(1, (int) trims), Map.of());

        assertEquals(Length.mm(980), rest.job().stock().get(0).length());
        assertEquals(
                0,
                again(rest).used().get(0).steps().stream()
                        .filter(CutStep::isTrim)
                        .count());
    }

    @Test
    void scarceStockThatIsOpenedIsNotThereAnyMore() {
        Stock one = new Stock.SheetStock("last", Length.mm(1000), Length.mm(400), java.util.OptionalInt.of(1), 70);
        CutJob job = job(SAW, List.of(one), part("door", 900, 370, 1));
        CutPlan plan = plan(job);
        CutPlan next =
                again(rest(job, plan, Map.of(1, plan.used().get(0).steps().size()), Map.of("door", 1)));

        assertEquals(1, next.leftOut().size());
    }

    @Test
    void sticksAreTakenUpWhereTheyLie() {
        CutJob job = job(
                SAW,
                List.of(stick(2000)),
                CutPart.stick("long", Length.mm(900), 2),
                CutPart.stick("short", Length.mm(100), 3));
        CutPlan plan = plan(job);
        CutPlan next = again(rest(job, plan, Map.of(1, 3), Map.of()));

        assertTrue(next.cost() < plan.cost());
    }

    @Test
    void whatCannotBeIsSaid() {
        CutJob job = job(SAW, List.of(sheet(1000, 400, 70)), part("door", 900, 370, 1));
        CutPlan plan = plan(job);
        Rest.Answer answer = Rest.of(job, plan, new Rest.Progress(Map.of(2, 1), Map.of()));
        Rest.Answer spoilt = Rest.of(job, plan, new Rest.Progress(Map.of(), Map.of("door", 1)));

        assertTrue(answer.problems().get(0).contains("no stock number (2)"));
        assertFalse(spoilt.rest().isPresent());
    }
}
