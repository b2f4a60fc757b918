package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Holes worked out with a rule on paper from the sizes of the starters; the sums stand beside them. */
class HandWorkedTest {
    private static final String DRAWER = "drawers / drawer 1 / slides";
    private final Made chest = Made.starter("bedside-chest");
    private final Made sideboard = Made.starter("sideboard");

    @Test
    void slideOfTheChestsFirstDrawer() {
        // Floor of the opening: 620 - 18 - 20 (rail) - 2 - 130 - 2 = 448. Line of the holes: 448 + 14 + 23 = 485.
        // The panel begins at 60 + 80 - 9 (lap in the rail: 10 less 1) = 131, so along = 485 - 131 = 354.
        // Back of the front: 12 + 20 = 32; first hole 32 + 37 = 69, last 69 + 9 x 32 = 357 = 32 + 350 - 25.
        // The panel's edge is at 12 + 40 - 9 = 43, so across = 26 and 314. Depth: 12.6 - 3 = 9.6.
        assertEquals(
                List.of(
                        "left hole 1: hole 5 in back side, along 354, across 26, deep 9.6",
                        "left hole 2: hole 5 in back side, along 354, across 314, deep 9.6"),
                chest.on("left end / panel", DRAWER));
    }

    @Test
    void bothEndsOfTheChestAreDrilledAlike() {
        assertEquals(
                chest.on("left end / panel", DRAWER).stream()
                        .map(hole -> hole.replace("left", "right"))
                        .toList(),
                chest.on("right end / panel", DRAWER));
    }

    @Test
    void backOfTheChestsFirstDrawer() {
        // The back stands between the sides: 500 - 2 x 8 - 2 x 30 = 424 opening, 424 - 42 = 382 long.
        // Notches 31.75 x 13 at both ends; hooks 7 in from the sides and 13 + 11 = 24 above the lower edge.
        assertEquals(
                List.of(
                        "left notch: notch - in face edge, along 15.875, across 6.5, deep 13",
                        "left hook hole: hole 6 in face side, along 7, across 24, deep 10",
                        "right notch: notch - in face edge, along 366.125, across 6.5, deep 13",
                        "right hook hole: hole 6 in face side, along 375, across 24, deep 10"),
                chest.on("drawers / drawer 1 / box / back", DRAWER));
    }

    @Test
    void cupsInTheSideboardsLeftDoor() {
        // Gap 2 inside the case: -2 = 13 + B - 0 - 19, so B = 4 and the cup is 4 + 17.5 = 21.5 from the edge.
        // Its screws are 9.5 further in, 31, and 22.5 above and below it. The door is 830 - 18 - 98 - 2 x 2 = 710 high.
        // 80 from the ends would put a plate of the right door 2.9 from a screw of the upper drawer's slide on the
        // other face of the divider (812 - 2 - 120 - 2 + 6.35 + 22.5 = 716.85 against 810 - 80 - 16 = 714);
        // at 86 it is 708, and hypot(8.85, 1.5) - 5 = 3.98 of wood stays between. Both doors follow.
        assertEquals(
                List.of(
                        "cup 1: hole 35 in back side, along 86, across 21.5, deep 13",
                        "cup 1 lower screw: hole 2.1844 in back side, along 63.5, across 31, deep 10",
                        "cup 1 upper screw: hole 2.1844 in back side, along 108.5, across 31, deep 10",
                        "cup 2: hole 35 in back side, along 624, across 21.5, deep 13",
                        "cup 2 lower screw: hole 2.1844 in back side, along 601.5, across 31, deep 10",
                        "cup 2 upper screw: hole 2.1844 in back side, along 646.5, across 31, deep 10"),
                sideboard.on("left / doors / left door / left stile", "left / doors / left door / hinges"));
    }

    @Test
    void platesOfTheSideboardsLeftDoor() {
        // The door's lower end is 98 + 2 - 80 = 20 above the side's. Middles at 20 + 86 = 106 and 730 - 86 = 644,
        // holes 16 above and below; row 20 (door) + 37 + 1.5 = 58.5 behind the front edge.
        assertEquals(
                List.of(
                        "plate 1 lower hole: hole 5 in back side, along 90, across 58.5, deep 12",
                        "plate 1 upper hole: hole 5 in back side, along 122, across 58.5, deep 12",
                        "plate 2 lower hole: hole 5 in back side, along 628, across 58.5, deep 12",
                        "plate 2 upper hole: hole 5 in back side, along 660, across 58.5, deep 12"),
                sideboard.on("left side", "left / doors / left door / hinges"));
    }

    @Test
    void bothDoorsOfTheSideboardHaveTheirHingesAtTheSameHeight() {
        assertEquals(List.of("106", "644"), heights("left / doors / left door / hinges", "left side"));
        // The divider is let 6 deeper: it begins 12 above the case, so its holes are 12 less from its near end.
        assertEquals(List.of("94", "632"), heights("left / doors / right door / hinges", "divider"));
    }

    private List<String> heights(String owner, String part) {
        return sideboard.owned(owner).stream()
                .filter(feature -> feature.part().equals(part) && feature.path().endsWith("lower hole"))
                .map(feature -> Double.toString(Made.middle(feature.along()) + 16))
                .map(text -> text.replace(".0", ""))
                .toList();
    }
}
