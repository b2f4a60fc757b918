package scantling.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Saw plans from the command line, from a job to what a person cuts from. */
class CutCommandTest extends AtTheConsole {
    @Test
    void aSawPlanIsMadeAndJudged() throws IOException {
        Path job = file("job.json", """
            {"unit": "mm", "saw": {"kerf": 3.2, "trim": 10, "stages": 0, "firstCut": "any"},
             "sheets": [{"name": "ply", "length": 2440, "width": 1220, "count": null, "cost": 8000}],
             "parts": [{"name": "side", "length": 720, "width": 560, "count": 4, "turn": false}]}
            """);
        Path plan = shop.resolve("plan.json");
        Answer made = scantling("cut", job.toString(), "--seconds", "0.2", "--out", plan.toString());
        assertEquals(Exit.WELL, made.code(), made::toString);
        assertEquals(Exit.WELL, scantling("cut", "--check", plan.toString()).code());
        Files.writeString(plan, Files.readString(plan).replaceFirst("(?<= : )720", "721"));
        assertRefused(scantling("cut", "--check", plan.toString()));
    }

    @Test
    void afterSomeCutsOnlyTheRestIsPlanned() throws IOException {
        Path job = file("job.json", """
            {"unit": "in", "saw": {"kerf": "1/8", "trim": "3/8", "stages": 0, "firstCut": "along"},
             "sheets": [{"name": "ply", "length": 96, "width": 48, "count": null, "cost": 8000}],
             "parts": [{"name": "side", "length": 28, "width": "22 1/2", "count": 4, "turn": false}]}
            """);
        Path plan = shop.resolve("plan.json");
        Answer made = scantling("cut", job.toString(), "--seconds", "0.2", "--list", "--out", plan.toString());
        assertTrue(made.out().contains("rip, fence 22 1/2 in"), made::out);
        Answer rest = scantling("cut", "--rest-of", plan.toString(), "--made", "1:4", "--seconds", "0.2", "--list");
        assertEquals(Exit.WELL, rest.code(), rest::toString);
        assertTrue(rest.out().contains("of ply, number 1"), rest::out);
        assertRefused(scantling("cut", "--rest-of", plan.toString(), "--made", "7:1"), "no stock number (7)");
    }

    /** Each end takes a sheet; both are cut alike. */
    @Test
    void sheetsCutAlikeAreListedOnceWithWhatEachGives() throws IOException {
        Path job = file("job.json", """
            {"unit": "mm", "saw": {"kerf": 3, "trim": 0, "stages": 0, "firstCut": "any"},
             "sheets": [{"name": "ply", "length": 1000, "width": 400, "count": null, "cost": 1}],
             "parts": [{"name": "left end", "length": 900, "width": 400, "count": 2, "turn": false},
                       {"name": "right end", "length": 900, "width": 400, "count": 1, "turn": false}]}
            """);
        Answer listed = scantling("cut", job.toString(), "--seconds", "0.2", "--list");
        assertTrue(listed.out().contains("1 to 3. ply, 1000.0 mm x 400.0 mm: cut 3 like this"), listed::out);
        assertTrue(listed.out().contains("but in 3:"), listed::out);
        assertTrue(listed.out().contains("   1  whole: right end | waste"), listed::out);
    }

    @Test
    void whyAPartIsLeftOutIsToldInTheUnitOfTheJob() throws IOException {
        Path job = file("job.json", """
            {"unit": "in", "saw": {"kerf": "1/8"},
             "sheets": [{"name": "ply", "length": 96, "width": 48}],
             "parts": [{"name": "top", "length": "100 1/2", "width": 20},
                       {"name": "left", "length": 60, "width": 20, "row": "doors"},
                       {"name": "right", "length": 60, "width": 20, "row": "doors"}]}
            """);
        Answer told = scantling("cut", job.toString(), "--seconds", "0.1");
        assertEquals(Exit.STOP, told.code(), told::toString);
        assertTrue(told.out().contains("top, 100 1/2 in by 20 in, is larger than any stock"), told::out);
        assertTrue(told.out().contains("It is cut in a row, 120 1/8 in long in all."), told::out);
        assertFalse(told.out().contains(" mm"), told::out);
    }

    @Test
    void matchedFrontsAreListedInTheirOrder() throws IOException {
        Path job = file("job.json", """
            {"unit": "mm", "saw": {"kerf": 3},
             "sheets": [{"name": "veneered", "length": 1000, "width": 600}],
             "parts": [{"name": "top left", "length": 400, "width": 150, "row": "top", "beside": "bank"},
                       {"name": "top right", "length": 400, "width": 150, "row": "top", "beside": "bank"},
                       {"name": "low left", "length": 400, "width": 200, "row": "low", "beside": "bank"},
                       {"name": "low right", "length": 400, "width": 200, "row": "low", "beside": "bank"}]}
            """);
        Path plan = shop.resolve("plan.json");
        Answer told = scantling("cut", job.toString(), "--seconds", "0.1", "--list", "--out", plan.toString());
        assertEquals(Exit.WELL, told.code(), told::toString);
        assertTrue(
                told.out()
                        .contains(
                                "Matched side by side, each row end to end: top left, top right | low left, low right"),
                told::out);
        assertEquals(Exit.WELL, scantling("cut", "--check", plan.toString()).code());
    }
}
