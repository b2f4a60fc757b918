package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Finish and price as a maker asks for them. */
class PriceAndFinishTest extends AtTheConsole {
    private String written(String name, String text) throws IOException {
        return file(name, text).toString();
    }

    private String started() {
        return started("wall-shelf.yaml");
    }

    private String started(String name) {
        Path file = shop.resolve(name);
        assertEquals(Exit.WELL, scantling("new", file.toString()).code());
        return file.toString();
    }

    @Test
    void theFinishTellsFacesCoatsAndCautions() {
        Answer answer = scantling("finish", started());
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        assertTrue(answer.out().contains("hardwax oil, coat 2 of 2"), answer::out);
        assertTrue(answer.out().contains("heat up by themselves"), answer::out);
        assertTrue(answer.out().contains("ft2"), answer::out);
    }

    @Test
    void hoursComeFromTheRouteClassByClass() {
        Answer estimate = scantling("price", started());
        assertEquals(Exit.WELL, estimate.code(), estimate::toString);
        for (String trade : List.of("milling", "joinery", "glue-up", "finishing", "delivery")) {
            assertTrue(estimate.out().contains("  " + trade + ", "), estimate::out);
        }
        assertFalse(estimate.out().contains("holds no labour"), estimate::out);
    }

    @Test
    void aPriceWithAHoleIsToldAndNotQuoted() throws IOException {
        String piece =
                written("rare.yaml", Files.readString(Path.of(started())).replace("white oak", "shagbark hickory"));
        Answer estimate = scantling("price", piece);
        assertTrue(estimate.out().contains("No price is known for shagbark hickory"), estimate::toString);
        Answer quote = scantling("price", piece, "--quote");
        assertEquals(Exit.WRONG, quote.code());
        assertTrue(quote.err().contains("No quote yet"), quote::err);
    }

    @Test
    void theCostSheetIsAPageWithWoodsAndVersionsSideBySide() throws IOException {
        String piece = started();
        String other = written("ash.yaml", Files.readString(Path.of(piece)).replace("white oak", "white ash"));
        String page = shop.resolve("costs.html").toString();
        Answer answer = scantling("price", piece, "--beside", other, "--out", page);
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        String html = Files.readString(Path.of(page));
        for (String words :
                List.of("For the maker only", "Choosing the timber", "black walnut", "Side by side", "ash.yaml")) {
            assertTrue(html.contains(words), words);
        }
    }

    @Test
    void settingsOfTheShopReachThePrice() throws IOException {
        String settings = written("shop.yaml", "rates: {currency: GBP, hour: 61}\nset-ups: {rip: 30 min}\n");
        Answer answer = scantling("price", started(), "--settings", settings);
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        assertTrue(answer.out().contains("GBP"), answer::out);
        Answer wrong = scantling("price", started("b.yaml"), "--settings", written("bad.yaml", "rates: {hour: -1}\n"));
        assertEquals(Exit.WRONG, wrong.code());
        assertTrue(wrong.err().contains("bad.yaml:1:15"), wrong::err);
    }

    @Test
    void aQuoteShowsThePriceAndNothingBehindIt() throws IOException {
        String rates = written("rates.yaml", "work: {making: 6 to 9 h}\n");
        Answer quote = scantling("price", started(), "--rates", rates, "--quote");
        assertEquals(Exit.WELL, quote.code(), quote::toString);
        assertTrue(quote.out().contains("for Marta Quillfeather"), quote::out);
        assertFalse(quote.out().contains("margin"), quote::out);
        String page = shop.resolve("quote.html").toString();
        String day = "2028-01-31";
        assertEquals(
                Exit.WELL,
                scantling("price", started("again.yaml"), "--rates", rates, "--quote", "--out", page, "--on", day)
                        .code());
        assertTrue(Files.readString(Path.of(page)).contains("2028-03-01"));
    }

    @Test
    void versionsAndWoodsStandSideBySide() throws IOException {
        String piece = started();
        String other = written("ash.yaml", Files.readString(Path.of(piece)).replace("white oak", "white ash"));
        Answer beside = scantling("price", piece, "--beside", other);
        assertEquals(Exit.WELL, beside.code(), beside::toString);
        assertTrue(beside.out().contains("weight, kg"), beside::out);
        Answer changed =
                scantling("price", piece, "--if", "materials / oak / solid=white ash", "--if", "finish / oil=oil x 2");
        assertEquals(Exit.WELL, changed.code(), changed::toString);
        assertTrue(changed.out().contains("white ash"), changed::out);
        Answer timber = scantling("price", piece, "--timber");
        assertTrue(timber.out().contains("black walnut"), timber::out);
    }

    @Test
    void ratesThatCannotBeAreRefusedWithLineAndColumn() throws IOException {
        Answer answer =
                scantling("price", started(), "--rates", written("bad.yaml", "hour: 0\nprices: {oak: 4 USD}\n"));
        assertEquals(Exit.WRONG, answer.code());
        assertTrue(answer.err().contains("bad.yaml:1:7"), answer::err);
        assertTrue(answer.err().contains("all else in EUR"), answer::err);
        assertTrue(answer.err().contains("2 things are wrong"), answer::err);
    }

    @Test
    void aJobIsHeldAgainstItsEstimate() throws IOException {
        String rates = written("rates.yaml", "work: {making: 6 h}\n");
        String actual =
                written("took.yaml", "hours: {milling: 9 h}\noperations: {wrap / Wall shelf for the hall: 30 min}\n");
        Answer answer = scantling("price", started(), "--rates", rates, "--actual", actual);
        assertEquals(Exit.WELL, answer.code(), answer::toString);
        assertTrue(answer.out().contains("milling took 9.0 h"), answer::out);
        assertTrue(answer.out().contains("delivery, 1 of 4 logged"), answer::out);
        assertTrue(answer.out().contains("1 logged time behind it"), answer::out);
    }
}
