package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.measure.Length;

/** What makes one plan better than another of the same price; figures worked by hand. */
class WishesTest {
    private static final Saw THIN = Saw.of(Length.ZERO);
    private static final Saw TRIMMING = new Saw(Length.mm(3), Length.mm(10), 0, FirstCut.ANY);

    private static CutPlan plan(CutJob job) {
        return SawPlans.plan(job, new Effort(3_000, 1), () -> false);
    }

    /** Six rips at 100, then all strips crosscut at 500: no plan needs fewer than two settings. */
    @Test
    void twelveEqualStripsNeedTwoSettings() {
        CutPlan plan = plan(job(THIN, List.of(sheet(1000, 700, 1)), part("strip", 500, 100, 12)));

        assertEquals(2, plan.settings());
    }

    /** Offcuts aside, for which a setting more may be worth its while, and trimming, of which each edge is thought to need one. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void askingForFewSettingsNeverCostsMoreMoney(long seed) {
        CutJob mix = Jobs.kitchen(40, seed);
        CutJob job = new CutJob(Saw.of(Length.mm("3.2")), mix.keep(), mix.stock(), mix.parts());
        CutPlan easy = plan(job.withWishes(Wishes.USUAL.withOffcut(0)));
        CutPlan cheap = SawPlans.plan(job.withWishes(Wishes.MONEY_ONLY), new Effort(1_500, 1), () -> false);

        assertTrue(easy.cost() <= cheap.cost());
        assertTrue(easy.settings() < cheap.settings());
    }

    /** 1000 wide: strips of 300 and 200 leave 500 in one piece only when they lie together. */
    @Test
    void theOffcutIsKeptInOnePiece() {
        CutPlan plan = plan(job(THIN, List.of(sheet(1000, 1000, 1)), part("a", 1000, 300, 1), part("b", 1000, 200, 1)));

        assertEquals(1, plan.used().get(0).offcuts().size());
        assertEquals(Length.mm(500), plan.used().get(0).offcuts().get(0).width());
    }

    @Test
    void nearTheEdgeTheNarrowestPieceComesOffFirst() {
        CutJob job = job(
                new Saw(Length.ZERO, Length.ZERO, 0, FirstCut.ALONG),
                List.of(sheet(1000, 1000, 1)),
                part("a", 1000, 450, 1),
                part("b", 1000, 150, 1));

        CutStep wide = plan(job).used().get(0).steps().get(0);
        CutStep narrow = plan(job.withWishes(Wishes.USUAL.withNearEdge(true)))
                .used()
                .get(0)
                .steps()
                .get(0);

        assertEquals("a", wide.first());
        assertEquals("b", narrow.first());
        assertEquals(Length.mm(150), narrow.fence());
    }

    /** Two sheets hold four of each size; when sizes count, each sheet holds one size only. */
    @Test
    void fewSizesOnASheetWhenThatIsWanted() {
        CutJob job = job(THIN, List.of(sheet(1000, 1000, 1)), part("a", 500, 500, 4), part("b", 1000, 250, 4));

        CutPlan plan = plan(job.withWishes(Wishes.MONEY_ONLY.withSizes(1)));

        assertEquals(2, plan.used().size());
        for (CutPiece piece : plan.used()) {
            assertEquals(
                    1,
                    piece.parts().stream()
                            .map(placed -> placed.part().name())
                            .distinct()
                            .count());
        }
    }

    /** 10 + 900 + 3 leaves more than the trim at the far end; 10 + 380 + 10 fills the width. */
    @Test
    void aFarEndIsTrimmedOnlyWhereAPartLiesAgainstIt() {
        CutPlan plan = plan(job(TRIMMING, List.of(sheet(1000, 400, 1)), part("a", 900, 380, 1)));
        List<CutStep> trims =
                plan.used().get(0).steps().stream().filter(CutStep::isTrim).toList();

        assertEquals(
                List.of(Length.mm(990), Length.mm(390), Length.mm(380)),
                trims.stream().map(CutStep::fence).toList());
    }

    @Test
    void plansOfTheSamePriceAreComparedByHowEasyTheyAre() {
        CutJob job = Jobs.kitchen(40, 1);
        CutPlan easy = plan(job);
        CutPlan first = SawPlans.plan(job, new Effort(0, 1), () -> false);

        assertTrue(SawPlans.isBetter(job, easy, first));
        assertTrue(!SawPlans.isBetter(job, first, easy));
    }
}
