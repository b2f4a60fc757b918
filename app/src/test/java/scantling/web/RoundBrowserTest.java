package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The piece in the round: every part drawn, drawn apart, and a part that is touched leads to its sheet. */
class RoundBrowserTest extends InBrowser {
    @Test
    void aPartThatIsTouchedLeadsToItsSheet() {
        String job = shop.job("bedside-chest");
        Page page = desk();
        page.navigate("/jobs/" + job + "/round");
        Locator round = page.locator(".round");
        assumeTrue(round.isVisible(), "this browser does not draw in space");
        assertThat(round).hasAttribute("data-ready", Pattern.compile("\\d+"));
        byte[] together = page.locator("canvas").screenshot();
        page.locator(".apart input").fill("100");
        assertFalse(Arrays.equals(together, page.locator("canvas").screenshot()), "drawn apart it looks otherwise");
        page.locator(".apart input").fill("0");
        page.locator("canvas").click();
        page.waitForURL(Pattern.compile(".*/jobs/" + job + "#part-[A-Z].*"));
        assertThat(page.locator(":target")).hasCount(1);
    }
}
