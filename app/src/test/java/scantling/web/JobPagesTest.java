package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The job sheet as a browser without scripts reads it and as one with scripts changes it. */
class JobPagesTest extends AtTheDesk {
    private static final String BOX = """
        piece: Tray   # for the hall
        unit: mm
        size: 400 wide, 300 deep, 80 high
        materials:
          ply: {sheet: birch plywood, thickness: 9}
        build:
          - case: {of: ply}   # plain
        """;

    private String job;

    @BeforeEach
    void begin() {
        job = "/jobs/" + shop.job("Tray", BOX);
    }

    private String sheet() {
        return desk.get(job, "Accept", "text/html").body();
    }

    private String id() {
        return job.substring("/jobs/".length());
    }

    private String attribute(String name) {
        return sheet().replaceAll("(?s).*" + name + "=\"([^\"]*)\".*", "$1");
    }

    private HttpResponse<String> change(String what, String... fields) {
        Map<String, String> all = new HashMap<>(Map.of(
                "stamp",
                desk.stamp(job),
                "version",
                attribute("data-version"),
                "revision",
                attribute("data-revision")));
        for (int i = 0; i < fields.length; i += 2) {
            all.put(fields[i], fields[i + 1]);
        }
        return desk.post(job + "/" + what, all, "HX-Request", "true");
    }

    private String text() {
        return shop.store.text(id()).orElseThrow().text();
    }

    private String at(String words) {
        return Integer.toString(BOX.indexOf(words));
    }

    @Test
    void aSheetReadsFromTopToBottomInOrderOfWork() {
        String page = sheet();
        int last = -1;
        for (String section : new String[] {"brief", "drawing", "parts", "joints", "timber", "given", "versions"}) {
            int here = page.indexOf("<section id=\"" + section + "\"");
            assertTrue(here > last, section);
            last = here;
        }
    }

    @Test
    void aGivenNumberIsChangedWhereItStandsAndNothingElse() {
        HttpResponse<String> answer = change("given", "at", at("400"), "value", "450");
        assertEquals(200, answer.statusCode());
        assertEquals(BOX.replace("400 wide", "450 wide"), text());
        assertTrue(answer.body().contains("<sheet-leaf id=\"leaf-parts\" hx-swap-oob=\"true\">"), answer.body());
        assertTrue(answer.body().contains("450.0"));
        assertFalse(answer.body().contains("<section id=\"joints\" hx-swap-oob"), "joints did not change");
    }

    @Test
    void aValueThatCannotStandIsRefusedWithItsPlaceAndNothingIsWritten() {
        HttpResponse<String> answer = change("given", "at", at("400"), "value", "wide enough");
        assertEquals(BOX, text());
        assertTrue(answer.body().contains("line 3"), answer.body());
    }

    @Test
    void aNumberTellsItsSumAndTakesAMeasurement() {
        String name = "bottom / length";
        String slip = desk.get(job + "/number?name=" + OpenShop.coded(name), "HX-Request", "true")
                .body();
        assertTrue(slip.contains("thickness"), slip);
        change("measured", "name", name, "size", "391.1");
        String measured = desk.get(job + "/number?name=" + OpenShop.coded(name), "HX-Request", "true")
                .body();
        assertTrue(measured.contains("391.1") && measured.contains("392.0"), measured);
        change("unmeasured", "name", name);
        assertEquals(
                slip,
                desk.get(job + "/number?name=" + OpenShop.coded(name), "HX-Request", "true")
                        .body());
    }

    @Test
    void aMeasuredSizeThePieceCannotHaveIsRefusedAndNothingIsWritten() {
        String thickness = "left side / thickness";
        for (String size : List.of("900", "99999999999 mm")) {
            HttpResponse<String> answer = change("measured", "name", thickness, "size", size);
            assertTrue(
                    answer.body().contains("Nothing is left of bottom")
                            || answer.body().contains("absurdly long"),
                    answer.body());
            assertTrue(answer.body().contains("Nothing was written down"), answer.body());
        }
        assertEquals(200, desk.get(job).statusCode());
        assertEquals(200, change("measured", "name", thickness, "size", "17.6").statusCode());
    }

    @Test
    void twoWindowsThatChangeDifferentValuesBothHaveTheirWay() {
        Map<String, String> old = new HashMap<>(Map.of(
                "stamp", desk.stamp(job), "version", "", "revision", attribute("data-revision"), "at", at("300")));
        change("given", "at", at("400"), "value", "450");
        old.put("value", "320");
        desk.post(job + "/given", old, "HX-Request", "true");
        assertEquals(BOX.replace("400 wide, 300 deep", "450 wide, 320 deep"), text());
    }

    @Test
    void theSecondOfTwoWindowsThatChangeTheSameValueIsToldAndSeesBoth() {
        Map<String, String> old = new HashMap<>(Map.of(
                "stamp", desk.stamp(job), "version", "", "revision", attribute("data-revision"), "at", at("400")));
        change("given", "at", at("400"), "value", "450");
        old.put("value", "460");
        String told = desk.post(job + "/given", old, "HX-Request", "true").body();
        assertEquals(BOX.replace("400 wide", "450 wide"), text());
        assertTrue(told.contains("450") && told.contains("460"), told);
    }

    @Test
    void hostileWordsAreShownAsText() {
        change("given", "at", at("Tray"), "value", "<script>alert(1)</script>");
        assertFalse(sheet().contains("<script>alert"));
        assertTrue(sheet().contains("&lt;script&gt;alert"));
    }

    @Test
    void aQuestionFindsThePartItMeans() {
        String found = desk.get(job + "/find?q=" + OpenShop.coded("where is the bottom"), "HX-Request", "true")
                .body();
        assertTrue(found.contains("bottom") && found.contains("cut from"), found);
        String nothing = desk.get(job + "/find?q=" + OpenShop.coded("where is the"), "HX-Request", "true")
                .body();
        assertTrue(nothing.contains("Nothing here is called that"), nothing);
    }

    @Test
    void unitsAreChosenForEachJob() {
        desk.post(job + "/units", Map.of("stamp", desk.stamp(job), "unit", "in"));
        assertTrue(sheet().contains("15 3/4"));
        String other = "/jobs/" + shop.job("Other tray", BOX);
        assertFalse(desk.get(other, "Accept", "text/html").body().contains("15 3/4"));
    }

    @Test
    void thePacketIsPaper() {
        HttpResponse<String> pdf = desk.get(job + "/packet.pdf");
        assertTrue(pdf.body().startsWith("%PDF-"));
    }
}
