package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The text beside the drawing in a browser, and every page for readers whose browser runs no scripts. */
class TextBrowserTest extends InBrowser {
    @Test
    void whatMayStandThereIsOfferedAndTakenBackLikeAnythingTyped() {
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job + "/text");
        Locator text = page.locator("#text");
        String before = text.inputValue();
        text.focus();
        page.evaluate("const t = document.getElementById('text'); const at = t.value.indexOf('white oak');"
                + " t.setSelectionRange(at, at + 9)");
        page.keyboard().type("white a");
        page.keyboard().press("Control+Space");
        assertThat(page.locator(".offers li").first()).containsText("white ash");
        page.keyboard().press("Enter");
        assertThat(text).hasValue(before.replace("white oak", "white ash"));
        page.keyboard().press("Control+Z");
        assertThat(text).hasValue(before.replace("white oak", "white a"));
    }

    @Test
    void whatIsWrongIsUnderlinedWhereItStandsAndTheDrawingFollowsWhatIsRight() {
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job + "/text");
        Locator text = page.locator("#text");
        String before = text.inputValue();
        text.fill(before.replace("of: oak", "of: oka"));
        assertThat(page.locator(".under mark").first()).hasText("oka");
        assertThat(page.locator("#wrong")).containsText("oka");
        text.fill(before.replace("32 wide", "33 wide"));
        assertThat(page.locator(".under mark")).hasCount(0);
        assertThat(page.locator("#front")).containsText("33");
        assertEquals(before, shop.store.text(job).orElseThrow().text(), "nothing is written before it is put in");
    }

    @Test
    void aTextThatIsMuchTooLongIsToldAndStaysWhereItWasPut() {
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job + "/text");
        page.evaluate("const t = document.getElementById('text'); t.value = t.value.repeat(3000);"
                + " t.dispatchEvent(new Event('input', { bubbles: true }))");
        assertThat(page.locator("#wrong")).containsText("a piece may have 1,000,000 at most");
        page.getByText("Put it in").click();
        assertThat(page).hasURL(Pattern.compile("/text$"));
        assertTrue(page.locator("#text").inputValue().length() > 1_000_000, "it is still there");
        assertEquals(1, shop.store.revisions(job).size());
    }

    @Test
    void everyPageCanBeReadWithoutScripts() {
        String job = shop.job("wall-shelf");
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setJavaScriptEnabled(false)
                .setBaseURL("http://localhost:" + shop.server.port()))) {
            Page page = context.newPage();
            String sheet = "/jobs/" + job;
            for (String path : List.of(
                    "", "/text", "/ask", "/round", "/papers", "/agreed", "/versions?left=1&right=1", "/find?q=shelf")) {
                page.navigate(sheet + path);
                assertThat(page.locator("h1").first()).isVisible();
            }
            page.navigate(sheet + "/round");
            assertThat(page.locator(".flat svg").first()).isVisible();
            assertThat(page.locator(".partlist a").first()).isVisible();
            page.navigate(sheet + "/bench");
            assertTrue(page.locator(".card h1:visible").count() > 5, "every operation stands on the page");
            for (String path :
                    List.of("/", "/new", "/rack", "/onhand", "/clients", "/settings", "/guide", "/devices", "/bench")) {
                page.navigate(path);
                assertThat(page.locator("h1").first()).isVisible();
            }
        }
    }
}
