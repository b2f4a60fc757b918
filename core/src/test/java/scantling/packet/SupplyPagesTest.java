package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.cutting.Effort;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** The finish sheet and the buying list of the papers hold what the plan says. */
class SupplyPagesTest {
    private static final Plan CHEST = plan("bedside-chest");

    private static Plan plan(String starter) {
        try (InputStream in = Starters.open(starter)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            Shop shop = new Shop(
                    Shop.usual().tolerances(),
                    Shop.usual().allowances(),
                    Shop.usual().rack(),
                    new Effort(50, 1));
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
    void everythingThePlanUsesIsOnTheBuyingList() {
        List<BuyRow> rows = BuyRow.of(CHEST);
        int wood = rows.stream()
                .filter(row -> row.kind().startsWith("Boards"))
                .mapToInt(row -> Integer.parseInt(row.number()))
                .sum();
        assertEquals(
                CHEST.cuts().stream()
                        .mapToInt(group -> group.plan().used().size())
                        .sum(),
                wood);
        assertTrue(rows.stream()
                .anyMatch(
                        row -> row.what().contains("undermount") && row.number().equals("3 pair")));
        assertTrue(rows.stream().anyMatch(row -> row.what().equals("waterborne lacquer")));
    }

    @Test
    void theJobSheetShowsTheFinishWithItsCautionsAndItsTestBoard() {
        String page = JobSheetPage.html(Packet.of(CHEST, LengthFormat.MM).content());
        for (String words : List.of(
                "id=\"finish\"",
                "id=\"buying\"",
                "waterborne lacquer, coat 3 of 3",
                "heat up by themselves",
                "Keep bare for glue",
                "Test board")) {
            assertTrue(page.contains(words), words);
        }
    }

    @Test
    void aCautionIsToldOnceAtTheFirstStepItBelongsTo() {
        String page = JobSheetPage.html(Packet.of(CHEST, LengthFormat.MM).content());
        int first = page.indexOf("heat up by themselves");
        assertFalse(page.substring(first + 1).contains("heat up by themselves"));
    }
}
