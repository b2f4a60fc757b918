package scantling.milling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.checks.HandBuilt.box;
import static scantling.checks.HandBuilt.lying;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import scantling.checks.HandBuilt;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Tolerance;
import scantling.piece.Material;
import scantling.stock.Allowances;

/**
 * Worked with a ruler from stated allowances: 12 mm on length, 5 on width, 3 on thickness, 2 off each joint edge, 3 left
 * long, strips to 125, boards to 150. What each rough class planes to is the published rough-to-surfaced table: 4/4 to
 * 13/16 in (20.6 mm), 5/4 to 1 in, 8/4 to 1-3/4 in (44.4 mm), 12/4 to 2-3/4 in, 16/4 to 3-3/4 in (95.2 mm).
 */
class MillingTest {
    private static final Map<String, Long> STATED = Map.of(
            "length over finished", 12L,
            "width over finished", 5L,
            "thickness over finished", 3L,
            "joint allowance per edge", 2L,
            "left long for trimming", 3L,
            "widest strip", 125L,
            "typical board width", 150L,
            "widest planer", 300L,
            "shortest through the planer", 300L);
    private static final Allowances ALLOWANCES =
            Allowances.with(key -> Optional.ofNullable(STATED.get(key)).map(mm -> HandBuilt.given(key, mm)));

    private static Blank blankOf(Part part) {
        return Milling.blanks(new HandBuilt(2000, 1000, 1000).with(part).assembly(), ALLOWANCES)
                .get(0);
    }

    private static Part as(Part part, Material.Kind kind, Dim materialThickness, boolean fitted) {
        return new Part(
                part.path(),
                HandBuilt.material(kind, materialThickness),
                part.length(),
                part.width(),
                part.thickness(),
                part.box(),
                part.lie(),
                part.outline(),
                part.turn(),
                Set.of(),
                fitted);
    }

    private static Part board(long length, long width, long thickness) {
        return lying("board", box(0, length, 0, width, 0, thickness));
    }

    private static Sizes sizes(String length, String width, String thickness) {
        return new Sizes(dim(length), dim(width), dim(thickness));
    }

    private static Dim dim(String mm) {
        return Dim.lookedUp(Length.mm(mm), "ruler", mm, "worked by hand");
    }

    @Test
    void aRailIsOneBoardOverItsFinishedSizes() {
        Blank rail = blankOf(board(420, 60, 20));
        assertEquals(sizes("432", "65", "25.4"), rail.rough());
        assertEquals("4/4", rail.roughClass().orElseThrow().name());
        assertEquals(sizes("432", "65", "23"), rail.first());
        assertEquals(sizes("420", "60", "20"), rail.last());
        assertEquals(1, rail.pieces());
        assertEquals(List.of(), rail.notes());
    }

    @Test
    void aPartThickerThanAFourQuarterBoardPlanesToComesFromFiveQuarter() {
        assertEquals(
                "4/4", blankOf(board(420, 60, 20)).roughClass().orElseThrow().name());
        assertEquals(
                "5/4", blankOf(board(420, 60, 21)).roughClass().orElseThrow().name());
        assertEquals(
                "8/4", blankOf(board(420, 60, 44)).roughClass().orElseThrow().name());
    }

    @Test
    void aTopIsGluedUpFromStripsWithBothEdgesTrued() {
        // 850 + 5 = 855 to glue; a strip of 125 gives 121 when both edges are trued; 855 / 121 = 7.07: eight strips
        Blank top = blankOf(board(1600, 850, 25));
        assertEquals(8, top.strips());
        // 855 / 8 = 106.875, and 2 mm off each edge
        assertEquals(Length.mm("110.875"), top.stripWidth().value());
        assertEquals("5/4", top.roughClass().orElseThrow().name());
        assertTrue(
                top.notes().stream().anyMatch(note -> note.contains("sections")),
                top.notes().toString());
    }

    @Test
    void aPartAsWideAsABoardStaysOneBoard() {
        assertEquals(1, blankOf(board(420, 145, 20)).strips());
        assertEquals(2, blankOf(board(420, 146, 20)).strips());
    }

