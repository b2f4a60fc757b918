package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.construct.Finding;
import scantling.feature.Features;
import scantling.stock.HardwareProfiles;

/** What cannot be fitted is told with both parts, the numbers and the nearest thing that works. */
class BadInputTest {
    @Test
    void aHingeThatClashesWithAShelfSaysWhereItIsClear() {
        // Shelf from 100 to 118 above the floor; hinge 80 above the door's end at 20: 100, its plate from 75 to 125.
        Made made = Made.of("500 wide, 400 deep, 700 high", """
            - case: {of: ply}
            - doors: {count: 1, of: oak, hinges from ends: 80}
            - shelves: {of: ply, heights: [100]}
            """);
        List<String> told = made.findings("doors / door / hinges");
        assertEquals(1, told.size(), told::toString);
        assertTrue(told.get(0).contains("doors / door / board"), told.get(0));
        assertTrue(told.get(0).contains("runs into shelf, which reaches from 100.0 mm to 118.0 mm"), told.get(0));
        // 118 + 25 (half a plate) - 20 = 123 is past the 120 that still holds the corner; 100 - 25 - 20 = 55 is not.
        assertTrue(told.get(0).endsWith("Say hinges from ends: 55.0 mm, the nearest that is clear."), told.get(0));
    }

    @Test
    void aHingeThatNobodyPlacedMovesClearOfTheShelfByItself() {
        Made made = Made.of("500 wide, 400 deep, 700 high", """
            - case: {of: ply}
            - doors: {count: 1, of: oak}
            - shelves: {of: ply, heights: [100]}
            """);
        assertEquals(List.of(), made.findings("doors / door / hinges"));
        assertTrue(made.features().choices().stream()
                .anyMatch(choice -> choice.sentence().contains("55.0 mm from its ends. Moved clear")));
    }

    @Test
    void aDrawerLowerThanItsSlideIsAStop() {
        Made made = Made.of("500 wide, 450 deep, 90 high", """
            - case: {of: ply}
            - drawers: {rows: [rest], fronts: {of: oak}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """);
        List<String> told = made.findings("drawers / drawer 1 / slides");
        assertTrue(
                told.get(0)
                        .startsWith("STOP drawers / drawer 1 / box / left side is 41.3 mm high, and the slide on it is"
                                + " 45.0 mm high."),
                told::toString);
    }

    /** Two grooves of floor at 6 up on 6 of floor: a box of 24; 3 above it on wood: 27, and there are 20 less 4 of gaps. */
    @Test
    void anOpeningTooLowEvenForABoxOnWoodIsAStopWithTheHeightThatWorks() {
        Made made = Made.of("500 wide, 450 deep, 56 high", """
            - case: {of: ply}
            - drawers: {rows: [rest], fronts: {of: oak, set: inset}, box: {of: box, floor: thin}}
            """);
        List<String> told = made.assembly().findings().stream()
                .map(each -> each.severity() + " " + each.sentence() + " " + each.remedy())
                .toList();
        assertEquals(1, told.size(), told::toString);
        assertEquals(
                "STOP No drawer box goes between bottom and top behind drawers / drawer 1 / front: there are 20.0 mm,"
                        + " and even on wood it takes 27.0 mm: 0.0 mm below, 3.0 mm above and 24.0 mm for a box that holds"
                        + " its floor. It is planned with its front alone: make the row 7.0 mm higher, which takes a box"
                        + " on wood, or leave the front fixed.",
                told.get(0));
        assertTrue(
                made.assembly().parts().stream().noneMatch(part -> part.path().contains(" / box / ")));
    }

    @Test
    void aSlideWithNoWoodBesideItIsAStop() {
        Made made = Made.of("500 wide, 450 deep, 300 high", """
            - board: {of: ply, on: bottom}
            - board: {of: ply, on: top}
            - drawers: {rows: [rest], fronts: {of: oak}, box: {of: box, floor: thin}}
            """);
        assertTrue(
                made.findings("drawers / drawer 1 / slides").stream()
                        .anyMatch(told ->
                                told.startsWith("STOP None of the holes of drawers / drawer 1 / slides on the left")),
                () -> made.features().findings().toString());
    }

