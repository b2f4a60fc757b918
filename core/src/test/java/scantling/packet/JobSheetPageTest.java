package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class JobSheetPageTest {
    private final String html = JobSheetPage.html(Shelf.content());

    @Test
    void everySectionStandsInTheOrderOfTheWork() {
        int last = -1;
        for (String id : new String[] {"brief", "drawing", "parts", "joints", "hardware", "timber", "sums"}) {
            int at = html.indexOf("<section id=\"" + id + "\"");
            assertTrue(at > last, id);
            last = at;
        }
    }

    @Test
    void itFetchesNothingAndRunsNothing() {
        assertFalse(html.contains("<script"));
        assertFalse(html.contains("<link"));
        assertEquals(Set.of("http://www.w3.org/2000/svg"), all("\"(https?://[^\"]*)\""));
        assertTrue(all("url\\(([^)]{0,12})").stream().allMatch(url -> url.startsWith("data:font/")));
    }

    @Test
    void everyLinkLeadsSomewhere() {
        Set<String> ids = all(" id=\"([^\"]*)\"");
        Set<String> links = all("href=\"#([^\"]*)\"");
        assertTrue(links.size() > 5);
        assertTrue(ids.containsAll(links), links + " of " + ids);
    }

    @Test
    void whatTheMakerTypedIsTextAndNotMarkup() {
        assertTrue(html.contains("two studs &lt; 900 &amp; &gt; 700."));
    }

    @Test
    void figuresSayTheirOriginAndTheirPath() {
        assertTrue(html.contains("class=\"n worked\" title=\"worked out\" data-path=\"lower shelf / length\""));
        assertTrue(html.contains("class=\"n given\" title=\"given\" data-path=\"width\""));
    }

    @Test
    void aSumShowsItsLastStep() {
        assertTrue(html.contains("width 800.0 - 2 × ash 18.0 + 2 × a third of 18 6.0"));
    }

    private Set<String> all(String pattern) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = Pattern.compile(pattern).matcher(html);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }
}
