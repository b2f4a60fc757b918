package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import io.javalin.util.JavalinException;
import java.time.Clock;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import scantling.shop.Act;

/** Pages that stay open while the server is gone for a while, and afterwards. */
class RestartBrowserTest extends InBrowser {
    private static final int TRIES = 100;
    private static final String GONE = "The shop does not answer";

    /** What a browser says of a server that is not there. */
    private void expectRefusals() {
        expectErrors(
                "ERR_CONNECTION_REFUSED",
                "ERR_CONNECTION_RESET",
                "ERR_EMPTY_RESPONSE",
                "ERR_INCOMPLETE_CHUNKED_ENCODING",
                "htmx:");
    }

    /** On the same port, as soon as nobody else has it: a page that asks and asks may hold it for a moment. */
    private WebServer startedAnew(int port) {
        for (int more = TRIES; ; more--) {
            try {
                return WebServer.start(shop.store, new WebServer.Options(port, true), Clock.systemUTC());
            } catch (JavalinException taken) {
                if (more == 0) {
                    throw taken;
                }
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(200));
            }
        }
    }

    @Test
    void aSheetLearnsWhatChangedWhileItWasOutOfTouch() {
        String job = shop.job("wall-shelf");
        int port = shop.server.port();
        expectRefusals();
        Page page = desk();
        page.navigate("/jobs/" + job);
        assertThat(page.locator("#brief .n.given").first()).hasText("32");
        shop.server.close();
        assertThat(page.locator("#said")).containsText(GONE);
        String text = shop.store.text(job).orElseThrow().text();
        shop.act(new Act.EditText(job, 1, text.replace("32 wide", "35 wide"), ""));
        WebServer again = startedAnew(port);
        try {
            assertThat(page.locator("#brief .n.given").first()).hasText("35");
        } finally {
            again.close();
        }
    }

    @Test
    void aSheetTellsThatTheShopIsGoneAndIsGoodForMoreWhenItIsBack() {
        String job = shop.job("wall-shelf");
        int port = shop.server.port();
        expectRefusals();
        Page page = desk();
        page.navigate("/jobs/" + job);
        Locator width = page.locator("#brief .n.given").first();
        assertThat(width).hasText("32");
        shop.server.close();
        assertThat(page.locator("#said")).containsText(GONE);
        WebServer again = startedAnew(port);
        try {
            assertThat(page.locator("#said")).not().containsText(GONE);
            width.click();
            page.locator("input.edit").fill("33");
            page.keyboard().press("Enter");
            assertThat(page.locator("#brief .n.given").first()).hasText("33");
            assertTrue(shop.store.text(job).orElseThrow().text().contains("33 wide"));
        } finally {
            again.close();
        }
    }

    @Test
    void aTextWrittenMeanwhileIsKeptAndPutIn() {
        String job = shop.job("wall-shelf");
        int port = shop.server.port();
        expectRefusals();
        Page page = desk();
        page.navigate("/jobs/" + job + "/text");
        Locator text = page.locator("#text");
        shop.server.close();
        text.fill(text.inputValue().replace("32 wide", "34 wide"));
        assertThat(page.locator("#wrong")).containsText("does not answer just now");
        WebServer again = startedAnew(port);
        try {
            page.getByText("Put it in").click();
            assertThat(page.locator("#brief .n.given").first()).hasText("34");
        } finally {
            again.close();
        }
    }
}
