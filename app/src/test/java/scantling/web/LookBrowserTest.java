package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every page on three screens: nothing wider than its screen, and usable by everybody. */
class LookBrowserTest extends InBrowser {
    @ParameterizedTest
    @CsvSource({"1440,900", "820,1180", "390,844"})
    void pagesFitTheirScreensAndCanBeUsedByEverybody(int width, int height) {
        String job = shop.job("wall-shelf");
        Page page = page(width, height);
        List<String> wrong = new ArrayList<>();
        String sheet = "/jobs/" + job;
        for (String path : List.of(
                "/",
                "/new",
                "/devices",
                "/settings",
                "/rack",
                "/bench",
                sheet,
                sheet + "/text",
                sheet + "/ask",
                sheet + "/versions?left=1&right=1",
                sheet + "/round",
                waysOut(page),
                sheet + "/bench")) {
            page.navigate(path);
            Object over = page.evaluate("document.documentElement.scrollWidth - innerWidth");
            if (((Number) over).intValue() > 0) {
                wrong.add(path + " is wider than its screen by " + over);
            }
            String problems = Accessible.problems(page);
            if (!problems.isEmpty()) {
                wrong.add(path + ": " + problems);
            }
        }
        assertEquals(List.of(), wrong);
    }

    /** The page that says what would clear the first finding of a piece that has some. */
    private String waysOut(Page page) {
        page.navigate("/jobs/" + shop.job("bedside-chest"));
        return String.valueOf(page.locator("a[href*='/ways?note=']").first().getAttribute("href"));
    }

    @Test
    void whatAFingerTouchesAtTheBenchIsLargeEnough() {
        Page page = page(390, 844);
        page.navigate("/jobs/" + shop.job("wall-shelf") + "/bench");
        page.locator("[data-seg^='cut to length / ']").first().click();
        Object small = page.evaluate("""
            [...document.querySelectorAll('button,input,select,a')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.5)
              .map(e => e.outerHTML.slice(0, 90)).join(' | ')\
            """);
        assertEquals("", small);
    }
}
