package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.construct.Assembly;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Surface;

/** The bedside chest, worked out by hand. */
class ChestTest {
    private final Assembly chest = Made.assembly("bedside-chest");
    private final Features joined = Made.joined(chest);

    /**
     * Bottom rail 20 x 80 on a stile 30 x 40, flush inside. A third of 20 is 6.67 (Noyes, Handwork in Wood, no. 42), the
     * nearest bit 6. From below a shoulder of an eighth, 10; from above the rabbet of 10 and 3 of wood: 10 to 67. The
     * front rail's 8 mm dowels stand in the middle of its 20, from 6 to 14 behind the front; with 3 of wood between, the
     * mortise may come to 17, that is 23 deep in 40: a tenon of 22 and 1 for glue.
     */
    @Test
    void theBottomRailHasALooseTenonClearOfTheRabbetAndTheDowels() {
        String joint = "left end / bottom rail to front stile";
        Feature rail = Made.feature(joined, joint + " / loose tenon in bottom rail");
        Feature stile = Made.feature(joined, joint + " / loose tenon in front stile");
        assertEquals("0-23, 10-67, 7-13", Made.place(rail));
        assertEquals("70-127, 17-40, 17-23", Made.place(stile));
        assertEquals(Surface.NEAR_END, rail.surface());
        assertEquals(Surface.BACK_EDGE, stile.surface());
        assertEquals("3", Made.mm(rail.radius().orElseThrow()));
    }

    /** Both are flush inside, so one fence height serves both: half of the rail's 20. */
    @Test
    void oneFenceHeightServesRailAndStile() {
        String joint = "left end / bottom rail to front stile";
        for (String part : List.of("bottom rail", "front stile")) {
            Feature mortise = Made.feature(joined, joint + " / loose tenon in " + part);
            assertEquals("10", Made.size(mortise, "fence height from back side"));
            assertEquals("23", Made.size(mortise, "depth stop"));
        }
    }

    /** The maker said corners of 6, so the bit's radius is 6 and the panel's corners are rounded to match. */
    @Test
    void theRabbetForThePanelSaysHowItsCornersComeOut() {
        Feature rabbet = Made.feature(joined, "left end / panel to front stile / rabbet in front stile");
        assertEquals("130-552, 30-40, 17-30", Made.place(rabbet));
        assertEquals("6", Made.mm(rabbet.radius().orElseThrow()));
        assertEquals(
                List.of(
                        "3 passes, at most 6.0 mm deep each.",
                        "Routed from inside the glued frame with a bit of radius 6.0; the corners stay round, the"
                                + " panel's corners are rounded to the same 6.0 mm."),
                rabbet.setting().notes());
    }

    /** Four 5 mm dowels a corner in a 12 mm box (common practice), the lowest below the floor's groove at 13 to 19. */
    @Test
    void aDrawerCornerHasFourDowelsClearOfTheGroove() {
        List<Feature> holes = joined.features().stream()
                .filter(each -> each.owner().equals("drawers / drawer 1 / box / front to left side"))
                .filter(each -> each.part().endsWith("front"))
                .toList();
        assertEquals(
                List.of("5-10", "38.5-43.5", "69.5-74.5", "100.5-105.5"),
                holes.stream().map(each -> Made.range(each.across())).toList());
    }

    /** The core is 18 thick, so its slots are 9 below its face; edging that shall stand 0.2 proud is cut at 9.2. */
    @Test
    void theEdgingIsCutWithTheFenceHigherByWhatItStandsProud() {
        String joint = "top / front lipping to core";
        Feature core = Made.feature(joined, joint + " / biscuit 1 in core");
        Feature edging = Made.feature(joined, joint + " / biscuit 1 in front lipping");
        assertEquals("9", Made.size(core, "fence height from face side"));
        assertEquals("9.2", Made.size(edging, "fence height from back edge"));
        assertEquals("32-88, 0-12.3, 7-11", Made.place(core));
        assertEquals(
                "All slots in the core first, with the fence at 9.0 mm; only then reset it to 9.2 mm for the edging.",
                core.setting().notes().get(1));
        assertEquals(
                "After all slots in the core: the fence goes from 9.0 mm to 9.2 mm. The edging stands 0.2 mm proud;"
                        + " leave it at least 18.2 mm wide, and plane off 0.2 mm when the glue is hard.",
                edging.setting().notes().get(1));
    }
}
