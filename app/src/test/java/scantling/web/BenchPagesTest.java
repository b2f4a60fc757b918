package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.plan.Plan;
import scantling.route.Operation;
import scantling.route.Step;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Logged;
import scantling.shop.SawnAsPlanned;

/** What a bench page sends, however the network treats it. */
class BenchPagesTest {
    private static final String QUEUE = "0123456789abcdef";

    @TempDir
    Path folder;

    private OpenShop shop;
    private OpenShop.Browser phone;
    private String job;

    @BeforeEach
    void open() {
        shop = new OpenShop(folder, false);
        phone = shop.desk();
        job = shop.job("wall-shelf");
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private String send(String... acts) {
        HttpResponse<String> answer = phone.post(
                "/jobs/" + job + "/bench/acts",
                "{\"queue\":\"%s\",\"acts\":[%s]}".formatted(QUEUE, String.join(",", acts)),
                "X-Stamp",
                phone.stamp("/new"));
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
        return phone.get("/jobs/" + job + "/bench").body();
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
        send(act(1, "\"kind\":\"wait\",\"subject\":\"glue\",\"minutes\":90,\"ago\":3600"));
        Matcher wait =
                Pattern.compile("data-begun=\"(\\d+)\" data-ends=\"(\\d+)\"").matcher(page());
        assertTrue(wait.find());
        long left = Long.parseLong(wait.group(2)) - Instant.now().getEpochSecond();
        assertTrue(Math.abs(left - 1800) < 60, "about 30 minutes left: " + left);
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
    void anActThatCannotBeDoneIsAnsweredWithWhyAndDoesNotHoldUpTheRest() {
        String answer = send(cut(1, "no such part"), cut(2, "left side"));
        assertTrue(answer.contains("No part of this piece is called"), answer);
        assertEquals(1, cutParts());
    }

    @Test
    void aSpoiltPartIsToBeCutAgain() {
        send(cut(1, "left side"), act(2, "\"kind\":\"spoilt\",\"subject\":\"left side\",\"text\":\"dropped\""));
        assertEquals(0, cutParts());
        String page = phone.get("/jobs/" + job + "/bench").body();
        assertTrue(page.contains("aria-checked=\"false\" data-subject=\"left side\""), "its card is open again");
    }

    @Test
    void whatIsCutIsShownAsDoneAfterARestartOfThePage() {
        send(cut(1, "left side"));
        String page = phone.get("/jobs/" + job + "/bench").body();
        assertTrue(page.contains("aria-checked=\"true\" data-subject=\"left side\""));
    }

    @Test
    void aWaitRunsOnForEveryone() {
        send(act(1, "\"kind\":\"wait\",\"subject\":\"glue\",\"minutes\":90"));
        assertTrue(phone.get("/jobs/" + job + "/bench").body().contains("data-what=\"glue\""));
        assertTrue(phone.get("/").body().contains("What dries and sets"));
    }

    @Test
    void aNoteKeepsItsPhotoWhenItIsAPicture() {
        // The smallest PNG, from the W3C's PNG specification (signature, IHDR, IDAT, IEND), one grey point.
        String png = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==";
        send(act(1, "\"kind\":\"note\",\"subject\":\"saw\",\"text\":\"<i>knot</i>\",\"photo\":\"" + png + "\""));
        BenchEntry.Note note = (BenchEntry.Note) log().get(0);
        HttpResponse<String> photo = phone.get("/photos/" + note.photo().orElseThrow());
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
                    phone.post("/jobs/" + job + "/bench/acts", body, "X-Stamp", phone.stamp("/new"));
            assertEquals(400, answer.statusCode(), body);
        }
        send(act(1, "\"kind\":\"measured\",\"subject\":\"left side / length\",\"size\":\"about so\""));
        assertFalse(log().stream().anyMatch(BenchEntry.Measured.class::isInstance));
    }
}
