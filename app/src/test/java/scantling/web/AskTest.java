package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import scantling.construct.Finding;
import scantling.measure.Length;
import scantling.shop.Act;
import scantling.shop.BenchEntry;
import scantling.shop.JobPlan;

/** Adding by asking, taking ways out of findings, and writing the text itself. */
class AskTest extends AtTheDesk {
    /** Sags: 1.2 m of 12 mm plywood on pins, loaded with books (see the sag check's own sources). */
    private static final String LONG_SHELF = """
        piece: Long shelf
        unit: mm
        size: 1200 wide, 300 deep, 400 high
        materials:
          side: {sheet: birch plywood, thickness: 18}
          thin: {sheet: birch plywood, thickness: 12}   # too thin
        build:
          - case: {of: side}
          - shelves: {of: thin, count: 1, held: pins}
        """;

    private String send(String job, String what, String... fields) {
        return post("/jobs/" + job + "/" + what, fields).body();
    }

    private String text(String job) {
        return shop.store.text(job).orElseThrow().text();
    }

    private JobPlan.Planned plan(String job) {
        return (JobPlan.Planned) shop.store.jobBook().planOf(job).orElseThrow();
    }

    @Test
    void aDrawerIsAddedOnTopAndNothingElseOfTheTextChanges() {
        String job = shop.job("bedside-chest");
        String before = text(job);
        send(job, "ask/drawer", "bank", "drawers / rows", "height", "90");
        assertEquals(before.replace("rows: [130,", "rows: [90, 130,"), text(job));
    }

    @Test
    void aDrawerThatDoesNotFitIsRefusedWithWhy() {
        String job = shop.job("bedside-chest");
        String before = text(job);
        String told = send(job, "ask/drawer", "bank", "drawers / rows", "height", "900");
        assertTrue(told.contains("could not be built"), told);
        assertEquals(before, text(job));
    }

    @Test
    void shelvesSplitTheOpeningTheyAreAskedFor() {
        String job = shop.job("bookcase");
        String before = text(job);
        TextAsk.Place lower = TextAsk.places(before).stream()
                .filter(place -> place.words().equals("lower"))
                .findFirst()
                .orElseThrow();
        String step = "            - shelves: {of: oak, count: 2, held: pins}\n";
        String after = TextAsk.withStep(before, lower.at(), "shelves: {of: oak, count: 2, held: pins}")
                .orElseThrow();
        assertEquals(before.replace("heights: [370], held: dado}\n", "heights: [370], held: dado}\n" + step), after);
    }

    @Test
    void aWayOutOfAFindingIsTriedOutAndDoneWithOneAct() {
        String job = shop.job("Long shelf", LONG_SHELF);
        Finding sags = plan(job).plan().findings().stream()
                .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                .filter(finding -> finding.subject().contains("shel"))
                .findFirst()
                .orElseThrow();
        Ways.Way way = new Ways(shop.store, plan(job), sags).find().get(0);
        send(
                job,
                "given",
                "at",
                Integer.toString(way.at()),
                "value",
                way.to(),
                "revision",
                Integer.toString(plan(job).revision().number()));
        assertFalse(plan(job).plan().findings().stream().anyMatch(each -> Follow.isAlike(each, sags)));
        assertTrue(text(job).contains("# too thin"), "only the value changed");
    }

    @Test
    void aTextMadeFromAnOlderOneIsShownBesideTheirsAndNotWritten() {
        String job = shop.job("Long shelf", LONG_SHELF);
        String theirs = LONG_SHELF.replace("1200 wide", "1100 wide");
        send(job, "text", "revision", "1", "text", theirs);
        assertEquals(theirs, text(job));
        String told = send(job, "text", "revision", "1", "text", LONG_SHELF.replace("400 high", "450 high"));
        assertEquals(theirs, text(job));
        assertTrue(told.contains("450 high") && told.contains("1100 wide"), told);
    }

    @Test
    void whatIsWrongInATextIsToldWithItsPlaceBeforeItIsPutIn() {
        String job = shop.job("Long shelf", LONG_SHELF);
        String wrong = LONG_SHELF.replace("of: thin", "of: thinn");
        String told = send(job, "text/check", "text", wrong);
        assertTrue(told.contains("\"start\":" + wrong.indexOf("thinn")), told);
        send(job, "text", "revision", "1", "text", wrong);
        assertEquals(LONG_SHELF, text(job));
    }

    @Test
    void aPieceInTheRoundHoldsEveryPart() {
        String job = shop.job("bedside-chest");
        String json = desk.get("/jobs/" + job + "/round.json").body();
        plan(job).plan().assembly().parts().forEach(part -> assertTrue(json.contains("\"" + part.path() + "\"")));
    }

    @Test
    void twoVersionsStandSideBySideWithWhatDiffers() {
        String job = shop.job("Long shelf", LONG_SHELF);
        send(job, "text", "revision", "1", "text", LONG_SHELF.replace("1200 wide", "1100 wide"));
        String page = desk.get("/jobs/" + job + "/versions?left=1&right=2").body();
        assertTrue(page.contains("1200 wide") && page.contains("1100 wide"));
        assertTrue(page.contains("class=\"gone\"") && page.contains("class=\"new\""));
    }

