package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Letting a phone in by the code on the desk. */
class DoorBrowserTest extends InBrowser {
    @Test
    void aPhoneIsLetInByTheCodeOnTheDesk() {
        List<String> network = Hosts.ofThisMachine(true).onNetwork();
        assumeTrue(!network.isEmpty(), "this machine is on no network");
        Page page = desk();
        page.navigate("/devices");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Show a code"))
                .click();
        assertThat(page.locator("svg.scan")).isVisible();
        String code = page.locator(".code").textContent();
        BrowserContext phone = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setBaseURL("http://%s:%d".formatted(network.get(0), shop.server.port())));
        Page door = phone.newPage();
        door.navigate("/");
        assertThat(door.locator("h1")).hasText("Pair this device");
        door.getByLabel("Code").fill("22222-22222");
        door.getByRole(AriaRole.BUTTON).click();
        assertThat(door.getByRole(AriaRole.ALERT)).containsText("not good");
        door.getByLabel("Code").fill(code);
        door.getByRole(AriaRole.BUTTON).click();
        assertThat(door.locator("h1")).hasText("At the bench");
        phone.close();
    }
}
