package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;
import scantling.shop.Logged;

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

    @Test
    void everyOperationHasACardInOrderOfWork() {
        String page = phone.get("/jobs/" + job + "/bench").body();
        int saw = page.indexOf("data-card=\"saw / ");
        int mill = page.indexOf("data-card=\"mill / ");
        int size = page.indexOf("data-card=\"size / ");
        assertTrue(0 < saw && saw < mill && mill < size, page.substring(0, 500));
        assertTrue(page.contains("data-subject=\"left side\" data-cut=\"yes\""));
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
        assertTrue(phone.get("/").body().contains("Waits running"));
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
