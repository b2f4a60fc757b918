package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions;
import com.microsoft.playwright.assertions.LocatorAssertions.HasAttributeOptions;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The search for better saw plans, as an open sheet shows it. */
class SearchBrowserTest extends InBrowser {
    private static final double LONG = 300_000;

    /** Sixty panels of unlike sizes: the search soon finds plans that are easier to cut, and never proves one to be cheapest. */
    private static String panels() {
        return IntStream.range(0, 60)
                .mapToObj(i -> "  - loose: {name: panel %d, of: ply, length: %d, width: %d, at: {up: %d}}%n"
                        .formatted(i + 1, 400 + 7 * (i * 37 % 143), 150 + 7 * (i * 53 % 78), i * 150))
                .collect(Collectors.joining("", """
                    piece: Panels for fitting out a room
                    size: 2400 wide, 1200 deep, 9000 high
                    unit: mm
                    materials:
                      ply: {sheet: birch plywood, thickness: 18}
                    build:
                    """, ""));
    }

    private static ContainsTextOptions patient() {
        return new ContainsTextOptions().setTimeout(LONG);
    }

    @Test
    void aLongSearchTellsItsBoundSendsBetterPlansAndIsStoppedAndTakenUpAgain() {
        String job = shop.job("Panels", panels());
        Page page = desk();
        // as the page comes, before it can hear of anything better
        page.addInitScript("addEventListener('DOMContentLoaded',"
                + " () => { window.atFirst = document.getElementById('timber').innerText; })");
        page.navigate("/jobs/" + job);
        String before = String.valueOf(page.evaluate("atFirst"));
        Locator state = page.locator("#saw-state");
        assertThat(state)
                .containsText(
                        Pattern.compile("best possible is at most \\d+ % cheaper. Looking for better plans"),
                        patient());
        assertThat(page.locator("#saw-again")).isHidden();
        // the search goes on while the page listens, and what it finds comes to the page by itself
        assertThat(page.locator("#timber")).not().containsText(before, new ContainsTextOptions().setTimeout(LONG));
        assertThat(page.locator("#saw-share .gone"))
                .not()
                .hasAttribute("width", "0", new HasAttributeOptions().setTimeout(LONG));
        assertTrue(page.locator("#said").innerText().isBlank(), "a better saw plan is no news to be told");
        page.getByText("Stop looking").click();
        assertThat(state).containsText("Not looking any further", patient());
        assertThat(page.locator("#saw-stop")).isHidden();
        page.reload();
        assertThat(state).containsText("Not looking any further", patient());
        page.getByText("Look on").click();
        assertThat(state).containsText("Looking for better plans", patient());
        page.getByText("Stop looking").click();
        assertThat(state).containsText("Not looking any further", patient());
    }

    @Test
    void whereNothingCanBeBetterThereIsNothingToStop() {
        Page page = desk();
        page.navigate("/jobs/" + shop.job("wall-shelf"));
        assertThat(page.locator("#saw-state")).containsText("No plan can cost less", patient());
        assertThat(page.getByText("Stop looking")).isHidden();
        assertThat(page.getByText("Look on")).isHidden();
    }
}
