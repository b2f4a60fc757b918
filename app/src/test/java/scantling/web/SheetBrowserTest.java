package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.Media;
import java.util.Map;
import org.junit.jupiter.api.Test;
import scantling.shop.Act;
import scantling.shop.BenchEntry;

/** The job sheet: editing, explaining, measuring, taking back, finding, printing, and without scripts. */
class SheetBrowserTest extends InBrowser {
    @Test
    void aNumberThatIsFoundOpensOnTheSheetAndTakesAMeasurement() {
        String job = shop.job("bedside-chest");
        Page page = desk();
        page.navigate("/jobs/" + job);
        page.locator("#find").fill("drawer 1 opening height");
        page.locator("#found a[data-path]").first().click();
        Locator slip = page.locator(".slip");
        assertThat(slip).isInViewport();
        assertTrue(slip.boundingBox().width > 600, "it has the width of the sheet");
        slip.locator("input[name=size]").fill("133.4");
        page.keyboard().press("Enter");
        assertThat(page.locator("#said")).containsText("measured: 133.4 mm");
    }

    @Test
    void theFirstFiveMinutesOfANewcomer() {
        Page page = desk();
        page.navigate("/");
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Start a job"))
                .click();
        page.getByLabel("a wall shelf").check();
        page.getByLabel("What it is called").fill("My first shelf");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Begin"))
                .click();
        assertThat(page.locator("h1")).hasText("Wall shelf for the hall");
        assertThat(page.locator("#parts")).containsText("left side");
        given(page, "brief", "32").click();
        write(page, "30");
        assertThat(page.locator("#brief .lead")).containsText("30 wide");
        assertThat(page.locator("#said")).containsText("size / width 30 in place of 32");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("mm"))
                .click();
        assertThat(page.locator("#brief .lead")).containsText("762.0 wide");
        page.navigate("/");
        assertThat(page.locator(".jobs")).containsText("My first shelf");
    }

    @Test
    void aNumberIsChangedExplainedMeasuredAndTakenBack() {
        String job = shop.job("bedside-chest");
        String before = shop.store.text(job).orElseThrow().text();
        Page page = desk();
        page.navigate("/jobs/" + job);
        given(page, "brief", "500.0").click();
        page.locator("input.edit").press("Escape");
        assertThat(page.locator("input.edit")).hasCount(0);
        given(page, "brief", "500.0").click();
        write(page, "520");
        assertThat(given(page, "brief", "520.0")).isVisible();
        Locator length = page.locator("#parts .parts .n.worked[data-path='low / front rail / length']");
        length.click();
        Locator sum = page.locator(".sum[data-name='low / front rail / length']");
        assertThat(sum).containsText("=");
        sum.locator("input[name=size]").fill("443.1");
        assertThat(sum.locator(".would")).not().isEmpty();
        sum.getByText("Put it in").click();
        assertThat(page.locator("#parts .n.measured").first()).containsText("443.1");
        page.locator("#said").getByText("Take it back").click();
        assertThat(page.locator("#parts .n.measured")).hasCount(0);
        page.locator("#versions tr", new Page.LocatorOptions().setHasText("520 in place of 500"))
                .getByText("Take it back")
                .click();
        assertThat(given(page, "brief", "500.0")).isVisible();
        assertEquals(before, shop.store.text(job).orElseThrow().text());
    }

    @Test
    void aValueThatCannotStandIsToldAndStays() {
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job);
        given(page, "brief", "32").click();
        write(page, "wide");
        assertThat(page.locator("#said.no")).containsText("line 5");
        assertThat(given(page, "brief", "32")).isVisible();
    }

    @Test
    void aQuestionIsAnsweredAndTheRowShown() {
        Page page = desk();
        page.navigate("/jobs/" + shop.job("bedside-chest"));
        page.getByLabel("Find on the sheet").fill("where is the low front rail");
        page.locator(".found a").first().click();
        assertThat(page.locator("tr.shown")).hasCount(1);
    }

    @Test
    void onPaperTheSheetIsBlackAndHoldsNoControls() {
        Page page = desk();
        page.navigate("/jobs/" + shop.job("wall-shelf"));
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(page.locator("header.strip")).isHidden();
        assertThat(page.locator(".route")).isHidden();
        assertEquals("rgb(0, 0, 0)", page.locator("h1").evaluate("h => getComputedStyle(h).color"));
        assertTrue(page.pdf().length > 10_000);
    }

    @Test
    void withoutScriptsASheetCanBeReadAndChanged() {
        String job = shop.job("wall-shelf");
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setJavaScriptEnabled(false)
                .setBaseURL("http://localhost:" + shop.server.port()));
        Page page = context.newPage();
        page.navigate("/jobs/" + job);
        assertThat(page.locator("#parts")).containsText("left side");
        page.locator("#given a", new Page.LocatorOptions().setHasText("3/4"))
                .first()
                .click();
        page.getByLabel("It is").fill("1");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Put it in"))
                .click();
        page.waitForCondition(() -> shop.store.text(job).orElseThrow().text().contains("thickness: 1}"));
        assertThat(page.locator("#given")).containsText("materials / oak / thickness");
    }

    @Test
    void aChangeToWhatIsCutShowsItsCostOnTheSheetAndWaitsForAYes() {
        String job = shop.job("bedside-chest");
        shop.act(new Act.Log(job, new BenchEntry.Cut("low / front rail", Map.of())));
        Page page = desk();
        page.navigate("/jobs/" + job);
        given(page, "brief", "500.0").click();
        write(page, "560");
        assertThat(page.locator("#said")).containsText("low / front rail is cut");
        assertThat(page.locator("#said")).containsText("bench time is lost");
        assertThat(given(page, "brief", "500.0")).isVisible();
        page.getByText("Change it all the same").click();
        assertThat(given(page, "brief", "560.0")).isVisible();
    }

    @Test
    void aSheetIsReadAndChangedByKeyboardAlone() {
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job);
        page.keyboard().press("Tab");
        assertThat(page.locator(":focus")).hasText("To the sheet");
        page.keyboard().press("Enter");
        given(page, "brief", "32").focus();
        page.keyboard().press("Enter");
        assertThat(page.locator("input.edit")).isFocused();
        page.keyboard().press("Control+A");
        page.keyboard().type("30");
        page.keyboard().press("Enter");
        assertThat(given(page, "brief", "30")).isVisible();
        page.locator("#parts .n.worked").first().focus();
        page.keyboard().press("Enter");
        assertThat(page.locator(".sum input[name=size]")).isFocused();
        page.keyboard().press("Escape");
        assertThat(page.locator(".sum")).hasCount(0);
    }
}
