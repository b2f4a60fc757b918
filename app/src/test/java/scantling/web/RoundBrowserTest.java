package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The piece in the round: every part drawn, drawn apart, and a part that is touched leads to its sheet. */
class RoundBrowserTest extends InBrowser {
    /** Either the parts in space, or the flat drawing that stands in for them. */
    private static void waitUntilDrawn(Page page) {
        Locator round = page.locator(".round");
        page.waitForCondition(() -> round.getAttribute("data-ready") != null || round.isHidden());
        assumeTrue(round.isVisible(), "this browser does not draw in space");
        assertThat(round).hasAttribute("data-ready", Pattern.compile("\\d+"));
    }

    /** What is drawn is on the screen with the next picture or the one after. */
    private static void waitUntilItLooksOtherwise(Page page, byte[] before) {
        page.waitForCondition(
                () -> !Arrays.equals(before, page.locator("canvas").screenshot()));
    }

    @Test
    void aPartThatIsTouchedLeadsToItsSheet() {
        String job = shop.job("bedside-chest");
        Page page = desk();
        page.navigate("/jobs/" + job + "/round");
        waitUntilDrawn(page);
        byte[] together = page.locator("canvas").screenshot();
        page.locator(".apart input").fill("100");
        waitUntilItLooksOtherwise(page, together);
        page.locator(".apart input").fill("0");
        page.locator("canvas").click();
        page.waitForURL(Pattern.compile(".*/jobs/" + job + "#part-[A-Z].*"));
        assertThat(page.locator(":target")).hasCount(1);
    }

    @Test
    void byKeyboardAPartIsFoundInTheListShownAndLeadsToItsSheet() {
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job + "/round");
        waitUntilDrawn(page);
        page.locator(".apart input").focus();
        byte[] together = page.locator("canvas").screenshot();
        page.keyboard().press("End");
        waitUntilItLooksOtherwise(page, together);
        page.keyboard().press("Tab");
        assertThat(page.locator(":focus")).hasAttribute("data-path", Pattern.compile(".+"));
        String path = page.locator(":focus").getAttribute("data-path");
        assertThat(page.locator(".part")).containsText(path);
        page.keyboard().press("Enter");
        page.waitForURL(Pattern.compile(".*/jobs/" + job + "#part-[A-Z].*"));
        assertThat(page.locator(":target")).containsText(path);
    }
}
