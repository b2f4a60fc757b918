package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.construct.Part;
import scantling.shop.JobPlan;

/** The short forms on the pieces that come with the shop: each serves the usual wishes, and the text says what was asked. */
class AskStartersTest extends AtTheDesk {
    private String send(String job, String what, String... fields) {
        return post("/jobs/" + job + "/ask/" + what, fields).body();
    }

    private String text(String job) {
        return shop.store.text(job).orElseThrow().text();
    }

    private List<String> parts(String job) {
        return ((JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow())
                .plan().assembly().parts().stream().map(Part::path).toList();
    }

    private String place(String job, String words) {
        return TextAsk.places(text(job)).stream()
                .filter(place -> place.words().equals(words))
                .findFirst()
                .map(place -> Integer.toString(place.at()))
                .orElseThrow(() -> new AssertionError(words + " among " + TextAsk.places(text(job))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wall-shelf    | the whole piece | rows    | 2 equal          | oak | rows: {sizes: 2 equal, divider:"
                        + " oak}",
                "wall-shelf    | the whole piece | columns | 10, rest         | oak | columns: {sizes: [10, rest],"
                        + " divider: oak}",
                "bookcase      | upper           | columns | 1 share, 2 shares| oak | columns: {sizes: [1 share, 2"
                        + " shares], divider: oak}",
                "sideboard     | left            | columns | 2                |     | columns: {sizes: 2 equal}",
                "kitchen       | sink            | rows    | 200, rest        | ply | rows: {sizes: [200, rest],"
                        + " divider: ply}"
            })
    void anOpeningIsSplitAsAsked(
            String starter, String place, String way, String sizes, String divider, String written) {
        String job = shop.job(starter);
        int before = parts(job).size();
        String told = send(
                job,
                "split",
                "place",
                place(job, place),
                "way",
                way,
                "sizes",
                sizes,
                "divider",
                divider == null ? "" : divider);
        assertTrue(text(job).contains(written), told);
        assertEquals(divider == null ? before : before + 1, parts(job).size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sideboard     | core | 20 | 10 |     | - top: {of: core, overhang: {front: 20, ends: 10}}",
                "sideboard     | oak  | 15 | 15 | oak | lipped: {with: oak}",
                "bookcase      | oak  | 10 | 10 |     | - top: {of: oak, overhang: {front: 10, ends: 10}}",
                "dining-table  | oak  | 70 | 160|     | inset: {front: 70, ends: 160}"
            })
    void aTopIsChangedOrAdded(String starter, String of, String front, String ends, String lipping, String written) {
        String job = shop.job(starter);
        String told = send(
                job,
                "top",
                "of",
                of,
                "front",
                front,
                "back",
                "",
                "ends",
                ends,
                "lipping",
                lipping == null ? "" : lipping);
        assertTrue(text(job).contains(written), told + text(job));
    }

    @Test
    void aTopWrittenOverSeveralLinesKeepsItsOtherLinesAndRemarks() {
        String job = shop.job("bedside-chest");
        String before = text(job);
        send(job, "top", "of", "core", "front", "14", "back", "", "ends", "8", "lipping", "cherry");
        assertEquals(before.replace("inset: {front: 12, ends: 8}", "inset: {front: 14, ends: 8}"), text(job));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"inset |", "overlay | 12"})
    void drawersComeIntoAnOpeningInsetOrBeforeIt(String set, String lap) {
        String job = shop.job("kitchen");
        String told = send(
                job,
                "drawers",
                "place",
                place(job, "sink"),
                "rows",
                "2 equal",
                "fronts",
                "ash",
                "set",
                set,
                "lap",
                lap == null ? "" : lap,
                "box",
                "box",
                "floor",
                "thin",
                "runs",
                "concealed undermount");
        assertTrue(told.isEmpty() || text(job).contains("drawers: {rows: 2 equal"), told);
        assertTrue(text(job).contains("set: " + set), told);
    }

    @Test
    void whatCouldMeanSomethingElseInTheTextIsRefused() {
        String job = shop.job("sideboard");
        String before = text(job);
        send(job, "top", "of", "oak}, x: {y", "front", "", "back", "", "ends", "", "lipping", "");
        assertEquals(before, text(job));
    }
}
