package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.measure.LengthFormat;
import scantling.plan.Plan;
import scantling.plan.Started;

/** The finish sheet and the buying list of the papers hold what the plan says. */
class SupplyPagesTest {
    private static final Plan CHEST = Started.plan("bedside-chest", Started.shop(50));

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
