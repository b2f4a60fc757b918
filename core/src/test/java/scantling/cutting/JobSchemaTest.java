package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The judge is a validator library that knows nothing of this project. */
class JobSchemaTest {
    private static String schema() throws IOException {
        try (InputStream in = CutJson.class.getResourceAsStream("job.schema.json")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<Error> errors(String document) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema())
                .validate(document, InputFormat.JSON);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                """
                {"unit": "in", "saw": {"kerf": 0.125, "trim": "10 mm", "stages": 2, "firstCut": "along"},
                 "sheets": [{"name": "ply", "length": 96, "width": 48, "count": null, "cost": 80, "trimmed": true}],
                 "parts": [{"name": "side", "length": "30 1/2", "width": 15, "count": 2, "turn": true, "row": "a"}]}
                """,
                """
                {"saw": {"kerf": 3}, "keep": {"longer": 300, "shorter": 100}, "wishes": {"setting": 1, "nearEdge": true},
                 "boards": [{"name": "oak", "length": 2400, "width": 210, "count": 1, "onHand": true,
                             "defects": ["300 to 420", {"from": 5, "to": 9, "edge": "near", "deep": 4}]}],
                 "parts": [{"name": "rail", "length": 900, "width": 70, "glued": true}]}
                """,
                """
                {"saw": {"kerf": 3, "mitre": 4}, "sticks": [{"name": "moulding", "length": 2400}],
                 "parts": [{"name": "side", "length": 400, "count": 4, "mitres": 2}]}
                """,
            })
    void whatReadsKeepsToIt(String job) throws IOException {
        CutJob read = CutJson.readJob(job).job().orElseThrow();

        assertEquals(List.of(), errors(job));
        assertEquals(List.of(), errors(CutJson.writeJob(read)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"parts\": []}",
                "{\"sheets\": [], \"sticks\": [], \"parts\": []}",
                "{\"sheets\": [], \"parts\": [], \"kerf\": 3}",
                "{\"sheets\": [{\"length\": 5}], \"parts\": []}",
                "{\"sheets\": [], \"parts\": [{\"length\": 5, \"width\": 4, \"mitres\": 1}]}",
                "{\"saw\": {\"firstCut\": \"up\"}, \"sheets\": [], \"parts\": []}",
            })
    void whatDoesNotReadDoesNotKeepToIt(String job) throws IOException {
        assertTrue(CutJson.readJob(job).job().isEmpty());
        assertFalse(errors(job).isEmpty());
    }

    @Test
    void theSchemaIsASchema() throws IOException {
        List<Error> wrong = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema("{\"$ref\": \"https://json-schema.org/draft/2020-12/schema\"}")
                .validate(schema(), InputFormat.JSON);

        assertEquals(List.of(), wrong);
    }
}
