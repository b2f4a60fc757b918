package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.shop.JobPlan;

/** Stock comes into the rack by its page, and the next saw plan uses it. */
class RackTest extends AtTheDesk {
    private HttpResponse<String> board(String id, String length) {
        return post(
                "/rack",
                "kind",
                "board",
                "id",
                id,
                "material",
                "white oak",
                "class",
                "4/4",
                "length",
                length,
                "width",
                "12 in");
    }

    @Test
    void aBoardThatIsPutInTheRackIsUsedBeforeOneIsBought() {
        String job = shop.job("wall-shelf");
        assertEquals(303, board("W1", "96 in").statusCode());
        List<String> used = ((JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow())
                .plan().cuts().stream()
                        .flatMap(group -> group.plan().used().stream())
                        .map(piece -> piece.stock().name())
                        .toList();
        assertTrue(used.contains("W1"), used::toString);
        assertTrue(desk.get("/rack").body().contains("W1"));
    }

    @Test
    void whatGoesOutIsNoLongerThere() {
        board("W1", "96 in");
        assertEquals(303, post("/rack/off", "id", "W1", "why", "").statusCode());
        assertEquals(List.of(), shop.store.onHand());
    }

    @Test
    void whatCannotBeIsRefusedWithWhy() {
        assertTrue(board("W1", "long").body().contains("is no size"));
        assertTrue(board("W1", "2440,5").body().contains("Write its decimals after a point: 2440.5."));
        board("W1", "96 in");
        assertTrue(board("W1", "96 in").body().contains("already called"));
        assertEquals(1, shop.store.onHand().size());
    }
}
