package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import scantling.plan.Plan;
import scantling.shop.JobPlan;
import scantling.stock.Rack;

/** What the shop sets for itself, and that every plan follows it. */
class SettingsTest extends AtTheDesk {
    private HttpResponse<String> put(String text) {
        return desk.post("/settings", Map.of("stamp", desk.stamp("/settings"), "text", text), "Accept", "text/html");
    }

    private HttpResponse<String> line(String section, String key, String value) {
        return desk.post(
                "/settings/line",
                Map.of("stamp", desk.stamp("/settings"), "section", section, "key", key, "value", value),
                "Accept",
                "text/html");
    }

    private Plan plan(String job) {
        return ((JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow()).plan();
    }

    @Test
    void anAllowanceWrittenOnItsLineMovesTheBlanksOfEveryPlan() {
        String job = shop.job("wall-shelf");
        Plan before = plan(job);
        assertEquals(303, line("allowances", "length over finished", "60 mm").statusCode());
        assertNotEquals(before.blanks(), plan(job).blanks());
        assertEquals(
                "allowances: {length over finished: 60 mm}\n",
                shop.store.settings().text());
    }

    @Test
    void aKerfThatNamesAToolIsThatToolsCut() {
        put("tools: {thin blade: 2.2 mm}\nallowances: {kerf: thin blade}\n");
        assertEquals(
                "2.2 mm",
                shop.store
                        .settings()
                        .shop(Rack.EMPTY)
                        .allowances()
                        .kerf()
                        .value()
                        .toString());
    }

    @Test
    void aTextWithSomethingWrongIsShownWithItsLineAndTheOldOneCounts() {
        put("allowances: {kerf: 3 mm}\n");
        HttpResponse<String> answer = put("allowances: {kerf: 3 mm}\nallowance: {kerf: 2 mm}\n");
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("line 2"), answer.body());
        assertEquals("allowances: {kerf: 3 mm}\n", shop.store.settings().text());
    }

    @Test
    void theCalendarOfTheTextIsTheOneThatDaysArePlannedBy() {
        shop.job("wall-shelf");
        put("calendar: {zone: UTC, hours: 9:30-11:00}\n");
        String page = desk.get("/settings").body();
        assertTrue(page.contains("09:30 to 11:00"), page);
    }

    @Test
    void oneValueIsWrittenAndEveryOtherCharacterStays() {
        String text = "# ours\ntools: {thin blade: 2.2 mm}   # new\nrates:\n  hour: 48   # since May\n  margin: 20 %\n";
        assertEquals(text.replace("2.2 mm", "2.4 mm"), SettingsEdit.put(text, "tools", "thin blade", "2.4 mm"));
        assertEquals(text.replace("48", "52"), SettingsEdit.put(text, "rates", "hour", "52"));
        assertEquals(
                text.replace("{thin", "{dado set: 6 mm, thin"), SettingsEdit.put(text, "tools", "dado set", "6 mm"));
        assertEquals(text + "tolerances: {planed: 0.1 mm}\n", SettingsEdit.put(text, "tolerances", "planed", "0.1 mm"));
        assertEquals(
                text.replace("rates:\n", "rates:\n  waste: 10 %\n"), SettingsEdit.put(text, "rates", "waste", "10 %"));
    }

    @Test
    void whatIsNoSettingIsRefused() {
        for (List<String> wrong : List.of(
                List.of("nothing", "kerf", "3 mm"),
                List.of("tools", "x: {", "3 mm"),
                List.of("allowances", "kerf", "3 mm}\nrates: {hour: 1"))) {
            assertEquals(400, line(wrong.get(0), wrong.get(1), wrong.get(2)).statusCode(), wrong::toString);
        }
        assertEquals("", shop.store.settings().text());
    }
}
