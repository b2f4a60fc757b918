package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

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

/** Saw plans as they are written, judged by a validator library that knows nothing of this project. */
class PlanSchemaTest {
    private static final String SHEETS = """
        {"saw": {"kerf": 3.2, "trim": 10}, "sheets": [{"name": "ply", "length": 2440, "width": 1220, "cost": 70}],
         "parts": [{"name": "side", "length": 720, "width": 560, "count": 7},
                   {"name": "too long", "length": 3000, "width": 50}]}
        """;

    private static List<Error> errors(String plan) throws IOException {
        try (InputStream in = CutJson.class.getResourceAsStream("plan.schema.json")) {
            String schema = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(schema)
                    .validate(plan, InputFormat.JSON);
        }
    }

    private static String written(String text) {
        CutJob job = CutJson.readJob(text).job().orElseThrow();
        return CutJson.writePlan(job, Jobs.plan(job), 0.5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                SHEETS,
                """
                {"saw": {"kerf": 3}, "boards": [{"name": "oak", "length": 2400, "width": 210, "defects": ["300 to 420"]}],
                 "parts": [{"name": "rail", "length": 900, "width": 70, "count": 4}]}
                """,
                """
                {"saw": {"kerf": 3}, "sticks": [{"name": "moulding", "length": 2400}],
                 "parts": [{"name": "side", "length": 400, "count": 9}]}
                """,
            })
    void whatIsWrittenKeepsToIt(String job) throws IOException {
        assertEquals(List.of(), errors(written(job)));
    }

    @Test
    void anotherFieldOrNoneDoesNotKeepToIt() throws IOException {
        String plan = written(SHEETS);

        assertFalse(errors(plan.replace("\"lowerBound\"", "\"bound\"")).isEmpty());
        assertFalse(errors(plan.replace("parts_left_out", "wrong")).isEmpty());
    }
}
