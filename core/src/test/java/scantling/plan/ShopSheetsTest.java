package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.cutting.CutPlan;
import scantling.cutting.Effort;
import scantling.cutting.SawPlans;
import scantling.cutting.Wishes;

/** The sheets of the starters, as a shop buys them: four by eight and five by five feet, kerf 3.2, trim 10. */
class ShopSheetsTest {
    private static final Effort EFFORT = new Effort(6_000, 1);

    /** At least a quarter fewer fence settings than the same plan without that wish, for the same money. */
    @ParameterizedTest
    @ValueSource(strings = {"sideboard", "kitchen"})
    void settingsAreAQuarterFewerForTheSameMoney(String starter) {
        int easy = 0;
        int cheap = 0;
        for (ShopSheets.Named named : ShopSheets.of(starter)) {
            CutPlan with = SawPlans.plan(named.job(), EFFORT, () -> false);
            CutPlan without =
                    SawPlans.plan(named.job().withWishes(Wishes.MONEY_ONLY), new Effort(3_000, 1), () -> false);
            assertTrue(with.cost() <= without.cost(), named.name());
            assertEquals(List.of(), with.leftOut(), named.name());
            easy += with.settings();
            cheap += without.settings();
        }
        assertTrue(easy <= 0.75 * cheap, easy + " of " + cheap);
    }
}
