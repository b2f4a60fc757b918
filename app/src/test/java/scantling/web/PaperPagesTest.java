package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import scantling.packet.Order;
import scantling.packet.PacketSections;

class PaperPagesTest extends AtTheDesk {
    private static final Pattern LINK = Pattern.compile("href=\"(/guide[^\"#]*)");

    private String papers = "";

    @BeforeEach
    void begin() {
        papers = "/jobs/" + shop.job("wall-shelf") + "/papers";
    }

    private static String type(HttpResponse<String> answer) {
        return answer.headers().firstValue("Content-Type").orElse("");
    }

    @Test
    void thePageOffersEverySectionAndFileTheCommandDoes() {
        String page = desk.get(papers).body();
        for (String word : PacketSections.words()) {
            assertTrue(page.contains("name=\"only\" value=\"" + word + "\""), word);
        }
        for (String word : Order.FILES) {
            assertTrue(page.contains("name=\"only\" value=\"" + word + "\""), word);
        }
    }

    @Test
    void oneFileComesAsItIs() {
        HttpResponse<String> answer = desk.get(papers + "/files?only=tables&unit=inch");
        assertTrue(type(answer).startsWith("text/csv"), type(answer));
        assertTrue(answer.body().startsWith("mark,"), answer.body());
    }

    @Test
    void allThatIsSaidIsSaidInTheUnitChosen() {
        // A board of 96 in, at 25.4 mm to the inch.
        assertTrue(desk.get(papers + "/files?only=page&unit=inch").body().contains("96 x 6 in"));
        String metric = desk.get(papers + "/files?only=page&unit=mm").body();
        assertTrue(metric.contains("2438.4 x 152.4 mm"), metric);
        assertFalse(metric.contains("96 x 6 in"), metric);
    }

    @Test
    void aBrowserThatShowsAPaperFindsTheMarkItAsksFor() {
        HttpResponse<String> mark = desk.get("/favicon.ico");
        assertEquals(200, mark.statusCode());
        assertEquals("image/svg+xml", type(mark));
    }

    @Test
    void severalComeInAZip() {
        HttpResponse<String> answer = desk.get(papers + "/files?only=tables&only=parts&paper=letter");
        assertEquals("application/zip", type(answer));
        assertTrue(answer.body().startsWith("PK"));
        assertTrue(answer.body().contains("packet.pdf") && answer.body().contains("parts.csv"));
    }

    @Test
    void withABeginningThereIsACalendarAndWithoutOneItIsSaidWhatIsMissing() {
        HttpResponse<String> dated = desk.get(papers + "/files?only=calendar&from=2026-11-25T08:00");
        assertTrue(type(dated).startsWith("text/calendar"), type(dated));
        assertTrue(dated.body().startsWith("BEGIN:VCALENDAR"), dated.body());
        HttpResponse<String> undated = desk.get(papers + "/files?only=calendar", "Accept", "text/html");
        assertEquals(400, undated.statusCode());
        assertTrue(undated.body().contains("Say when the work begins"), undated.body());
    }

    @Test
    void whatIsNotOfferedIsRefused() {
        assertEquals(400, desk.get(papers + "/files?only=holes").statusCode());
        assertEquals(400, desk.get(papers + "/files?only=calendar&from=soon").statusCode());
    }

    @Test
    void everyPageOfTheGuideIsServedAndLeadsOnlyToPagesThatAre() {
        GuideBook book = new GuideBook();
        assertTrue(book.names().contains("method/time"), book.names().toString());
        assertTrue(book.names().contains("elements"), book.names().toString());
        for (String name : book.names()) {
            HttpResponse<String> page = desk.get(name.equals(GuideBook.FIRST) ? "/guide" : "/guide/" + name);
            assertEquals(200, page.statusCode(), name);
            Matcher link = LINK.matcher(page.body());
            while (link.find()) {
                assertEquals(200, desk.get(link.group(1)).statusCode(), name + " to " + link.group(1));
            }
        }
    }

    @Test
    void theGuideHoldsItsPicturesAndNoScriptOrStyleOfItsOwn() {
        String page = desk.get("/guide/first-piece").body();
        assertTrue(page.contains("<svg aria-label=\"Front\""), page);
        String text = page.substring(page.indexOf("<main"));
        for (String bad : List.of("<script", " style=", "<style", " onclick")) {
            assertFalse(text.contains(bad), bad);
        }
    }

    @Test
    void aPageThatIsNotOfTheGuideIsNotThere() {
        assertEquals(404, desk.get("/guide/method/secrets").statusCode());
        assertEquals(404, desk.get("/guide/nothing").statusCode());
    }
}
