package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import scantling.cutting.CutPiece;
import scantling.milling.Blank;
import scantling.plan.Plan;
import scantling.route.Operation;
import scantling.route.Step;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Logged;
import scantling.shop.SawnAsPlanned;

/** What a bench page sends, however the network treats it. */
class BenchPagesTest extends AtTheDesk {
    private static final String QUEUE = "0123456789abcdef";

    private String job;

    @BeforeEach
    void begin() {
        job = shop.job("wall-shelf");
    }

    private String send(String... acts) {
        HttpResponse<String> answer = desk.post(
                "/jobs/" + job + "/bench/acts",
                "{\"queue\":\"%s\",\"acts\":[%s]}".formatted(QUEUE, String.join(",", acts)),
                "X-Stamp",
                desk.stamp("/new"));
        assertEquals(200, answer.statusCode(), answer.body());
        return answer.body();
    }

    private static String act(int number, String more) {
        return "{\"id\":\"act-number-%d\",\"n\":%d,%s}".formatted(number, number, more);
    }

    private static String cut(int number, String part) {
        return act(number, "\"kind\":\"cut\",\"subject\":\"%s\"".formatted(part));
    }

    private List<BenchEntry> log() {
        return shop.store.bench(job).stream().map(Logged::entry).toList();
    }

    private int cutParts() {
        return ((JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow())
                .bench()
                .cut()
                .size();
    }

    private String page() {
        return desk.get("/jobs/" + job + "/bench").body();
    }

    private JobPlan.Planned planned() {
        return (JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow();
    }

    /** The cards' keys, in the order of the page. */
    private List<String> cards() {
        Matcher card = Pattern.compile("data-card=\"([^\"]+ / [^\"]+)\"").matcher(page());
        return card.results().map(found -> found.group(1)).toList();
    }

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
    void everyOperationOfTheRouteHasACardInItsOrder() {
        List<String> cards = cards();
        int at = -1;
        for (Operation operation : planned().plan().route().operations()) {
            if (operation.step() != Step.RIP) {
                int now = IntStream.range(0, cards.size())
                        .filter(card -> (cards.get(card) + " / ").startsWith(operation.id() + " / "))
                        .findFirst()
                        .orElse(-1);
                assertTrue(now > at, operation.id() + " in " + cards);
                at = now;
            }
        }
        assertTrue(page().contains("data-subject=\"left side\" data-part=\"left side\" data-cut=\"yes\""));
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

    @Test
    void aWaitThatWasHeldUpByTheNetworkBeganWhenThePhoneSays() {
        long before = Instant.now().getEpochSecond();
        send(act(1, "\"kind\":\"wait\",\"subject\":\"glue\",\"minutes\":90,\"ago\":3600"));
        long after = Instant.now().getEpochSecond();
        Matcher wait =
                Pattern.compile("data-begun=\"(\\d+)\" data-ends=\"(\\d+)\"").matcher(page());
        assertTrue(wait.find());
        long ends = Long.parseLong(wait.group(2));
        assertTrue(ends >= before + 1800 && ends <= after + 1800, "30 minutes from when it was sent: " + ends);
    }

    @Test
    void actsArriveOnceHoweverOftenTheyAreSent() {
        String acts = cut(1, "left side");
        send(acts);
        send(acts, cut(2, "right side"));
        send(acts, cut(2, "right side"));
        assertEquals(2, log().size(), log()::toString);
        assertEquals(2, cutParts());
    }

    @Test
    void actsAreTakenInTheOrderInWhichTheyWereDone() {
        String early = send(cut(2, "right side"));
        assertTrue(early.contains("\"taken\":false") && early.contains("\"expected\":1"), early);
        assertEquals(List.of(), log());
        send(cut(1, "left side"), cut(2, "right side"));
        assertEquals("left side", log().get(0).subject());
        assertEquals("right side", log().get(1).subject());
    }

    @Test
    void aMeasuredSizeThePieceCannotHaveIsAnsweredWithWhyAndDoesNotHoldUpTheRest() {
        String absurd = "{\"id\":\"act-absurd-1\",\"n\":1,\"kind\":\"measured\","
                + "\"subject\":\"left side / thickness\",\"size\":\"2626626 mm\"}";
        String answer = send(absurd, cut(2, "left side"));
        assertTrue(answer.contains("absurdly long"), answer);
        assertEquals(1, log().size(), log()::toString);
        assertEquals("left side", log().get(0).subject());
    }

    @Test
    void anActThatCannotBeDoneIsAnsweredWithWhyAndDoesNotHoldUpTheRest() {
        String answer = send(cut(1, "no such part"), cut(2, "left side"));
        assertTrue(answer.contains("No part of this piece is called"), answer);
        assertEquals(1, cutParts());
    }

    @Test
    void aSpoiltPartIsToBeCutAgain() {
        send(cut(1, "left side"), act(2, "\"kind\":\"spoilt\",\"subject\":\"left side\",\"text\":\"dropped\""));
        assertEquals(0, cutParts());
        String page = desk.get("/jobs/" + job + "/bench").body();
        assertTrue(page.contains("aria-checked=\"false\" data-subject=\"left side\""), "its card is open again");
    }

    @Test
    void whatIsCutIsShownAsDoneAfterARestartOfThePage() {
        send(cut(1, "left side"));
        String page = desk.get("/jobs/" + job + "/bench").body();
        assertTrue(page.contains("aria-checked=\"true\" data-subject=\"left side\""));
    }

    @Test
    void aWaitRunsOnForEveryone() {
        send(act(1, "\"kind\":\"wait\",\"subject\":\"glue\",\"minutes\":90"));
        assertTrue(desk.get("/jobs/" + job + "/bench").body().contains("data-what=\"glue\""));
        assertTrue(desk.get("/").body().contains("What dries and sets"));
    }

    @Test
    void aNoteKeepsItsPhotoWhenItIsAPicture() {
        // The smallest PNG, from the W3C's PNG specification (signature, IHDR, IDAT, IEND), one grey point.
        String png = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==";
        send(act(1, "\"kind\":\"note\",\"subject\":\"saw\",\"text\":\"<i>knot</i>\",\"photo\":\"" + png + "\""));
        BenchEntry.Note note = (BenchEntry.Note) log().get(0);
        HttpResponse<String> photo = desk.get("/photos/" + note.photo().orElseThrow());
        assertEquals("image/png", photo.headers().firstValue("Content-Type").orElse(""));
    }

    @Test
    void whatIsNoPictureIsNotKept() {
        String script = Base64.getEncoder().encodeToString("<svg onload=alert(1)>".getBytes(StandardCharsets.UTF_8));
        send(act(1, "\"kind\":\"note\",\"subject\":\"saw\",\"text\":\"x\",\"photo\":\"" + script + "\""));
        assertTrue(((BenchEntry.Note) log().get(0)).photo().isEmpty());
    }

    @Test
    void whatCannotBeReadIsRefusedAndChangesNothing() {
        for (String body :
                List.of("", "{", "[]", "{\"queue\":\"../..\",\"acts\":[]}", "{\"queue\":\"" + QUEUE + "\"}")) {
            HttpResponse<String> answer =
                    desk.post("/jobs/" + job + "/bench/acts", body, "X-Stamp", desk.stamp("/new"));
            assertEquals(400, answer.statusCode(), body);
        }
        send(act(1, "\"kind\":\"measured\",\"subject\":\"left side / length\",\"size\":\"about so\""));
        assertFalse(log().stream().anyMatch(BenchEntry.Measured.class::isInstance));
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
