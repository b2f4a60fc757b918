package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.checks.FitCheck;
import scantling.checks.Misfit;
import scantling.construct.Finding;
import scantling.measure.Length;
import scantling.plan.BenchRemedies;
import scantling.plan.DesignChange;

/**
 * A bedside chest from the plan to the last drawer, with what happens on the way: two openings that came out 1.1 mm narrow and
 * 0.7 mm wide, a rail that split, a drawer that was changed when half was cut. The promises of {@link WalkedJob#look} hold after
 * every step.
 */
class WalkTest {
    private static final String FRONT_1 = "drawers / drawer 1 / front";
    private static final String FRONT_2 = "drawers / drawer 2 / front";
    private static final String RAIL = "low / front rail";

    @TempDir
    Path folder;

    @Test
    void aWholeJobIsWalkedWithEverythingThatGoesWrong() {
        try (TestShop shop = new TestShop(folder)) {
            WalkedJob walk = new WalkedJob(shop, shop.addJob("bedside-chest"));
            walk.buy();
            assertTrue(shop.store().rack().stock().size() > 4, "wood was bought");
            cutHalf(walk, shop);
            measureTwoOpenings(walk, shop);
            spoilARail(walk);
            changeADrawer(walk, shop);
            finish(walk, shop);
        }
    }

    /** Half of the stock is sawn and what came of it cut, the fronts of the upper drawers and the rail with it. */
    private static void cutHalf(WalkedJob walk, TestShop shop) {
        walk.saw(0.5, List.of(FRONT_1, FRONT_2, RAIL));
        walk.readyToCut().forEach(part -> walk.does(walk.cut(part, Map.of())));
        shop.log(walk.job(), new BenchEntry.Minutes(FRONT_2, 40));
        walk.look();
        assertTrue(walk.cutParts().containsAll(List.of(FRONT_1, FRONT_2, RAIL)), walk.cutParts()::toString);
        assertTrue(walk.cutParts().size() < walk.plan().blanks().size(), "half is left");
    }

    private static void measureTwoOpenings(WalkedJob walk, TestShop shop) {
        walk.stepThereAndBack(walk.measure("drawers / drawer 1 / opening / width", "-1.1"));
        walk.stepThereAndBack(walk.measure("drawers / drawer 2 / opening / width", "0.7"));
        Finding narrow = finding(walk, FRONT_1);
        assertEquals(Finding.Severity.STOP, narrow.severity());
        assertTrue(narrow.remedy().contains("1.1"), narrow::remedy);
        Finding wide = finding(walk, FRONT_2);
        assertEquals(Finding.Severity.CAUTION, wide.severity());
        assertTrue(wide.remedy().contains("Pack it out by 0.7"), wide::remedy);
        List<BenchRemedies.Remedy> remedies = BenchRemedies.of(
                walk.plan(), shop.store().settings().shop(shop.store().rack()));
        assertTrue(
                remedies.stream()
                        .anyMatch(one ->
                                one.part().equals(FRONT_1) && one.amount().equals(Length.mm("1.1"))),
                remedies::toString);
    }

    private static Finding finding(WalkedJob walk, String part) {
        return walk.plan().findings().stream()
                .filter(finding -> finding.subject().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static void spoilARail(WalkedJob walk) {
        Length length = walk.part(RAIL).length().value();
        walk.stepThereAndBack(walk.spoil(RAIL));
        assertEquals(length, walk.part(RAIL).length().value());
        assertTrue(
                walk.plan().cuts().stream()
                        .flatMap(group -> group.plan().used().stream())
                        .flatMap(piece -> piece.parts().stream())
                        .anyMatch(placed -> placed.part().name().equals(RAIL)),
                "the rail is planned again");
    }

    private static void changeADrawer(WalkedJob walk, TestShop shop) {
        Revision now = shop.store().text(walk.job()).orElseThrow();
        String text = now.text().replace("rows: [130, 150, rest]", "rows: [130, 156, rest]");
        DesignChange.Cost cost = shop.store().jobBook().costOf(walk.job(), text).orElseThrow();
        DesignChange.Affected front = cost.parts().stream()
                .filter(part -> part.part().equals(FRONT_2))
                .findFirst()
                .orElseThrow();
        assertEquals(DesignChange.Fate.MAKE_ANEW, front.fate(), front::sentence);
        assertTrue(cost.minutes().orElseThrow() >= 40, cost::toString);
        assertFalse(cost.sparesWhatIsCut());
        assertEquals(now, shop.store().text(walk.job()).orElseThrow(), "nothing is accepted by asking");
        walk.stepThereAndBack(new Act.EditText(walk.job(), now.number(), text, "a higher second drawer"));
    }

    /** Too big is planed to fit, too small is made anew, then the rest is bought, sawn and cut. */
    private static void finish(WalkedJob walk, TestShop shop) {
        for (int round = 0; round < 2; round++) {
            for (Misfit misfit : FitCheck.differences(walk.plan().assembly())) {
                String part = misfit.part().path();
                if (walk.cutParts().contains(part)) {
                    walk.does(misfit.isTooBig() ? walk.cut(part, Map.of()) : walk.spoil(part));
                }
            }
            walk.look();
            walk.buy();
            walk.saw(1, List.of());
            walk.readyToCut().forEach(part -> walk.does(walk.cut(part, Map.of())));
            walk.look();
        }
        assertEquals(List.of(), FitCheck.differences(walk.plan().assembly()));
        assertEquals(List.of(), walk.plan().cuts());
        assertEquals(walk.plan().blanks().size(), walk.cutParts().size());
        Job job = shop.store().job(walk.job()).orElseThrow();
        walk.does(new Act.ChangeJob(job.in(Job.State.FINISHED)));
        assertEquals(
                Optional.of(Job.State.FINISHED), shop.store().job(walk.job()).map(Job::state));
    }
}
