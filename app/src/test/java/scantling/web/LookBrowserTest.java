package scantling.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Length;
import scantling.shop.Act;
import scantling.shop.Client;
import scantling.shop.OnHand;
import scantling.shop.Supply;
import scantling.stock.Stick;

/** Every page on three screens: nothing wider than its screen, and usable by everybody. */
class LookBrowserTest extends InBrowser {
    @ParameterizedTest
    @CsvSource({"1440,900", "820,1180", "390,844"})
    void pagesFitTheirScreensAndCanBeUsedByEverybody(int width, int height) {
        String job = shop.job("wall-shelf");
        stock();
        Page page = page(width, height);
        List<String> wrong = new ArrayList<>();
        String sheet = "/jobs/" + job;
        for (String path : List.of(
                "/",
                "/new",
                "/devices",
                "/settings",
                "/rack",
                "/onhand",
                "/clients",
                "/clients/a-weaver",
                "/bench",
                sheet,
                sheet + "/text",
                sheet + "/ask",
                sheet + "/agreed",
                sheet + "/papers",
                sheet + "/versions?left=1&right=1",
                sheet + "/round",
                waysOut(page),
                sheet + "/bench")) {
            page.navigate(path);
            Object over = page.evaluate("document.documentElement.scrollWidth - innerWidth");
            if (((Number) over).intValue() > 0) {
                wrong.add(path + " is wider than its screen by " + over);
            }
            Object broken = page.evaluate("[...document.querySelectorAll('td, th')].filter(cell =>"
                    + " cell.clientWidth > 0 && cell.clientWidth < 36 && /\\S{6}/.test(cell.innerText))"
                    + ".map(cell => cell.innerText).join('; ')");
            if (!broken.toString().isEmpty()) {
                wrong.add(path + " breaks words letter by letter: " + broken);
            }
            String problems = Accessible.problems(page);
            if (!problems.isEmpty()) {
                wrong.add(path + ": " + problems);
            }
        }
        assertEquals(List.of(), wrong);
    }

    /** Something on every page of the shop. */
    private void stock() {
        shop.act(new Act.AddClient(new Client("", "A. Weaver", "by letter", "no smell")));
        shop.act(new Act.PutSupply(new Supply(
                "",
                Supply.Kind.FINISH,
                "dewaxed shellac",
                new BigDecimal("0.75"),
                "litres",
                Optional.of(2000L),
                "cupboard")));
        shop.act(new Act.PutOnRack(new OnHand(
                new Stick("K1", "white oak", Length.mm(20), Length.mm(40), Length.mm(2400)),
                Optional.of(900L),
                "left")));
    }

    /** The page that says what would clear the first finding of a piece that has some. */
    private String waysOut(Page page) {
        page.navigate("/jobs/" + shop.job("bedside-chest"));
        return String.valueOf(page.locator("a[href*='/ways?note=']").first().getAttribute("href"));
    }

    /** In inches figures are longest; each card is shown in turn. */
    @ParameterizedTest
    @CsvSource({"1440,900", "820,1180", "390,844"})
    void nothingOnACardAtTheBenchIsCutOff(int width, int height) {
        Page page = page(width, height);
        page.navigate("/jobs/" + shop.job("bedside-chest") + "/bench");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("inch"))
                .click();
        assertThat(page.locator("html.js")).hasAttribute("data-units", "in");
        Object cut = page.evaluate("""
            () => {
              const wrong = [], cards = document.querySelector('.cards');
              for (const step of document.querySelectorAll('.band [data-seg] button')) {
                step.click();
                const edge = cards.getBoundingClientRect().right + 1;
                const over = [...cards.querySelectorAll('.card:not([hidden]) *')].filter(e => !e.closest('svg') && e.getBoundingClientRect().right > edge);
                if (over.length) wrong.push(step.getAttribute('aria-label') + ': ' + over[0].outerHTML.slice(0, 90));
              }
              return wrong.join('\\n');
            }
            """);
        assertEquals("", cut);
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
