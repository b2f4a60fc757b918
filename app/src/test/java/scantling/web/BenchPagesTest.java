package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import scantling.route.Operation;
import scantling.route.Step;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;

/** What a bench page sends, however the network treats it. */
class BenchPagesTest extends AtTheBench {
    private static String cut(int number, String part) {
        return act(number, "\"kind\":\"cut\",\"subject\":\"%s\"".formatted(part));
    }

    private int cutParts() {
        return ((JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow())
                .bench()
                .cut()
                .size();
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
}