    @Test
    void aPostThickerThanTheThickestBoardIsLaminated() {
        // 120 finished, 3 over: 123; 16/4 gives 95.25, so two layers of 61.5, which 12/4 (69.85) gives
        Blank post = blankOf(board(700, 120, 120));
        assertEquals(2, post.layers());
        assertEquals(Length.mm("61.5"), post.layerThickness().value());
        assertEquals("12/4", post.roughClass().orElseThrow().name());
        assertEquals(Length.mm("123"), post.first().thickness().value());
        assertEquals(2, post.pieces());
    }

    @Test
    void aFittedFrontIsKeptLongInLengthAndWidth() {
        Blank front = blankOf(as(board(420, 120, 20), Material.Kind.SOLID, dim("20"), true));
        assertTrue(front.keptLong());
        assertEquals(sizes("423", "123", "20"), front.last());
        assertEquals(sizes("435", "128", "25.4"), front.rough());
    }

    @Test
    void aSheetPartIsCutToItsFinishedSizeAndAFittedOneOverIt() {
        Part panel = board(600, 400, 12);
        assertEquals(
                sizes("600", "400", "12"),
                blankOf(as(panel, Material.Kind.SHEET, dim("12"), false)).rough());
        Blank fitted = blankOf(as(panel, Material.Kind.SHEET, dim("12"), true));
        assertEquals(sizes("603", "403", "12"), fitted.rough());
        assertTrue(fitted.roughClass().isEmpty());
    }

    @Test
    void aTopTwoSheetsThickIsLaminatedFromTwo() {
        Blank top = blankOf(as(board(600, 400, 36), Material.Kind.SHEET, dim("18"), false));
        assertEquals(2, top.layers());
        assertEquals(Length.mm("18"), top.rough().thickness().value());
    }

    @Test
    void aStickMitredAtBothEndsHasSomethingOverAtEach() {
        Part edging = as(lying("edging", box(0, 500, 0, 20, 0, 20)), Material.Kind.STICK, dim("20"), false);
        HandBuilt lipped = new HandBuilt(500, 400, 20)
                .with(edging)
                .joined(Joint.Kind.MITRE, "edging", "left edging")
                .joined(Joint.Kind.MITRE, "right edging", "edging");
        Blank blank = Milling.blanks(lipped.assembly(), ALLOWANCES).get(0);
        assertEquals(sizes("506", "20", "20"), blank.rough());
        assertEquals(sizes("500", "20", "20"), blank.last());
    }

    @Test
    void aShortPartIsMilledWithAnother() {
        assertTrue(blankOf(board(200, 60, 20)).notes().get(0).startsWith("Too short for the planer"));
    }

    @Test
    void thinPartsComeTwoFromAThickness() {
        // 2 x (8 + 3) + 3.2 of saw cut = 25.2, within the 25.4 of 4/4; at 9 it is 27.2
        assertTrue(blankOf(board(420, 60, 8)).notes().stream().anyMatch(note -> note.contains("resawn")));
        assertFalse(blankOf(board(420, 60, 9)).notes().stream().anyMatch(note -> note.contains("resawn")));
    }

    @Test
    void whatTheBenchHasMeasuredIsAlreadyCut() {
        Part rail = board(420, 60, 20);
        Dim cut = Dim.measured("board / length", rail.length(), Length.mm("420.4"), Tolerance.NONE);
        Part measured = new Part(
                rail.path(),
                rail.material(),
                cut,
                rail.width(),
                rail.thickness(),
                rail.box(),
                rail.lie(),
                rail.outline(),
                rail.turn(),
                Set.of(),
                false);
        assertTrue(blankOf(measured).alreadyCut());
        assertFalse(blankOf(rail).alreadyCut());
    }

    @Test
    void theMakersOwnRoughClassIsTaken() {
        Part rail = board(420, 60, 20);
        Material eightQuarter = new Material(
                "thick cherry",
                Material.Kind.SOLID,
                "black cherry",
                dim("20"),
                Optional.of(Dim.lookedUp(Length.inches(2), "sold as", "8/4", "maker")),
                Optional.empty(),
                Optional.empty(),
                true,
                Optional.empty());
        Part thick = new Part(
                rail.path(),
                eightQuarter,
                rail.length(),
                rail.width(),
                rail.thickness(),
                rail.box(),
                rail.lie(),
                rail.outline(),
                rail.turn(),
                Set.of(),
                false);
        assertEquals("8/4", blankOf(thick).roughClass().orElseThrow().name());
    }
}
