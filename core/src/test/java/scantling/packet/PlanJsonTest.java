package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanJsonTest {
    private final Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Resources.text("plan.schema.json"));
    private final String json = PlanJson.of(Shelf.content());

    @Test
    void aPlanIsAsTheSchemaSays() {
        assertEquals(List.of(), schema.validate(json, InputFormat.JSON));
    }

    @Test
    void theSchemaRefusesAnotherVersionAndAnUnknownOrigin() {
        assertFalse(schema.validate(json.replace("\"version\" : 1", "\"version\" : 2"), InputFormat.JSON)
                .isEmpty());
        assertFalse(schema.validate(json.replace("\"looked up\"", "\"guessed\""), InputFormat.JSON)
                .isEmpty());
    }

    @Test
    void aLengthSaysHowItCameAbout() throws Exception {
        JsonNode length = new ObjectMapper().readTree(json).at("/parts/2/length");
        assertEquals("776", length.get("mm").asText());
        assertEquals("lower shelf / length", length.get("path").asText());
        assertEquals(
                "width 800.0 - 2 × ash 18.0 + 2 × a third of 18 6.0",
                length.get("how").asText());
        assertEquals("worked out", length.get("from").asText());
    }

    @Test
    void aRoundNumberIsWrittenWithoutAnExponent() {
        assertTrue(json.contains("\"mm\" : 800,"));
        assertFalse(json.contains("8E+2"));
    }

    @Test
    void theSamePlanIsTheSameText() {
        assertEquals(json, PlanJson.of(Shelf.content()));
    }
}
