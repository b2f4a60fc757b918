package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import scantling.cutting.CutPiece;
import scantling.milling.Blank;
import scantling.plan.Plan;
import scantling.shop.BenchEntry;
import scantling.shop.SawnAsPlanned;

/** What a saw card sends: a board that is sawn, that keeps its number, that is sawn by halves, with a part that is spoilt. */
class SawCardsTest extends AtTheBench {
    /** What the first saw card sends when it is done. */
    private String sawn() {
        Matcher sawn = Pattern.compile("data-sawn=\"([^\"]+)\"").matcher(page());
        assertTrue(sawn.find(), "a saw card");
        return sawn.group(1).replace("&#34;", "\"").replace("&amp;", "&");
    }

    private static String sawn(int number, String content) {
        return act(
                number,
                "\"kind\":\"sawn\",\"subject\":\"saw\",\"sawn\":\"%s\""
                        .formatted(content.replace("\\", "\\\\").replace("\"", "\\\"")));
    }

    @Test
    void aBoardThatIsSawnGoesOutOfThePlanAndItsOffcutsComeIntoTheRack() {
        int before = planned().plan().cuts().stream()
                .mapToInt(group -> group.plan().used().size())
                .sum();
        String content = sawn();
        BenchEntry.Sawn sawn = SawnAsPlanned.read(content).orElseThrow();
        assertFalse(sawn.parts().isEmpty());
        send(sawn(1, content));
        assertEquals(
                before - 1,
                planned().plan().cuts().stream()
                        .mapToInt(group -> group.plan().used().size())
                        .sum());
        assertEquals(
                sawn.offcuts().stream().map(offcut -> offcut.stock().id()).toList(),
                shop.store.onHand().stream().map(piece -> piece.stock().id()).toList());
    }

    /** The numbers of the boards that are still to be sawn, and of how many. */
    private List<String> boards() {
        return Pattern.compile("<h1>Saw board (\\d+ of \\d+):")
                .matcher(page())
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    private List<String> sawCards() {
        return cards().stream()
                .filter(key -> key.startsWith("crosscut rough / "))
                .toList();
    }

    @Test
    void aBoardKeepsItsNumberWhenThoseBeforeItAreSawn() {
        List<String> before = boards();
        assertTrue(before.size() > 2, before::toString);
        List<String> keys = sawCards();
        send(sawn(1, sawn()));
        assertEquals(before.subList(1, before.size()), boards());
        assertEquals(keys.subList(1, keys.size()), sawCards(), "what is ticked on them stays theirs");
        send(sawn(2, sawn()));
        assertEquals(before.subList(2, before.size()), boards());
    }

    @Test
    void takingTheSawingBackGivesTheSamePlanAndTheSameRack() {
        Plan before = planned().plan();
        send(sawn(1, sawn()));
        String act = shop.store.bench(job).get(0).act();
        send(act(2, "\"kind\":\"takeback\",\"subject\":\"%s\"".formatted(act)));
        assertEquals(before, planned().plan());
        assertEquals(List.of(), shop.store.onHand());
    }

    @Test
    void aPieceFromTheRackLeavesItOnceHoweverManyPhonesSawIt() {
        send(sawn(1, sawn()));
        String content = SawnAsPlanned.written(new BenchEntry.Sawn(Optional.of("not there"), List.of(), List.of()));
        assertTrue(send(sawn(2, content)).contains("Nothing in the rack is called"));
    }

    /** What the first saw card keeps for every number of its cuts. */
    private String partly() {
        Matcher partly = Pattern.compile("data-partly=\"([^\"]+)\"").matcher(page());
        assertTrue(partly.find(), "a saw card");
        return partly.group(1).replace("&#34;", "\"").replace("&amp;", "&");
    }

    private static String partly(int number, String content, int made, String spoilt) {
        return act(
                number,
                "\"kind\":\"partly\",\"subject\":\"saw\",\"made\":%d,\"parts\":[%s],\"partly\":\"%s\""
                        .formatted(made, spoilt, content.replace("\\", "\\\\").replace("\"", "\\\"")));
    }

    private int toBuy() {
        List<String> rack =
                shop.store.onHand().stream().map(piece -> piece.stock().id()).toList();
        return (int) planned().plan().cuts().stream()
                .flatMap(group -> group.plan().used().stream())
                .filter(piece -> !rack.contains(piece.stock().name()))
                .count();
    }

    @Test
    void aBoardThatIsPartlySawnIsPlannedAnewFromThePiecesInHand() {
        int pieces = planned().plan().cuts().get(0).job().parts().size();
        int bought = toBuy();
        CutPiece board = planned().plan().cuts().get(0).plan().used().get(0);
        String kept = partly();
        for (int made = 1; made < board.steps().size(); made++) {
            assertTrue(send(partly(2 * made - 1, kept, made, "")).contains("\"taken\":true"));
            BenchEntry.Sawn sawn = (BenchEntry.Sawn) log().get(log().size() - 1);
            assertTrue(toBuy() < bought || bought == 0, "after %d cuts nothing is bought twice".formatted(made));
            assertEquals(sawn.offcuts().size(), shop.store.onHand().size(), "pieces in hand after cut " + made);
            int left = planned().plan().cuts().stream()
                    .flatMap(group -> group.plan().used().stream())
                    .mapToInt(piece -> piece.parts().size())
                    .sum();
            int free =
                    sawn.parts().stream().mapToInt(BenchEntry.SawnPart::pieces).sum();
            assertEquals(allPieces(pieces), left + free, "every piece is sawn or planned after cut " + made);
            String act = shop.store.bench(job).get(log().size() - 1).act();
            send(act(2 * made, "\"kind\":\"takeback\",\"subject\":\"%s\"".formatted(act)));
            assertEquals(List.of(), shop.store.onHand(), "and all of it is taken back");
            assertEquals(bought, toBuy());
        }
    }

    private int allPieces(int atLeast) {
        int all = planned().plan().blanks().stream().mapToInt(Blank::pieces).sum();
        assertTrue(all >= atLeast);
        return all;
    }

    @Test
    void aPartSpoiltAtTheSawIsCutAgainFromWhatIsLeft() {
        String kept = partly();
        CutPiece board = planned().plan().cuts().get(0).plan().used().get(0);
        String part = board.parts().get(0).part().name();
        assertTrue(
                send(partly(1, kept, 1, "\"no such part\"")).contains("cannot be right"),
                "a part that is not cut free cannot be spoilt");
        send(partly(2, kept, board.steps().size(), "\"%s\"".formatted(part)));
        long onBoard = board.parts().stream()
                .filter(placed -> placed.part().name().equals(part))
                .count();
        BenchEntry.Sawn sawn = (BenchEntry.Sawn) log().get(0);
        int free = sawn.parts().stream()
                .filter(one -> one.part().equals(part))
                .mapToInt(BenchEntry.SawnPart::pieces)
                .sum();
        assertEquals(onBoard - 1, free, "one piece of " + part + " is lost");
        assertTrue(
                planned().plan().cuts().stream()
                        .flatMap(group -> group.plan().used().stream())
                        .flatMap(piece -> piece.parts().stream())
                        .anyMatch(placed -> placed.part().name().equals(part)),
                "and is planned again");
    }
}
