package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Construction;
import scantling.construct.Starters;
import scantling.measure.LengthFormat;
import scantling.piece.PieceSchema;

/** The papers of every starter. */
class PapersOfStartersTest {
    static {
        XRLog.setLoggingEnabled(false);
    }

    private static final SchemaRegistry SCHEMAS = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    static Stream<String> starters() {
        return Starters.NAMES.stream();
    }

    private static PacketContent content(String starter) {
        return StarterPapers.content(starter, LengthFormat.MM);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void thePlanIsAsItsSchemaSaysAndNoLengthIsABareNumber(String starter) throws IOException {
        Schema schema = SCHEMAS.getSchema(Resources.text("plan.schema.json"));
        String json = PlanJson.of(content(starter));
        assertEquals(List.of(), schema.validate(json, InputFormat.JSON));
        List<JsonNode> lengths = new ArrayList<>();
        collectLengths(new ObjectMapper().readTree(json), lengths);
        assertTrue(lengths.size() > 20, "few lengths: " + lengths.size());
        lengths.forEach(length -> {
            assertFalse(length.path("how").asText().isBlank(), length::toString);
            assertFalse(length.path("from").asText().isBlank(), length::toString);
        });
    }

    private static void collectLengths(JsonNode node, List<JsonNode> found) {
        if (node.isObject() && node.has("mm") && node.has("from")) {
            found.add(node);
        }
        node.forEach(child -> collectLengths(child, found));
    }

    @ParameterizedTest
    @MethodSource("starters")
    void theTextIsAsThePublishedSchemaSays(String starter) {
        Schema schema = SCHEMAS.getSchema(PieceSchema.json(Construction.language()));
        assertEquals(List.of(), schema.validate(StarterPapers.text(starter), InputFormat.YAML));
    }

    @Test
    void thePacketOfTheChestHasEveryPartAndEverySheetIsNumbered() throws IOException {
        PacketContent content = content("bedside-chest");
        byte[] pdf = PacketPdf.render(content, Paper.A4);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String words = new PDFTextStripper().getText(document);
            content.groups().forEach(group -> assertTrue(words.contains(group.mark()), group::mark));
            int sheets = document.getNumberOfPages();
            assertTrue(words.contains("sheet %d of %d".formatted(sheets, sheets)), "sheets are not numbered");
        }
    }

    static Stream<Arguments> papers() {
        Stream<Arguments> metric = starters().map(starter -> Arguments.of(starter, Paper.A4, LengthFormat.MM));
        Stream<Arguments> inch = Stream.of("wall-shelf", "bedside-chest", "dining-table", "kitchen")
                .map(starter -> Arguments.of(starter, Paper.LETTER, LengthFormat.INCH));
        return Stream.concat(metric, inch);
    }

    @ParameterizedTest
    @MethodSource("papers")
    void noWordStandsOnAnotherOrBeyondThePaper(String starter, Paper paper, LengthFormat format) throws IOException {
        PacketContent content = StarterPapers.content(starter, format);
        Drawings drawings = Drawings.of(content);
        List<byte[]> papers = new ArrayList<>(List.of(
                PacketPdf.render(content, paper),
                LabelPages.pdf(content, LabelSheet.plain(paper)),
                ClientPages.handingOver(content, drawings, paper),
                ClientPages.buildRecord(content, drawings, paper)));
        TemplatePages.pdf(content, paper).ifPresent(papers::add);
        TextBoxes.assertTidy(papers);
    }

    @Test
    void theSamePlanGivesTheSamePapers() {
        Map<String, byte[]> first = new Packet(content("wall-shelf")).files(Paper.LETTER);
        Map<String, byte[]> second = new Packet(content("wall-shelf")).files(Paper.LETTER);
        assertEquals(first.keySet(), second.keySet());
        for (String name : first.keySet()) {
            assertArrayEquals(first.get(name), second.get(name), name);
        }
    }
}