    @Test
    void aChangeToWhatIsCutTellsWhatItCostsAndWaitsForAYes() {
        String job = shop.job("bedside-chest");
        shop.act(new Act.Log(job, new BenchEntry.Cut("low / front rail", Map.of())));
        String before = text(job);
        int at = before.indexOf("500 wide");
        String[] change = {"at", Integer.toString(at), "value", "560", "revision", "1"};
        String told = send(job, "given", change);
        assertTrue(told.contains("what the change would cost"), told);
        assertTrue(told.contains("low / front rail is cut"), told);
        assertTrue(told.contains("of bench time is lost"), told);
        assertEquals(before, text(job));
        List<String> accepted = new ArrayList<>(List.of(change));
        accepted.addAll(List.of("accept", "yes"));
        send(job, "given", accepted.toArray(String[]::new));
        assertEquals(before.replace("500 wide", "560 wide"), text(job));
    }

    @Test
    void goingBackToAnEarlierVersionTellsItsCostToo() {
        String job = shop.job("bedside-chest");
        String narrow = text(job);
        send(job, "text", "revision", "1", "text", narrow.replace("500 wide", "560 wide"));
        shop.act(new Act.Log(job, new BenchEntry.Cut("low / front rail", Map.of())));
        String wide = text(job);
        String told = send(job, "versions/back", "to", "1");
        assertTrue(told.contains("what the change would cost"), told);
        String edit = shop.store.lastActs(10).stream()
                .filter(act -> act.words().equals("the text was written"))
                .findFirst()
                .orElseThrow()
                .id();
        String undo = send(job, "undo", "of", edit);
        assertTrue(undo.contains("what the change would cost"), undo);
        assertEquals(wide, text(job));
        send(job, "versions/back", "to", "1", "accept", "yes");
        assertEquals(narrow, text(job));
        assertEquals(3, plan(job).revision().number(), "as a version of its own");
        send(job, "undo", "of", edit, "accept", "yes");
        assertEquals(narrow, text(job), "the older act cannot be taken back over the newer");
    }

    @Test
    void sizesOverAllAndMaterialsAreAskedFor() {
        String job = shop.job("bedside-chest");
        String before = text(job);
        send(job, "ask/size", "width", "520", "depth", "420", "height", "640");
        String sized = before.replace("500 wide, 420 deep, 620 high", "520 wide, 420 deep, 640 high");
        assertEquals(sized, text(job));
        send(job, "ask/material", "name", "leg", "of", "hard maple", "thickness", "32");
        assertEquals(
                sized.replace(
                        "leg:      {solid: black cherry, thickness: 30}",
                        "leg:      {solid: hard maple, thickness: 32}"),
                text(job));
    }

    @Test
    void aTopInAnotherThicknessGetsAMaterialOfItsOwnWhereOthersShareIt() {
        String job = shop.job("sideboard");
        String before = text(job);
        send(job, "ask/top", "of", "oak", "front", "15", "back", "", "ends", "15", "lipping", "", "thickness", "28");
        assertEquals(
                before.replace(
                                "  core:  {sheet: birch plywood, thickness: 18}\n",
                                "  top board: {solid: white oak, thickness: 28}\n"
                                        + "  core:  {sheet: birch plywood, thickness: 18}\n")
                        .replace("- top: {of: oak,", "- top: {of: top board,"),
                text(job));
        String chest = shop.job("bedside-chest");
        String alone = text(chest);
        send(
                chest,
                "ask/top",
                "of",
                "core",
                "front",
                "12",
                "back",
                "",
                "ends",
                "8",
                "lipping",
                "cherry",
                "thickness",
                "24");
        assertEquals(
                alone.replace(
                        "core:     {sheet: birch plywood, thickness: 18}",
                        "core:     {sheet: birch plywood, thickness: 24}"),
                text(chest));
    }

    @Test
    void aPartThatNoLongerFitsIsWorkedOnAndThatIsOneAct() {
        String job = shop.job("bedside-chest");
        String front = "drawers / drawer 2 / front";
        String opening = "drawers / drawer 2 / opening / width";
        shop.act(new Act.Log(job, new BenchEntry.Cut(front, Map.of())));
        Length wide = Objects.requireNonNull(plan(job).plan().assembly().names().get(opening))
                .value();
        shop.act(new Act.Log(job, new BenchEntry.Measured(opening, wide.minus(Length.mm("1.1")))));
        List<Finding> findings = plan(job).plan().findings();
        Finding misfit = findings.stream()
                .filter(finding -> finding.subject().startsWith(front)
                        && finding.sentence().contains("too"))
                .findFirst()
                .orElseThrow();
        int index = findings.indexOf(misfit);
        String letters =
                index < 26 ? "" + (char) ('a' + index) : "" + (char) ('a' + index / 26 - 1) + (char) ('a' + index % 26);
        String page = desk.get("/jobs/" + job + "/ways?note=" + letters).body();
        assertTrue(page.contains("1.1 mm") && page.contains("It is done"), page);
        send(job, "worked", "part", front, "size", "length");
        assertFalse(plan(job).plan().findings().stream().anyMatch(each -> Follow.isAlike(each, misfit)), "it fits");
        assertEquals(1, plan(job).bench().cut().size());
        assertTrue(send(job, "worked", "part", front, "size", "length").contains("Nothing is to be taken off"));
    }

    @Test
    void aChangeThatCostsNothingIsDoneAtOnce() {
        String job = shop.job("bedside-chest");
        shop.act(new Act.Log(job, new BenchEntry.Cut("low / front rail", Map.of())));
        String before = text(job);
        int at = before.indexOf("gap: 2") + 5;
        send(job, "given", "at", Integer.toString(at), "value", "2.5", "revision", "1");
        assertEquals(before.replace("gap: 2", "gap: 2.5"), text(job));
    }
}
