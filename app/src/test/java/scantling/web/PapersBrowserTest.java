package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Route;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import scantling.packet.Order;

/** Papers and files as a maker asks for them: each offered file is ticked, sent for and read. */
class PapersBrowserTest extends InBrowser {
    /** How each kind of file begins; several of a kind come in a zip. */
    private static final Map<String, String> BEGINNINGS = Map.ofEntries(
            Map.entry("packet", "%PDF"),
            Map.entry("templates", "%PDF"),
            Map.entry("labels", "%PDF"),
            Map.entry("handover", "%PDF"),
            Map.entry("record", "%PDF"),
            Map.entry("cost", "%PDF"),
            Map.entry("timber", "%PDF"),
            Map.entry("page", "<!doctype html>"),
            Map.entry("tables", "mark,"),
            Map.entry("data", "{"),
            Map.entry("drawings", "PK"),
            Map.entry("outlines", "PK"),
            Map.entry("scene", "{"),
            Map.entry("calendar", "BEGIN:VCALENDAR"));

    private byte[] sentFor(Page page, Runnable chosen) {
        chosen.run();
        // What the form sends for is read here and sent for once more, for a browser shows some of it and keeps the
        // rest.
        page.route("**/papers/files*", route -> route.fulfill(new Route.FulfillOptions().setStatus(204)));
        Request request = page.waitForRequest(
                url -> url.url().contains("/papers/files?"),
                () -> page.getByText("Get them").click());
        APIResponse answer = page.context().request().get(request.url());
        assertEquals(200, answer.status(), request.url());
        return answer.body();
    }

    private static void tick(Page page, String word) {
        page.locator("input[name=only][value=" + word + "]").check();
    }

    @Test
    void eachFileThatIsOfferedArrivesAndIsWhatItSays() {
        String job = shop.job("wall-shelf");
        Page page = desk();
        for (String word : Order.FILES) {
            page.navigate("/jobs/" + job + "/papers");
            byte[] body = sentFor(page, () -> {
                tick(page, word);
                page.locator("input[name=from]").fill("2026-11-25T08:00");
            });
            String text = new String(body, 0, Math.min(body.length, 400), StandardCharsets.UTF_8);
            assertTrue(text.startsWith(BEGINNINGS.getOrDefault(word, "nothing")), word + ": " + text);
        }
    }

    @Test
    void theChosenSectionsComeOnTheChosenPaperInTheChosenUnit() throws IOException {
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job + "/papers");
        byte[] body = sentFor(page, () -> {
            tick(page, "parts");
            tick(page, "joints");
            page.locator("select[name=paper]").selectOption("letter");
            page.locator("select[name=unit]").selectOption("inch");
        });
        try (PDDocument packet = Loader.loadPDF(body)) {
            // Letter is 8 1/2 by 11 in (ANSI/ASME Y14.1, size A): 612 by 792 points.
            assertEquals(612, packet.getPage(0).getMediaBox().getWidth(), 0.5);
            assertEquals(792, packet.getPage(0).getMediaBox().getHeight(), 0.5);
            String text = new PDFTextStripper().getText(packet);
            assertTrue(text.contains("Parts") && text.contains("Joints"), text);
            assertTrue(!text.contains("Machine settings") && !text.contains("Buying list"), text);
            assertTrue(text.contains("3/4"), text);
        }
    }

    @Test
    void nothingTickedIsAllOfItInOneZip() throws IOException {
        String job = shop.job("wall-shelf");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/papers");
        assertThat(page.getByText("Get them")).isVisible();
        TreeSet<String> names = new TreeSet<>();
        byte[] body = sentFor(page, () -> {});
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(body))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        assertTrue(
                names.containsAll(List.of("packet.pdf", "templates.pdf", "labels.pdf", "parts.csv", "plan.json")),
                names::toString);
    }
}
