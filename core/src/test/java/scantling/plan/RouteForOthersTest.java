package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.cutting.Effort;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.pricing.Estimate;
import scantling.pricing.Line;
import scantling.pricing.Pricing;
import scantling.pricing.Rates;
import scantling.route.Operation;
import scantling.route.Route;
import scantling.route.Step;
import scantling.route.Trade;

/** What others ask of a route: what comes next on a part, and hours by class for a price. */
class RouteForOthersTest {
    private static final Plan CHEST = plan("bedside-chest");

    private static Plan plan(String name) {
        Shop usual = Shop.usual();
        Shop shop = new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(50, 1));
        try (InputStream in = Starters.open(name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Planner.plan(
                            PieceReader.read(text, Construction.language(), StandardWoods.standard())
                                    .piece()
                                    .orElseThrow(),
                            BenchLog.EMPTY,
                            shop)
                    .plan();
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

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
}
