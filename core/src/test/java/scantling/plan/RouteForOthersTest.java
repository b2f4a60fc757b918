package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import scantling.pricing.Actual;
import scantling.pricing.CostSheet;
import scantling.pricing.Estimate;
import scantling.pricing.Line;
import scantling.pricing.Pricing;
import scantling.pricing.Rates;
import scantling.pricing.Took;
import scantling.route.Operation;
import scantling.route.Route;
import scantling.route.Step;
import scantling.route.Times;
import scantling.route.Trade;

/** What others ask of a route: what comes next on a part, and hours by class for a price. */
class RouteForOthersTest {
    private static final Plan CHEST = Started.plan("bedside-chest", Started.shop(50));

    @Test
    void everyPartBeginsWithItsStockAndEndsAtTheClients() {
        Route route = CHEST.route();
        CHEST.assembly().parts().forEach(part -> {
            List<Operation> all = route.of(part.path());
            assertEquals(Step.RECEIVE, all.get(0).step(), part.path());
            assertEquals(Step.DELIVER, all.get(all.size() - 1).step(), part.path());
        });
    }

    @Test
    void whatIsDoneIsNotNextAndDoingWhatIsReadyEndsWithNothingLeft() {
        Route route = CHEST.route();
        String part = CHEST.assembly().parts().get(0).path();
        Set<String> done = new HashSet<>();
        int rounds = 0;
        while (!route.ready(done).isEmpty()) {
            Operation next = route.next(part, done).orElseThrow();
            assertTrue(!done.contains(next.id()));
            route.ready(done).forEach(operation -> done.add(operation.id()));
            assertTrue(rounds++ < route.operations().size());
        }
        assertEquals(route.operations().size(), done.size());
        assertTrue(route.next(part, done).isEmpty());
    }

    @Test
    void thePriceChargesTheHoursOfTheRouteClassByClass() {
        Route route = CHEST.route();
        Estimate estimate = Pricing.estimate(Costing.basis(CHEST, Shop.usual()), Rates.example());
        assertEquals(route.hands().likely() / 60, estimate.work().total().likely(), 1e-6);
        for (Trade trade : route.byTrade().keySet()) {
            assertTrue(
                    estimate.lines().stream()
                            .anyMatch(line -> line.section() == Line.Section.LABOUR
                                    && line.what().equals(trade.words())),
                    trade.words());
        }
        assertTrue(estimate.findings().stream()
                .noneMatch(finding -> finding.subject().equals("price / hours")));
    }

    /** By hand: 20 min logged for an operation that the standard puts at its likely minutes, in one class only. */
    @Test
    void whatIsLoggedOfAClassStandsAgainstWhatWasPlannedForThatMuchOfIt() {
        Route route = CHEST.route();
        Operation glueUp = route.operations().stream()
                .filter(operation -> operation.step() == Step.GLUE_UP)
                .findFirst()
                .orElseThrow();
        Learning learned = Learning.of(
                route, Times.standard(), Map.of(glueUp.id(), 2 * glueUp.hands().likely()));
        assertEquals(1, learned.took().size());
        Took took = learned.took().get(0);
        assertEquals("glue-up", took.operation());
        assertEquals(1, took.done());
        assertEquals(glueUp.hands().likely(), took.planned().likely(), 1e-9);
        assertEquals(2 * glueUp.hands().likely(), took.minutes(), 1e-9);
        // One observation against a standard that counts as three: a quarter of the way on a logarithmic scale.
        Learning.Lesson lesson = learned.lessons().get(0);
        assertEquals(1, lesson.observations());
        assertEquals(lesson.before().likely() * Math.pow(2, 0.25), lesson.now().likely(), 1e-9);
        Estimate estimate = Pricing.estimate(Costing.basis(CHEST, Shop.usual()), Rates.example());
        CostSheet sheet = CostSheet.of(estimate, Actual.NONE.with(learned.took()), Rates.example());
        CostSheet.Row row = sheet.rows().stream()
                .filter(one -> one.what().startsWith("glue-up"))
                .findFirst()
                .orElseThrow();
        assertEquals("+100 %", row.difference());
        assertTrue(row.what().contains("1 of"), row::what);
        assertTrue(sheet.profit().isEmpty());
    }

    @Test
    void operationsThatThePieceDoesNotHaveAreNamed() {
        assertEquals(List.of("polish / all"), Learning.unknown(CHEST.route(), Set.of("polish / all")));
    }
}
