package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

class CutJsonTest {
    private static final String JOB = """
        {"unit": "in",
         "saw": {"kerf": 0.125, "trim": "10 mm", "stages": 2, "firstCut": "along"},
         "sheets": [{"name": "ply", "length": 96, "width": 48, "count": null, "cost": 80}],
         "parts": [{"name": "side", "length": "30 1/2", "width": 15, "count": 2, "turn": true}]}
        """;

    @Test
    void aJobIsReadInItsOwnUnit() {
        CutJob job = CutJson.readJob(JOB).job().orElseThrow();

        assertEquals(new Saw(Length.inches(1, 8), Length.mm(10), 2, FirstCut.ALONG), job.saw());
        assertEquals(
                List.of(new Stock.SheetStock("ply", Length.inches(96), Length.inches(48), OptionalInt.empty(), 80)),
                job.stock());
        assertEquals(List.of(new CutPart("side", Length.inches(61, 2), Length.inches(15), 2, true)), job.parts());
    }

    @Test
    void aJobWrittenAndReadIsTheSame() {
        CutJob job = CutJson.readJob(JOB).job().orElseThrow();

        assertEquals(Optional.of(job), CutJson.readJob(CutJson.writeJob(job)).job());
    }

    @Test
    void aJobOfSticksWrittenAndReadIsTheSame() {
        CutJob job = Jobs.job(
                Saw.of(Length.mm(3)), List.of(Jobs.stick(2400)), CutPart.stick("edging", Length.mm("612.5"), 3));

        assertEquals(Optional.of(job), CutJson.readJob(CutJson.writeJob(job)).job());
    }

    @Test
    void everyProblemIsTold() {
        List<String> problems = CutJson.readJob("""
            {"unit": "ell", "saw": {"kerf": -1, "firstCut": "up"},
             "sheets": [{"name": "ply", "length": 0, "width": 1220}],
             "parts": [{"name": "a", "length": 10, "count": 0}]}
            """).problems();

        assertEquals(
                List.of(
                        "line 1: unit: (ell) is not one of mm, cm, m, in, ft.",
                        "line 1: saw.kerf: (-1) is not a length of zero or more.",
                        "line 1: saw.firstCut: (up) is not one of any, along, across.",
                        "line 2: sheets[0].length: (0) must be greater than zero.",
                        "line 3: parts[0].width: a length is needed.",
                        "line 3: parts[0].count: (0) must be a whole number, 1 or more."),
                problems);
    }

    /** A field passed over in silence would be missed by nobody: a kerf of nothing, a part that may not be turned. */
    @Test
    void aFieldThatMeansNothingIsToldWithItsLine() {
        List<String> problems = CutJson.readJob("""
            {"saw": {"kerff": 3},
             "sheets": [{"name": "ply", "length": 2440, "width": 1220, "trimed": true}],
             "parts": [{"name": "a", "length": 10, "width": 5, "turn": "maybe"},
                       7]}
            """).problems();

        assertEquals(
                List.of(
                        "line 1: saw.kerff: there is no such field here. Maybe \"kerf\"?",
                        "line 2: sheets[0].trimed: there is no such field here. Maybe \"trimmed\"?",
                        "line 3: parts[0].turn: (\"maybe\") must be true or false.",
                        "line 4: parts[1]: (7) has no fields; it needs some, such as name."),
                problems);
    }

    /** By hand: two mitred ends, 4 mm left over at each to try the mitre on: 400 + 8. */
    @Test
    void aMitredStickIsLeftLongerAtEachMitredEnd() {
        CutJob job = CutJson.readJob("""
            {"saw": {"kerf": 3, "mitre": 4}, "sticks": [{"name": "moulding", "length": 2400}],
             "parts": [{"name": "frame side", "length": 400, "count": 4, "mitres": 2}, {"name": "stop", "length": 300}]}
            """).job().orElseThrow();

        assertEquals(
                List.of(CutPart.stick("frame side", Length.mm(408), 4), CutPart.stick("stop", Length.mm(300), 1)),
                job.parts());
    }

    @Test
    void aNumberOfBillionsOfDigitsIsAProblemNotACrash() {
        String job = "{\"unit\": \"mm\", \"saw\": {\"kerf\": 1e2999999999999999999999}, \"sheets\": [], \"parts\": []}";
        assertTrue(CutJson.readJob(job).problems().get(0).startsWith("A number in it is too large"));
        assertTrue(
                CutJson.readPlan("{\"job\": " + job + "}").problems().get(0).startsWith("A number in it is too large"));
    }

    @Test
    void brokenJsonIsAProblemNotACrash() {
        assertEquals(
                List.of("line 2, column 3: this is not JSON: look there, or just before, for a comma, quote or bracket"
                        + " too many or too few."),
                CutJson.readJob("{\"unit\": \"mm\",\n  ,, }").problems());
        assertEquals(
                List.of("line 2, column 1: this is not JSON: look there, or just before, for a comma, quote or bracket"
                        + " too many or too few."),
                CutJson.readJob("{\"units\": \"mm\"}\n}").problems());
        assertFalse(CutJson.readJob("[]").problems().isEmpty());
        assertFalse(CutJson.readJob("").problems().isEmpty());
    }

    @Test
    void aWrittenPlanIsJudgedAlone() {
        CutJob job = Jobs.kitchen(20, 3);
        String text = CutJson.writePlan(job, Jobs.plan(job), 0.5);

        assertEquals(List.of(), CutJson.checkPlan(text));
        assertFalse(CutJson.checkPlan(text.replaceFirst("\"copy\" : 1", "\"copy\" : 2"))
                .isEmpty());
        assertFalse(CutJson.checkPlan(text.replaceFirst("\"position\" : 1", "\"position\" : 2"))
                .isEmpty());
    }

    @Test
    void aPlanWithALengthBeyondAllStockIsRefusedInWords() {
        CutJob job = Jobs.job(Saw.of(Length.mm(3)), List.of(Jobs.sheet(1000, 400, 1)), Jobs.part("a", 500, 200, 1));
        String written = CutJson.writePlan(job, Jobs.plan(job), 0);

        assertEquals(List.of(), CutJson.checkPlan(written));
        List<String> wrong =
                CutJson.checkPlan(written.replaceFirst("\"position\" : [0-9.]+", "\"position\" : 2.68E+42"));
        assertTrue(wrong.toString().contains("position: (2.68E+42) is no length"), wrong::toString);
    }
}
