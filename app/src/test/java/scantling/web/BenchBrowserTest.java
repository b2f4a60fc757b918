package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import scantling.shop.BenchEntry;

/** The cards on a phone: no network, gloves, the saw, a spoilt part, waits through a reload, and minutes. */
class BenchBrowserTest extends InBrowser {
    /** One white dot. */
    private static final String DOT =
            "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8/5+hHgAHggJ/PchI7wAAAABJRU5ErkJggg==";

    @Test
    void theBenchGoesOnWithoutANetworkAndSendsOnceInOrder() {
        expectErrors("ERR_INTERNET_DISCONNECTED");
        String job = shop.job("wall-shelf");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/bench");
        assertThat(page.locator(".card:visible")).hasCount(1);
        page.locator("[data-seg^='cut to length / ']").first().click();
        assertThat(page.locator(".card:visible [role=checkbox]").first()).isVisible();
        List<String> parts = page.locator(".card:visible [role=checkbox]").all().stream()
                .map(box -> box.getAttribute("data-subject"))
                .toList();
        page.context().setOffline(true);
        page.locator("[data-main]").click();
        assertThat(page.locator(".net")).containsText("here for the network");
        assertEquals(0, shop.store.bench(job).size());
        page.context().setOffline(false);
        assertThat(page.locator(".net")).isEmpty();
        assertEquals(
                parts,
                shop.store.bench(job).stream()
                        .map(logged -> logged.entry().subject())
                        .toList());
        page.reload();
        assertThat(page.locator("[data-cut][aria-checked=true]")).hasCount(parts.size());
    }

    @Test
    void aMeasurementAtTheBenchIsTypedWithGloves() {
        String job = shop.job("bedside-chest");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/bench");
        page.locator("[data-seg^='cut to length / ']").first().click();
        page.locator(".card:visible .more [data-do=measure]").click();
        for (String key : List.of("4", "4", "3", ".", "1")) {
            page.locator("[data-k='" + key + "']").click();
        }
        page.locator("[data-main]").click();
        page.waitForCondition(() -> shop.store.bench(job).size() == 1);
        assertTrue(shop.store.bench(job).get(0).entry().toString().contains("443.1"));
    }

    @Test
    void aSheetIsSawnWithoutANetworkAndASpoiltPartIsSawnAgain() {
        expectErrors("ERR_INTERNET_DISCONNECTED");
        String job = shop.job("wall-shelf");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/bench");
        int boards = page.locator("[data-sawn]:not([data-sawn=''])").count();
        page.locator("[data-seg^='crosscut rough / ']").first().click();
        page.context().setOffline(true);
        for (int i = 0; i < boards; i++) {
            page.locator(".card:visible[data-sawn]").waitFor();
            page.locator("[data-main]").click();
        }
        page.context().setOffline(false);
        page.waitForCondition(() -> shop.store.bench(job).stream()
                        .filter(logged -> logged.entry() instanceof BenchEntry.Sawn)
                        .count()
                == boards);
        assertThat(page.locator(".js [data-sawn]:not([data-sawn=''])")).hasCount(0);
        page.locator(".js [data-seg^='final mill / ']").first().click();
        page.locator(".card:visible [data-do=spoilt]").click();
        page.locator(".part").selectOption("left side");
        page.locator("[data-main]").click();
        assertThat(page.locator(".js .card:visible h1")).containsText("Saw board");
    }

    @Test
    void aMakerStopsInTheMiddleOfABoardAndTheRestIsPlannedFromThePiecesInHand() {
        String job = shop.job("wall-shelf");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/bench");
        page.locator("[data-seg^='crosscut rough / ']").first().click();
        page.locator(".card:visible [role=checkbox]").first().click();
        page.locator(".card:visible [data-do=here]").click();
        assertThat(page.locator(".lie")).containsText("planned anew");
        page.locator("[data-main]").click();
        page.waitForCondition(() -> !shop.store.onHand().isEmpty());
        assertThat(page.locator(".js .card:visible h1")).containsText("Saw board");
        assertThat(page.locator(".js .card:visible"))
                .containsText(
                        "From the rack: " + shop.store.onHand().get(0).stock().id());
        page.locator(".card:visible [data-do=lost]").click();
        assertThat(page.locator(".lie")).containsText("Nothing is cut off yet");
        assertThat(page.locator("[data-main]")).isDisabled();
        page.locator("[data-second]").click();
        assertThat(page.locator("[data-main]")).isEnabled();
    }

    @Test
    void aPhotoAndANoteAreKeptWithTheOperation() {
        String job = shop.job("wall-shelf");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/bench");
        page.locator("[data-seg^='final mill / ']").first().click();
        page.locator(".card:visible [data-do=note]").click();
        page.locator(".words").fill("a knot at the far end <b>");
        page.locator(".pic")
                .setInputFiles(new FilePayload(
                        "knot.png", "image/png", Base64.getDecoder().decode(DOT)));
        page.locator("[data-main]").click();
        page.waitForCondition(() -> shop.store.bench(job).size() == 1);
        // the page comes anew with the picture
        assertThat(page.locator(".js .card:visible .notes img")).hasCount(1);
        assertThat(page.locator(".js .card:visible .notes")).containsText("a knot at the far end <b>");
        String photo = page.locator(".js .card:visible .notes img").getAttribute("src");
        assertEquals(200, shop.desk().get(photo).statusCode());
    }

    @Test
    void aWaitBeginsWithDoneAndGoesOnThroughAReload() {
        String job = shop.job("wall-shelf");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/bench");
        page.locator("[data-seg^='glue up / body']").click();
        page.locator(".card:visible .minutes").fill("25");
        page.locator("[data-main]").click();
        assertThat(page.locator(".waits .tn")).hasText("Glue up: body");
        page.waitForCondition(() -> shop.store.bench(job).size() == 3);
        page.reload();
        assertThat(page.locator(".waits .tn")).hasText("Glue up: body");
        assertThat(page.locator(".waits .left")).containsText(Pattern.compile("[45]\\d min|1 h 00"));
        page.locator("[data-seg^='glue up / body']").click();
        assertThat(page.locator(".card:visible .notes")).containsText("25 min logged");
        page.locator(".card:visible [data-do=undo]").click();
        assertThat(page.locator(".waits .tn")).hasCount(0);
    }

    @Test
    void minutesRunOnThroughALockedPhoneButNotThroughANight() {
        String job = shop.job("wall-shelf");
        Page page = page(390, 844);
        page.clock().install(new Clock.InstallOptions().setTime("2026-03-06T09:00:00Z"));
        page.navigate("/jobs/" + job + "/bench");
        page.clock().pauseAt("2026-03-06T10:00:00Z");
        page.locator("[data-seg^='final mill / ']").first().click();
        Locator minutes = page.locator(".card:visible .minutes");
        page.clock().fastForward("25:00");
        assertThat(minutes).hasValue("25");
        assertThat(page.locator(".card:visible .spent")).containsText("run on while the phone is locked");
        page.clock().fastForward("09:00:00");
        assertThat(minutes).hasValue("25");
        page.clock().fastForward("10:00");
        assertThat(minutes).hasValue("35");
        page.reload();
        assertThat(page.locator(".card:visible .minutes")).hasValue("35");
    }
}
