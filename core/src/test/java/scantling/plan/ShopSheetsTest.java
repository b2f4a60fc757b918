package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;
import scantling.cutting.Wishes;

/** The sheets of the starters, as a shop buys them: four by eight and five by five feet, kerf 3.2, trim 10. */
class ShopSheetsTest {
    private static final Effort EFFORT = new Effort(8_000, 1);

    /** At least a quarter fewer fence settings than the same plans without that wish, for the same money, at most 3 % above the bound. */
    @Test
    void settingsAreAQuarterFewerAndTheCostIsNearTheBound() {
        int easy = 0;
        int cheap = 0;
        long cost = 0;
        long bound = 0;
        for (ShopSheets.Named named : ShopSheets.ofAll()) {
            CutPlan with = SawPlans.plan(named.job(), EFFORT, () -> false);
            CutPlan without =
                    SawPlans.plan(named.job().withWishes(Wishes.MONEY_ONLY), new Effort(4_000, 1), () -> false);
            assertTrue(with.cost() <= without.cost(), named.name());
            assertEquals(List.of(), with.leftOut(), named.name());
            easy += with.settings();
            cheap += without.settings();
            cost += with.cost();
            bound += with.lowerBound();
        }
        assertTrue(easy <= 0.75 * cheap, easy + " of " + cheap);
        assertTrue(cost - bound <= 0.03 * cost, cost + " above " + bound);
    }
}
