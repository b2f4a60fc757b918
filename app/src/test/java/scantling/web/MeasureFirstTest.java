package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;
import scantling.shop.Act;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;

/**
 * What the tolerances say is to be measured before it is cut, on the sheet, at the bench, and where the finding is cleared.
 * The sideboard's doors hang in an opening that four boards and a top bound.
 */
class MeasureFirstTest extends AtTheDesk {
    private static final String OPENING = "left / doors / opening / height";
    private static final Pattern CARD =
            Pattern.compile("<section class=\"card\" data-card=\"([^\"]*)\".*?</section>", Pattern.DOTALL);

    private String job;

    @BeforeEach
    void begin() {
        job = shop.job("sideboard");
    }

    private JobPlan.Planned plan() {
        return (JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow();
    }

    private List<String> cardsThatAskForIt() {
        Matcher card = CARD.matcher(desk.get("/jobs/" + job + "/bench").body());
        return card.results()
                .filter(found -> found.group().contains("data-do=\"measure\" data-name=\"" + OPENING + "\""))
                .map(found -> found.group(1).substring(0, found.group(1).indexOf(" / ")))
                .distinct()
                .toList();
    }

    @Test
    void theCardsOnWhichADoorComesToItsSizeAskForItsOpeningUntilItIsMeasured() {
        assertTrue(desk.get("/jobs/" + job).body().contains("Measure it before cutting"), "the sheet says it");
        assertEquals(List.of("final mill", "cut to length"), cardsThatAskForIt());
        shop.act(new Act.Log(job, new BenchEntry.Measured(OPENING, Length.mm("714"))));
        assertEquals(List.of(), cardsThatAskForIt());
    }

    @Test
    void whereTheFindingIsClearedMeasuringItDoesSo() {
        String note = letterOf(OPENING);
        String page = desk.get("/jobs/" + job + "/ways?note=" + note).body();
        assertTrue(page.contains("name=\"name\" value=\"" + OPENING + "\""), page);
        desk.post("/jobs/" + job + "/measured", Map.of("stamp", desk.stamp("/new"), "name", OPENING, "size", "713.2"));
        assertFalse(
                plan().plan().findings().stream()
                        .anyMatch(said -> said.sentence().startsWith(OPENING)),
                "it is cleared");
    }

    @Test
    void lengthsAreTriedOutWhenTheyAreAskedFor() {
        String address = "/jobs/" + job + "/ways?note=" + letterOf("bottom sags");
        assertFalse(desk.get(address).body().contains("tried out: the finding is gone"));
        assertTrue(desk.get(address + "&try=yes").body().contains("tried out: the finding is gone"));
    }

    private String letterOf(String sentence) {
        List<String> said =
                plan().plan().findings().stream().map(each -> each.sentence()).toList();
        for (int i = 0; i < said.size(); i++) {
            if (said.get(i).startsWith(sentence)) {
                return String.valueOf((char) ('a' + i));
            }
        }
        throw new AssertionError(said);
    }
}