    @Test
    void holesNearerThanThreeMillimetresNameBoth() {
        // The shelf's pins and the slides of a drawer behind the divider meet in 18 mm of board.
        HardwareProfiles deep = HardwareProfiles.standard();
        Made made = Made.of("900 wide, 450 deep, 400 high", """
            - case: {of: ply}
            - columns:
                sizes: [rest, 400]
                divider: ply
                spaces:
                  - name: left
                    build: [shelves: {of: ply, heights: [60], held: pins, set back: 20}]
                  - name: right
                    build:
                      - drawers: {rows: [rest], fronts: {of: oak}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """);
        List<Finding> told = HoleCheck.check(made.assembly(), made.features(), deep);
        assertEquals(List.of(), told, "spare holes give way, and the shelf's own do not touch");
        Made other = Made.of("900 wide, 450 deep, 400 high", """
            - case: {of: ply}
            - columns:
                sizes: [rest, 400]
                divider: ply
                spaces:
                  - name: left
                    build: [shelves: {of: ply, heights: [50], held: pins, set back: 20}]
                  - name: right
                    build:
                      - drawers: {rows: [rest], fronts: {of: oak}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """);
        // Pin at 18 + 50 - 18 - 2.5 = 47.5, slide at 18 + 6.35 + 22.5 = 46.85, both 57 behind the front.
        List<String> clash = other.findings("left / adjustable shelf / pins");
        assertEquals(1, clash.size(), clash::toString);
        assertTrue(clash.get(0).contains("in divider"), clash.get(0));
        assertTrue(clash.get(0).contains("runs into right / drawers / drawer 1 / slides / left hole 1"), clash.get(0));
    }

    @Test
    void featuresOfAnyOwnerAreLookedAtTogether() {
        Made made = Made.of(
                "600 wide, 400 deep, 700 high", "- case: {of: ply}\n- shelves: {of: ply, count: 1, held: pins}");
        Features twice = made.features().and(shifted(made));
        List<Finding> told = HoleCheck.check(made.assembly(), twice, HardwareProfiles.standard());
        assertTrue(told.stream().anyMatch(finding -> finding.sentence().contains("run into each other in left side")));
    }

    /** The same holes, asked for by someone else. */
    private static Features shifted(Made made) {
        return new Features(
                made.features().features().stream()
                        .map(feature -> new scantling.feature.Feature(
                                feature.path() + " again",
                                feature.part(),
                                "another",
                                feature.kind(),
                                feature.surface(),
                                feature.along(),
                                feature.across(),
                                feature.through(),
                                feature.radius(),
                                feature.setting()))
                        .toList(),
                List.of(),
                List.of());
    }

    @Test
    void aDoorWiderThanItsHingesAreApartIsToldToSag() {
        Made made = Made.of("700 wide, 400 deep, 400 high", "- case: {of: ply}\n- doors: {count: 1, of: oak}");
        assertTrue(made.findings("doors / door / hinges").stream()
                .anyMatch(told -> told.contains("apart, and the door is 660.0 mm wide")));
    }

    @Test
    void aThickDoorNeedsMoreGapThanItsNeighbourLeaves() {
        // Hinge maker's table: 30 mm doors want 5.4 mm; two cases side by side with 16 of 18 overlaid leave 4.
        Made made = Made.of("""
            piece: test
            unit: mm
            size: 1200 wide, 400 deep, 700 high
            materials: {ply: {sheet: birch plywood, thickness: 18}, oak: {solid: white oak, thickness: 30}}
            build:
              - columns:
                  sizes: 2 equal
                  each:
                    - case: {of: ply, set back: 30}
                    - doors: {count: 2, of: oak, set: overlay}
            """);
        assertTrue(
                made.findings("column 2 / doors / left door / hinges").stream()
                        .anyMatch(told -> told.contains(
                                "needs 5.4 mm beside its hinges to open and has 4.0 mm to column 1 / doors /"
                                        + " right door / board")),
                () -> made.features().findings().toString());
    }

    @Test
    void aDoorThatStrikesWhatStandsBeforeItSaysAtWhichAngle() {
        Made made = Made.of("600 wide, 700 deep, 700 high", """
            - loose: {name: post, of: oak, length: 600, width: 40, at: {across: 400, deep: 0, up: 20}, along: up, thick: deep}
            - case: {of: ply, set back: 300}
            - doors: {count: 1, of: oak}
            """);
        // The post ends at 20; the door's face is at 300: 280 before it, and 440 - 20 = 420 along: atan(280 / 420) =
        // 33.7.
        assertTrue(
                made.findings("doors / door / hinges").stream()
                        .anyMatch(told -> told.contains("strikes post when it has opened about 34 degrees")),
                () -> made.features().findings().toString());
    }
}
