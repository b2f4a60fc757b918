package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class PartsCsvTest {
    @Test
    void oneRowToAMarkReadsBackAsWritten() throws Exception {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(PartsCsv.of(Shelf.content())), format)) {
            List<CSVRecord> rows = parser.getRecords();
            assertEquals(
                    List.of("A1", "A2", "B", "C"),
                    rows.stream().map(row -> row.get("mark")).toList());
            CSVRecord shelves = rows.get(2);
            assertEquals("lower shelf; upper shelf", shelves.get("parts"));
            assertEquals("2", shelves.get("count"));
            // By hand: 800 less two ends of 18 plus two dados of 6.
            assertEquals("776", shelves.get("length mm"));
        }
    }

    @Test
    void linesEndAsRfc4180Says() {
        // RFC 4180, section 2: each record ends in CRLF.
        assertEquals(5, PartsCsv.of(Shelf.content()).split("\r\n", -1).length - 1);
    }

    @Test
    void noCellStartsAFormula() {
        // The starts that OWASP, 'CSV Injection', names.
        for (String start : List.of("=", "+", "-", "@", "\t", "\r")) {
            assertEquals("'" + start + "1", PartsCsv.safe(start + "1"));
        }
        assertEquals("left end", PartsCsv.safe("left end"));
    }
}
