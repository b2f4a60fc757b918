package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * The pages in a real browser, as a maker uses them. In every test, nothing may be written to the browser's console as an
 * error and no request may leave this machine.
 */
abstract class InBrowser {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

    private static final List<AutoCloseable> open = new ArrayList<>();
    private static final double PATIENCE = 60_000;
    static Browser browser;

    @TempDir
    Path folder;

    OpenShop shop;
    private final List<BrowserContext> contexts = new ArrayList<>();
    private final List<String> errors = new ArrayList<>();
    private Predicate<String> expected = error -> false;
    private final List<String> away = new ArrayList<>();

    @BeforeAll
    static void start() {
        if (!Files.isExecutable(CHROMIUM)) {
            System.out.println("The pages were not tried in a browser: " + CHROMIUM
                    + " is not there. Install it with: apt-get install chromium");
        }
        assumeTrue(Files.isExecutable(CHROMIUM), "no browser");
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        setDefaultAssertionTimeout(PATIENCE);
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--use-gl=angle",
                                "--use-angle=swiftshader",
                                "--enable-unsafe-swiftshader",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync",
                                "--no-first-run")));
        open.add(playwright);
    }

    @AfterAll
    static void stop() throws Exception {
        if (browser != null) {
            browser.close();
        }
        for (AutoCloseable each : open) {
            each.close();
        }
        open.clear();
    }

    @BeforeEach
    void begin() {
        shop = new OpenShop(folder, true);
    }

    @AfterEach
    void end() {
        contexts.forEach(BrowserContext::close);
        shop.close();
        // judged only now: a page goes on asking, and failing, until its window is closed
        errors.removeIf(expected);
        assertEquals(List.of(), errors, "errors in the browser's console");
        assertEquals(List.of(), away, "requests that left this machine");
    }

    /** Errors with one of these words in them are what this test is about. */
    final void expectErrors(String... words) {
        expected = error -> Stream.of(words).anyMatch(error::contains);
    }

    final Page page(int width, int height) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setHasTouch(width < 1000)
                .setBaseURL("http://localhost:" + shop.server.port()));
        contexts.add(context);
        context.setDefaultTimeout(PATIENCE);
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                errors.add(message.text() + " " + message.location());
            }
        });
        page.onPageError(errors::add);
        page.onRequest(request -> {
            URI to = URI.create(request.url().replace(" ", "%20"));
            List<String> here = new ArrayList<>(Hosts.ofThisMachine(true).onNetwork());
            here.add("localhost");
            if (to.getScheme().startsWith("http") && !here.contains(to.getHost())) {
                away.add(request.url());
            }
        });
        return page;
    }

    final Page desk() {
        return page(1440, 900);
    }

    static Locator given(Page page, String section, String figure) {
        return page.locator("#" + section + " .n.given")
                .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^" + figure.replace(".", "[.]") + "$")))
                .first();
    }

    static void write(Page page, String value) {
        Locator field = page.locator("input.edit");
        field.fill(value);
        field.press("Enter");
    }
}
