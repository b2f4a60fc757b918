package scantling.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The judge is a validator library that knows nothing of this project. */
final class PieceSchemaTest {
    private static List<Error> errors(String schema, Object document) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(new ObjectMapper().valueToTree(document).toString(), InputFormat.JSON);
    }

    private static List<Error> errors(String text) {
        Object document = new Load(LoadSettings.builder().build()).loadFromString(text);
        return errors(PieceSchema.json(Bench.LANGUAGE), document);
    }

    @Test
    void theSchemaIsASchema() throws Exception {
        String meta = "{\"$ref\": \"https://json-schema.org/draft/2020-12/schema\"}";
        assertEquals(
                List.of(), errors(meta, new ObjectMapper().readValue(PieceSchema.json(Bench.LANGUAGE), Map.class)));
    }

    @Test
    void theChestKeepsToIt() {
        assertEquals(List.of(), errors(Bench.CHEST));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "- drawer",
                "- top: cherry",
                "- rows: 3 equal",
                "- rows: [2 shares, 40, rest]",
                "- top: {of: cherry, breadboards}",
                "- boards: {parts: [{of: {of: cherry, width: 3}, outline: [[0, 0], [1, 0], [0, 1]]}]}",
                "top: cherry\ndrawer: {name: till}",
            })
    void whatReadsKeepsToIt(String build) {
        String text = Bench.with(build);
        Bench.piece(text);
        assertEquals(List.of(), errors(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "- topp: cherry",
                "- top: {of: cherry, edge: ronded}",
                "- top: {overhang: 3}",
                "- top: {of: cherry, overhang: {frnt: 3}}",
                "- drawer: {boxes: 0}",
                "- {top: cherry, drawer: {}}",
            })
    void whatDoesNotReadFailsIt(String build) {
        String text = Bench.with(build);
        assertFalse(Bench.read(text).problems().isEmpty());
        assertFalse(errors(text).isEmpty());
    }
}
