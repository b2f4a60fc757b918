package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.feature.Feature;

/**
 * Cases drilled on the 32 mm system, against its published rules: 5 mm holes 32 mm apart, the front row 37 mm behind the
 * edge, or behind an inset door, rows a multiple of 32 mm apart (pages on 32 mm cabinetmaking).
 */
class SystemTest {
    private static final String OVERLAY = """
        - case: {of: ply, holes: 32 mm system, set back: 20, joint: dowel}
        - doors: {count: 1, of: oak, set: overlay}
        - shelves: {of: ply, count: 2, held: pins, set back: 5}
        """;

    private static List<Feature> holes(Made made, String part) {
        return made.features().features().stream()
                .filter(feature -> feature.part().equals(part) && feature.kind() == Feature.Kind.HOLE)
                .toList();
    }

    private static double from37(Feature hole, double first) {
        return Math.abs((Made.middle(hole.across()) - first) % 32);
    }

    @Test
    void everyHoleInASideLiesOnItsRows() {
        Made made = Made.of("600 wide, 400 deep, 720 high", OVERLAY);
        List<Feature> holes = holes(made, "left side");
        // 720 = 2 x 40 + 20 x 32: rows begin 40 from either end.
        assertTrue(holes.size() > 12);
        for (Feature hole : holes) {
            assertEquals(0, (Made.middle(hole.along()) - 40) % 32, 1e-6, hole.path());
            assertEquals(0, from37(hole, 37), 1e-6, hole.path());
            assertEquals(5, Made.mm(hole.radius().orElseThrow()) * 2, 1e-6);
        }
    }

    @Test
    void insetDoorsMoveTheFrontRowBackByTheirThickness() {
        Made made = Made.of("600 wide, 400 deep, 720 high", """
            - case: {of: ply, holes: 32 mm system, joint: dowel}
            - doors: {count: 1, of: oak, set: inset}
            - shelves: {of: ply, count: 2, held: pins}
            """);
        double front = holes(made, "left side").stream()
                .mapToDouble(hole -> Made.middle(hole.across()))
                .min()
                .orElseThrow();
        assertEquals(37 + 20, front, 1e-6);
    }

    @Test
    void theSideIsDrilledTheSameEitherWayUp() {
        Made made = Made.of("600 wide, 400 deep, 605 high", OVERLAY);
        Grid grid = Grid.of(made.part("left side"), scantling.stock.HardwareProfiles.standard());
        double first = Made.mm(grid.first());
        assertEquals(first, 605 - (first + 32 * grid.pitches()), 1e-6, "as far from the top as from the bottom");
    }

    @Test
    void slidesShareTheRows() {
        Made made = Made.of("600 wide, 500 deep, 720 high", """
            - case: {of: ply, holes: 32 mm system, joint: dowel}
            - drawers:
                rows: [160, 224, rest]
                gap: 3
                fronts: {of: oak, set: inset}
                box: {of: box, floor: thin, runs on: side mount ball-bearing}
            """);
        List<Feature> holes = holes(made, "left side");
        assertEquals(9, holes.size());
        for (Feature hole : holes) {
            assertEquals(0, (Made.middle(hole.along()) - 40) % 32, 1e-6, hole.path());
            assertEquals(0, from37(hole, 57), 1e-6, hole.path());
        }
    }

    @Test
    void holesOfTheSlideAndOfTheBoxStayOnOneLine() {
        Made made = Made.of("600 wide, 500 deep, 720 high", """
            - case: {of: ply, holes: 32 mm system, joint: dowel}
            - drawers: {rows: [200, rest], fronts: {of: oak}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """);
        for (int drawer : new int[] {1, 2}) {
            String path = "drawers / drawer " + drawer;
            double line = up(made, path + " / slides", "left side");
            assertEquals(line, up(made, path + " / slides", path + " / box / left side"), 1e-6);
        }
    }

    private static double up(Made made, String owner, String part) {
        Feature hole = made.owned(owner).stream()
                .filter(feature -> feature.part().equals(part))
                .findFirst()
                .orElseThrow();
        return Made.mm(hole.inSpace(made.part(part)).bottom())
                + Made.mm(hole.radius().orElseThrow());
    }

    /** Common practice: 5 mm system screws leave less play in a punched slide than pan-head screws. */
    @Test
    void systemScrewsAreUsedAndBoughtWhereTheSystemIsAskedFor() {
        Made made = Made.of("500 wide, 450 deep, 605 high", """
            - case: {of: oak, holes: 32 mm system}
            - drawers: {rows: [rest], fronts: {of: oak}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """);
        String slides = "drawers / drawer 1 / slides";
        assertTrue(
                made.owned(slides).stream()
                        .filter(hole -> hole.part().equals("left side"))
                        .allMatch(hole -> hole.setting().tool().equals("brad-point bit 5.0 mm")),
                slides);
        String why = made.features().choices().stream()
                .filter(choice -> choice.owner().equals(slides))
                .map(choice -> choice.sentence())
                .findFirst()
                .orElseThrow();
        assertTrue(why.contains("drilled on the 32 mm system: they leave less play in a punched slide"), why);
        assertTrue(made.features().fixings().stream()
                .anyMatch(
                        supply -> supply.owner().equals(slides) && supply.what().equals("system screw")));
    }

    /** In a case of solid wood that nobody asked to be drilled so, they get wood screws, by gauge and wood. */
    @Test
    void aFreelyDrilledSolidCaseTakesWoodScrews() {
        Made made = Made.of("500 wide, 450 deep, 605 high", """
            - case: {of: oak}
            - drawers: {rows: [rest], fronts: {of: oak}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """);
        assertTrue(made.features().choices().stream()
                .filter(choice -> choice.owner().equals("drawers / drawer 1 / slides"))
                .anyMatch(choice -> choice.sentence().startsWith("Wood screws no. 6 in pilots of 2.2 mm")));
    }

    @Test
    void concealedSlidesOffTheRowsSayTheNearestRow() {
        Made made = Made.of("600 wide, 500 deep, 720 high", """
            - case: {of: ply, holes: 32 mm system, joint: dowel}
            - drawers: {rows: [200, rest], fronts: {of: oak}, box: {of: box, floor: thin}}
            """);
        // The lower drawer's holes: 18 + 14 + 23 = 55; rows are at 40 and 72.
        assertEquals(
                List.of("NOTE The holes of drawers / drawer 2 / slides lie at 55.0 mm, which is no row of the 32 mm"
                        + " system in left side; the nearest row is at 40.0 mm. Drill these free, or move the"
                        + " drawer down by 15.0 mm: make the row below it so much lower."),
                made.findings("drawers / drawer 2 / slides"));
    }
}
