package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.plan.Plan;

/** Drilling charts against charts set out with a rule. */
class DrillingChartTest {
    private static List<String> chart(Made made, String part) {
        return DrillingChart.of(made.part(part), made.features().features()).rows().stream()
                .map(row -> "%s, %s, deep %s, fence %s from %s: %s from %s"
                        .formatted(
                                row.surface().words(),
                                row.bit(),
                                Made.plain(row.depth()),
                                Made.plain(row.fence()),
                                row.fenceAt().words(),
                                row.holes().stream()
                                        .map(hole -> Made.plain(hole.at()))
                                        .collect(Collectors.joining(" ")),
                                row.from().words()))
                .toList();
    }

    @Test
    void theChestsEndPanelIsDrilledWithTwoFenceSettings() {
        // Lines of the three slides above the floor: 140 + 14 + 23 = 177 less the rail's 2 under the opening is not
        // there: openings begin at 448, 296 and 140, so 485, 333 and 177; the panel begins at 131: 354, 202, 46.
        assertEquals(
                List.of(
                        "back side, brad-point bit 5.0 mm, deep 9.6, fence 26 from face edge: 46 202 354 from near end",
                        "back side, brad-point bit 5.0 mm, deep 9.6, fence 314 from face edge: 46 202 354 from near"
                                + " end"),
                chart(Made.starter("bedside-chest"), "left end / panel"));
    }

    @Test
    void theSideboardsDoorStileIsBoredWithThreeSettings() {
        assertEquals(
                List.of(
                        "back side, flat-bottomed bit 35.0 mm, deep 13, fence 21.5 from face edge: 86 624 from near"
                                + " end",
                        "back side, twist bit 2.2 mm, deep 10, fence 31 from face edge: 63.5 108.5 601.5 646.5 from"
                                + " near end"),
                chart(Made.starter("sideboard"), "left / doors / left door / left stile"));
    }

    @Test
    void theSideboardsLeftSideTakesPlatesAndPinsWithThreeFenceSettings() {
        // Pins: shelf at 446, 2.5 below it and 80 up the side: 363.5, and 32 and 64 up and down; rows 20 + 37 and
        // 444 - 1 - 37 behind the front.
        assertEquals(
                List.of(
                        "back side, brad-point bit 5.0 mm, deep 12, fence 57 from face edge: 299.5 331.5 363.5 395.5"
                                + " 427.5 from near end",
                        "back side, brad-point bit 5.0 mm, deep 12, fence 58.5 from face edge: 90 122 628 660 from"
                                + " near end",
                        "back side, brad-point bit 5.0 mm, deep 12, fence 406 from face edge: 299.5 331.5 363.5 395.5"
                                + " 427.5 from near end"),
                chart(Made.starter("sideboard"), "left side"));
    }

    /** Dowels in a line across the end of a side are drilled along a fence at that end, not one by one from the edge. */
    @Test
    void aLineAcrossThePartHasItsFenceAtTheEnd() {
        Plan plan = Made.planned("500 wide, 400 deep, 700 high", "- case: {of: ply, joint: dowel}");
        Part side = plan.assembly().parts().stream()
                .filter(part -> part.path().equals("left side"))
                .findFirst()
                .orElseThrow();
        List<DrillingChart.Row> rows = DrillingChart.of(side, plan.features().features()).rows().stream()
                .filter(row -> row.bit().startsWith("brad-point"))
                .toList();
        assertEquals(2, rows.size(), rows::toString);
        rows.forEach(row -> assertEquals(Surface.NEAR_END, row.fenceAt()));
        rows.forEach(row -> assertEquals(Surface.FACE_EDGE, row.from()));
    }

    @Test
    void noSettingStandsTwiceAndNoHoleIsLost() {
        Made kitchen = Made.starter("kitchen");
        kitchen.assembly().parts().forEach(part -> {
            DrillingChart chart = DrillingChart.of(part, kitchen.features().features());
            List<String> settings = chart.rows().stream()
                    .map(row -> "%s %s %s %s %s"
                            .formatted(row.surface(), row.bit(), row.depth(), row.fence(), row.fenceAt()))
                    .toList();
            assertEquals(settings.stream().distinct().toList(), settings);
            long holes = kitchen.features().features().stream()
                    .filter(feature -> feature.part().equals(part.path())
                            && feature.kind().words().equals("hole"))
                    .count();
            assertEquals(
                    holes,
                    chart.rows().stream().mapToInt(row -> row.holes().size()).sum());
        });
        assertTrue(kitchen.features().features().size() > 200);
    }
}
