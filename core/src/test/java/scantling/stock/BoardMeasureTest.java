package scantling.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Length;
import scantling.measure.LengthReader;
import scantling.measure.Unit;
import scantling.timber.PublishedTable;

class BoardMeasureTest {
    /** W. Noyes, Handwork in Wood, p. 109 (first three: 12 ft 10 in, 3 ft 9 in, 24 ft 11 in); a sawmill's how-to page; a hardwood yard. */
    @ParameterizedTest
    @CsvSource({
        "1 in, 11 in, 14 ft, 12.8333",
        "1 in, 9 in, 5 ft, 3.75",
        "1 in, 13 in, 23 ft, 24.9167",
        "3 in, 8 in, 10 ft, 20",
        "2 in, 8 in, 72 in, 8",
        "1 in, 9 in, 96 in, 6"
    })
    void measuresTheBoardFeetOfTheBooks(String thickness, String width, String length, double expected) {
        assertEquals(expected, BoardMeasure.boardFeet(length(thickness), length(width), length(length)), 0.001);
    }

    /** An importer restating the NHLA examples (6-1/2 in x 8 ft: 4; 8 in x 12 ft: 8) and a grading primer (7 in x 8 ft: 5). */
    @ParameterizedTest
    @CsvSource({"6 1/2 in, 8 ft, 4", "8 in, 12 ft, 8", "7 in, 8 ft, 5", "8 in, 12 ft 11 in, 8", "3 in, 11 in, 0"})
    void measuresTheSurfaceOfTheBooksAndDropsPartOfAFoot(String width, String length, int expected) {
        assertEquals(expected, BoardMeasure.surfaceMeasure(length(width), feet(length)));
    }

    /** NHLA rounding of exact halves by turns, as remembered by the trade: 9 in x 6 ft is 4-1/2 each time. */
    @Test
    void roundsExactHalvesUpAndDownByTurns() {
        var half = new BoardMeasure.Face(Length.inches(9), Length.inches(72));
        var whole = new BoardMeasure.Face(Length.inches(8), Length.inches(144));
        assertEquals(5, BoardMeasure.surfaceMeasure(half.width(), half.length()));
        assertEquals(5 + 4 + 5, BoardMeasure.surfaceMeasure(List.of(half, half, half)));
        assertEquals(5 + 8 + 4, BoardMeasure.surfaceMeasure(List.of(half, whole, half)));
    }

    /** Lumber trade rule: add the surface measures of one thickness, multiply once, round once. */
    @Test
    void talliesOneThicknessAndRoundsOnce() {
        var face = new BoardMeasure.Face(length("6 1/2 in"), Length.inches(96)); // surface measure 4
        assertEquals(15, BoardMeasure.tally(RoughClass.get("5/4"), List.of(face, face, face)));
        assertEquals(24, BoardMeasure.tally(RoughClass.get("8/4"), List.of(face, face, face)));
        assertEquals(12, BoardMeasure.tally(RoughClass.get("4/4"), List.of(face, face, face)));
        assertEquals(12, BoardMeasure.tally(RoughClass.get("1/2"), List.of(face, face, face)));
    }

    @Test
    void paysStockUnderOneInchAsOneInch() {
        assertEquals(4, BoardMeasure.boardFeet(RoughClass.get("5/8"), Length.inches(6), Length.inches(96)), 1e-12);
        assertEquals(8, BoardMeasure.boardFeet(RoughClass.get("8/4"), Length.inches(6), Length.inches(96)), 1e-12);
    }

    /** Every board-foot and surface-measure row of the reference file, where it lies beside the project. */
    @Test
    void agreesWithEveryWorkedExampleOfTheReference() {
        var file = PublishedTable.findReference("trade/worked-examples.csv");
        Assumptions.assumeTrue(file.isPresent());
        Pattern given = Pattern.compile("(?:([0-9]+) (?:in )?x )?([0-9-]+(?:/[0-9]+)?)(?: in)? x ([0-9]+) (ft|in)");
        int checked = 0;
        for (CSVRecord row : file.orElseThrow()) {
            Matcher match = given.matcher(row.get("given"));
            if (!row.get("id").matches("BF.*|SM.*") || !match.matches()) {
                continue;
            }
            Length width = length(match.group(2) + " in");
            Length length = length(match.group(3) + " " + match.group(4));
            double answer = row.get("id").startsWith("SM")
                    ? BoardMeasure.surfaceMeasure(width, length)
                    : BoardMeasure.boardFeet(length(match.group(1) + " in"), width, length);
            double tolerance = Double.parseDouble(row.get("tolerance"));
            assertEquals(Double.parseDouble(row.get("printed_answer")), answer, tolerance, row.get("id"));
            checked++;
        }
        assertEquals(9, checked);
    }

    private static Length length(String text) {
        return LengthReader.read(text, Unit.INCH).orElseThrow(() -> new AssertionError(text));
    }

    private static Length feet(String text) {
        return LengthReader.read(text.replace(" ft ", "' ").replace("11 in", "11\""), Unit.INCH)
                .orElseThrow(() -> new AssertionError(text));
    }
}
