package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Construction;
import scantling.construct.Joint;
import scantling.cutting.Effort;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.Plan;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** Every joint and every fitting, from its word in the language to its line on the sheets. */
class EveryJointTest {
    private static final SchemaRegistry SCHEMAS = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private static PacketContent content(String build) {
        String text = """
            piece: Try-out
            unit: mm
            size: 600 wide, 450 deep, 700 high
            materials:
              oak: {solid: white oak, thickness: 20}
              ash: {solid: white ash, thickness: 14}
              leg: {solid: white oak, thickness: 60}
              rail: {solid: white oak, thickness: 25}
              ply: {sheet: birch plywood, thickness: 18}
              thin: {sheet: birch plywood, thickness: 6}
            build:
            """ + build.indent(2);
        Shop usual = Shop.usual();
        Shop shop = new Shop(usual.tolerances(), usual.allowances(), usual.rack(), new Effort(5, 1));
        ReadResult read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), read.problems());
        Planner.Outcome outcome = Planner.plan(read.piece().orElseThrow(), BenchLog.EMPTY, shop);
        assertEquals(List.of(), outcome.benchProblems());
        Plan plan = outcome.plan();
        return Packet.of(plan, LengthFormat.MM).content();
    }

    private static PacketPage page(PacketContent content) {
        return PacketPage.onScreen(content, Drawings.of(content));
    }

    private static String frame(String word) {
        return "- ends: {frame: {stiles: oak 70, top rail: oak 70, bottom rail: oak 80, joint: %s}}\n".formatted(word);
    }

    private static String corners(String word) {
        return """
            - case: {of: ply}
            - drawers: {rows: [rest, 200], fronts: {of: oak}, box: {of: ash, floor: thin, corners: %s, runs on: side mount ball-bearing}}
            """.formatted(word);
    }

    private static String sides(String word) {
        return "- case: {of: ply, bottom up: 60, joint: %s}\n".formatted(word);
    }

    private static String plinth(String word) {
        return "- plinth: {of: ply 100, joint: %s}\n".formatted(word);
    }

    private static String splayed(String word) {
        return "- legs and rails: {legs: leg, rails: rail 80, splay: {ends: 50, front: 30, back: 30}, joint: %s}\n"
                .formatted(word);
    }

    /** Word, what is built with it, what it cuts on the one part and on the other. */
    static Stream<Arguments> joints() {
        return Stream.of(
                Arguments.of("loose tenon", frame("loose tenon"), "mortise", "mortise"),
                Arguments.of("mortise and tenon", frame("mortise and tenon"), "tenon", "mortise"),
                Arguments.of("haunched mortise and tenon", frame("haunched mortise and tenon"), "tenon", "mortise"),
                Arguments.of("dowel", frame("dowel"), "hole", "hole"),
                Arguments.of("biscuit", frame("biscuit"), "slot", "slot"),
                Arguments.of("half-lap", frame("half-lap"), "notch", "notch"),
                Arguments.of("bridle", frame("bridle"), "tenon", "mortise"),
                Arguments.of("pocket screw", frame("pocket screw"), "recess", "hole"),
                Arguments.of("dowel", corners("dowel"), "hole", "hole"),
                Arguments.of("rabbet", corners("rabbet"), "rabbet", "rabbet"),
                Arguments.of("dovetail", corners("dovetail"), "pin", "socket"),
                Arguments.of("half-blind dovetail", corners("half-blind dovetail"), "pin", "socket"),
                Arguments.of("box joint", corners("box joint"), "pin", "socket"),
                Arguments.of("dado", sides("dado"), "dado", "dado"),
                Arguments.of("stopped dado", sides("stopped dado"), "dado", "notch"),
                Arguments.of("tongue and groove", sides("tongue and groove"), "tongue", "dado"),
                Arguments.of("butt and screw", sides("butt and screw"), "hole", "hole"),
                Arguments.of("mitre with biscuit", plinth("mitre with biscuit"), "slot", "mitre"),
                Arguments.of("mitre with spline", plinth("mitre with spline"), "groove", "mitre"),
                Arguments.of("mortise and tenon", splayed("mortise and tenon"), "shoulder", "mortise"),
                Arguments.of("loose tenon", splayed("loose tenon"), "mortise", "mortise"),
                Arguments.of("dowel", splayed("dowel"), "hole", "hole"));
    }

    @ParameterizedTest(name = "{0}: {2} and {3}")
    @MethodSource("joints")
    void aJointStandsOnTheSheetsOfItsPartsInTheListOfJointsAndInTheFile(
            String word, String build, String one, String other) {
        PacketContent content = content(build);
        PacketPage page = page(content);
        List<WorkPages.JointRow> rows = page.work().joints().stream()
                .filter(row -> row.kind().equals(word))
                .toList();
        assertTrue(!rows.isEmpty(), word);
        rows.forEach(row -> assertTrue(!row.why().isEmpty(), row.path()));
        Set<String> work = page.work().sheets().stream()
                .flatMap(sheet -> sheet.work().stream())
                .flatMap(row -> Arrays.stream(row.what().split(" × ", -1)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(
                work.containsAll(Set.of(one).equals(Set.of(other)) ? Set.of(one) : Set.of(one, other)), work::toString);
        Schema schema = SCHEMAS.getSchema(Resources.text("plan.schema.json"));
        assertEquals(
                List.of(),
                schema.validate(PlanJson.of(content), InputFormat.JSON).stream()
                        .map(Object::toString)
                        .toList());
    }

    @Test
    void everyKindOfJointIsTriedHere() {
        Set<String> tried = joints().map(each -> (String) each.get()[0]).collect(Collectors.toCollection(TreeSet::new));
        Set<String> left = Arrays.stream(Joint.Kind.values())
                .map(Joint.Kind::words)
                .filter(word -> !tried.contains(word))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Set.of("auto", "carried", "glued edge", "groove", "mitre")), left);
    }

    /** What is built, how the fitting is called, how many parts have work for it. */
    static Stream<Arguments> fittings() {
        String doors = "- case: {of: ply}\n- doors: {count: 1, of: oak, set: inset, hung on: %s}\n";
        String drawer = """
            - case: {of: ply}
            - drawers: {rows: [rest, 200], fronts: {of: oak}, box: {of: ash, floor: thin, runs on: %s}}
            """;
        return Stream.of(
                Arguments.of(doors.formatted("cup hinges"), "hinge", 2),
                Arguments.of(doors.formatted("butt hinges"), "butt hinge", 2),
                Arguments.of(doors.formatted("cup hinges"), "handle", 1),
                Arguments.of(drawer.formatted("concealed undermount"), "concealed undermount slide", 2),
                Arguments.of(drawer.formatted("side mount ball-bearing"), "side mount ball-bearing slide", 2),
                Arguments.of(drawer.formatted("wood"), "drawer-front fixing", 2),
                Arguments.of("- case: {of: ply}\n- shelves: {of: ply, count: 1, held: pins}\n", "pin", 2),
                Arguments.of("- case: {of: ply, joint: dowel, comes apart: yes}\n", "knock-down", 2),
                Arguments.of("- case: {of: ply, feet: 4}\n", "foot", 1),
                Arguments.of("- top: {of: oak}\n- legs and rails: {legs: leg, rails: rail 80}\n", "top fastening", 2),
                Arguments.of("- legs and rails: {legs: leg, rails: rail 140, joint: dowel, bolted: yes}\n", "bolt", 2));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("fittings")
    void aFittingHasHolesInItsPartsALineWithItsReasonAndALineInTheBuyingList(String build, String what, int parts) {
        PacketContent content = content(build);
        PacketPage page = page(content);
        List<WorkPages.FittingRow> rows = page.work().fittings().stream()
                .filter(row -> row.what().contains(what))
                .toList();
        assertTrue(!rows.isEmpty(), () -> page.work().fittings().toString());
        rows.forEach(row -> assertTrue(row.why().contains("Takes "), row.toString()));
        long held = content.features().features().stream()
                .filter(feature -> feature.owner().equals(rows.get(0).path().split("; same in", -1)[0]))
                .map(feature -> feature.part())
                .distinct()
                .count();
        assertTrue(held >= parts, what + " is in " + held);
        assertTrue(page.supplies().buying().getOrDefault("Hardware", List.of()).stream()
                .anyMatch(row -> row.what().contains(what)));
    }

    /** Dowels of the corners of two drawers, and the screws of their slides. */
    @Test
    void dowelsAndScrewsAreBoughtBySize() {
        PacketPage page = page(content(corners("dowel")));
        List<BuyRow> small = page.supplies().buying().getOrDefault("Consumables", List.of());
        assertTrue(small.stream().anyMatch(row -> row.what().startsWith("dowel")), small::toString);
        List<BuyRow> screws = page.supplies().buying().getOrDefault("Screws for hardware", List.of());
        assertTrue(screws.stream().anyMatch(row -> row.what().equals("system screw 5.0 mm")), screws::toString);
    }

    /** A side with rows of pins has a chart in which no setting of bit, stop and fence stands twice. */
    @Test
    void aPartWithManyHolesHasADrillingChartThatSetsEachStopOnce() {
        PacketPage page = page(content("- case: {of: ply}\n- shelves: {of: ply, count: 1, held: pins}\n"));
        List<PartSheet.ChartRow> chart = page.work().sheets().stream()
                .map(PartSheet::chart)
                .filter(rows -> !rows.isEmpty())
                .findFirst()
                .orElseThrow();
        long settings = chart.stream()
                .map(row -> row.surface() + row.bit() + row.depth() + row.fence() + row.fenceAt())
                .distinct()
                .count();
        assertEquals(chart.size(), settings);
        assertEquals("near end", chart.get(0).from());
    }
}
