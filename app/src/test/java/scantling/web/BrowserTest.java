package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static com.microsoft.playwright.assertions.PlaywrightAssertions.setDefaultAssertionTimeout;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.Media;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The pages in a real browser, as a maker uses them. In every test, nothing may be written to the browser's console as an
 * error and no request may leave this machine.
 */
class BrowserTest {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

    private static final List<AutoCloseable> open = new ArrayList<>();
    private static final double PATIENCE = 15_000;
    private static Browser browser;

    @TempDir
    Path folder;

    private OpenShop shop;
    private final List<BrowserContext> contexts = new ArrayList<>();
    private final List<String> errors = new ArrayList<>();
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
                                "--disable-gpu",
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
        assertEquals(List.of(), errors, "errors in the browser's console");
        assertEquals(List.of(), away, "requests that left this machine");
    }

    private Page page(int width, int height) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setHasTouch(width < 1000)
                .setBaseURL("http://localhost:" + shop.server.port()));
        contexts.add(context);
        context.setDefaultTimeout(20_000);
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

    private Page desk() {
        return page(1440, 900);
    }

    private static Locator given(Page page, String section, String figure) {
        return page.locator("#" + section + " .n.given")
                .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^" + figure.replace(".", "[.]") + "$")))
                .first();
    }

    private static void write(Page page, String value) {
        Locator field = page.locator("input.edit");
        field.fill(value);
        field.press("Enter");
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
    void theBenchGoesOnWithoutANetworkAndSendsOnceInOrder() {
        String job = shop.job("wall-shelf");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/bench");
        assertThat(page.locator(".card:visible")).hasCount(1);
        page.locator("[data-seg^='cut to length / ']").first().click();
        List<String> parts = page.locator(".card:visible [role=checkbox]").all().stream()
                .map(box -> box.getAttribute("data-subject"))
                .toList();
        page.context().setOffline(true);
        page.locator("[data-main]").click();
        assertThat(page.locator(".net")).containsText("here for the network");
        assertEquals(0, shop.store.bench(job).size());
        page.context().setOffline(false);
        assertThat(page.locator(".net")).isEmpty();
        assertEquals(
                parts,
                shop.store.bench(job).stream()
                        .map(logged -> logged.entry().subject())
                        .toList());
        page.reload();
        assertThat(page.locator("[data-cut][aria-checked=true]")).hasCount(parts.size());
        errors.removeIf(error -> error.contains("ERR_INTERNET_DISCONNECTED"));
    }

    @Test
    void aMeasurementAtTheBenchIsTypedWithGloves() {
        String job = shop.job("bedside-chest");
        Page page = page(390, 844);
        page.navigate("/jobs/" + job + "/bench");
        page.locator("[data-seg^='cut to length / ']").first().click();
        page.locator(".card:visible [data-do=measure]").click();
        for (String key : List.of("4", "4", "3", ".", "1")) {
            page.locator("[data-k='" + key + "']").click();
        }
        page.locator("[data-main]").click();
        page.waitForCondition(() -> shop.store.bench(job).size() == 1);
        assertTrue(shop.store.bench(job).get(0).entry().toString().contains("443.1"));
    }

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

    @ParameterizedTest
    @CsvSource({"1440,900", "820,1180", "390,844"})
    void pagesFitTheirScreensAndCanBeUsedByEverybody(int width, int height) {
        String job = shop.job("wall-shelf");
        Page page = page(width, height);
        for (String path : List.of("/", "/new", "/devices", "/jobs/" + job, "/jobs/" + job + "/bench")) {
            page.navigate(path);
            Object over = page.evaluate("document.documentElement.scrollWidth - innerWidth");
            assertTrue(((Number) over).intValue() <= 0, path + " is wider than its screen by " + over);
            assertEquals("", Accessible.problems(page), path);
        }
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
        assertThat(page.locator("#given")).containsText("materials / oak / thickness");
        assertTrue(shop.store.text(job).orElseThrow().text().contains("thickness: 1}"));
    }
}
