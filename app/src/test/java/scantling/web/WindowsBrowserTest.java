package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two windows on one job, units for each job, and the search for better saw plans while somebody looks. */
class WindowsBrowserTest extends InBrowser {
    @Test
    void whatOneWindowChangesAnotherSees() {
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job);
        page.waitForResponse(answer -> answer.url().endsWith("/watch"), () -> page.reload());
        Page other = page.context().newPage();
        other.navigate("/jobs/" + job);
        given(other, "brief", "32").click();
        write(other, "31");
        assertThat(given(page, "brief", "31")).isVisible();
        assertThat(page.locator("#said")).containsText("elsewhere");
    }

    @Test
    void whatTheDeskChangesTheBenchSeesByItself() {
        String job = shop.job("wall-shelf");
        Page bench = desk();
        bench.navigate("/jobs/" + job + "/bench");
        bench.waitForResponse(answer -> answer.url().endsWith("/bench/watch"), () -> bench.reload());
        String before = bench.locator("body").getAttribute("data-plan");
        Page desk = bench.context().newPage();
        desk.navigate("/jobs/" + job);
        given(desk, "brief", "32").click();
        write(desk, "31");
        assertThat(given(desk, "brief", "31")).isVisible();
        assertThat(bench.locator("body")).not().hasAttribute("data-plan", before);
    }

    @Test
    void theSecondOfTwoWindowsThatWriteTheTextIsToldAndSeesBoth() {
        expectErrors("409");
        String job = shop.job("wall-shelf");
        Page page = desk();
        page.navigate("/jobs/" + job + "/text");
        Page other = page.context().newPage();
        other.navigate("/jobs/" + job + "/text");
        other.locator("#text").fill(other.locator("#text").inputValue().replace("32 wide", "30 wide"));
        other.getByText("Put it in").first().click();
        page.waitForCondition(() -> shop.store.text(job).orElseThrow().text().contains("30 wide"));
        assertThat(other.locator("h1")).hasText("Wall shelf for the hall");
        page.locator("#text").fill(page.locator("#text").inputValue().replace("32 wide", "34 wide"));
        page.getByText("Put it in").first().click();
        assertThat(page.getByRole(AriaRole.ALERT)).containsText("changed elsewhere");
        assertThat(page.locator(".theirs")).containsText("30 wide");
        assertTrue(page.locator("#text").inputValue().contains("34 wide"));
    }

    @Test
    void unitsAreChosenForEachJobAndFollowOntoEveryPage() {
        String one = shop.job("wall-shelf");
        String other = shop.job("bedside-chest");
        Page page = desk();
        page.navigate("/jobs/" + one);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("mm"))
                .click();
        assertThat(page.locator("html")).hasAttribute("data-units", "mm");
        for (String path : List.of("", "/bench", "/text", "/versions?left=1&right=1", "/ask")) {
            page.navigate("/jobs/" + one + path);
            assertThat(page.locator("html")).hasAttribute("data-units", "mm");
        }
        page.navigate("/jobs/" + other);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("inch"))
                .click();
        assertThat(page.locator("html")).hasAttribute("data-units", "in");
        page.navigate("/jobs/" + one);
        assertThat(page.locator("html")).hasAttribute("data-units", "mm");
    }
}
