package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.feature.Feature;
import scantling.feature.Features;
import scantling.feature.Surface;

/** A dovetailed drawer, set out with a rule. */
class DovetailTest {
    private static Features drawer(String wood) {
        return Made.joined(Made.of("""
            piece: Try-out
            unit: mm
            size: 600 wide, 420 deep, 700 high
            materials:
              oak: {solid: white oak, thickness: 20}
              ply: {sheet: birch plywood, thickness: 18}
              box: {solid: %s, thickness: 12}
              thin: {sheet: birch plywood, thickness: 6}
            build:
              - case: {of: ply}
              - drawers:
                  rows: [rest, 200]
                  fronts: {of: oak}
                  box: {of: box, floor: thin, height: 120, corners: dovetail, runs on: side mount ball-bearing}
            """.formatted(wood)));
    }

    private static Feature at(Features made, String what) {
        return Made.feature(made, "drawers / drawer 2 / box / front to left side / " + what);
    }

    private static String narrow(Feature feature) {
        return Made.range(feature.acrossNarrow());
    }

    /**
     * A corner 120 high: a tail may be 44 wide and has two thirds of its pitch, so two tails at 60 are 40 wide, 20 between
     * them, half pins of 10. Tails are 12 long: at 1 in 6 each side comes in by 2, at 1 in 8 by 1.5 (common practice).
     */
    @ParameterizedTest
    @CsvSource({"eastern white pine, 12-48, 72-108, 9.5", "white oak, 11.5-48.5, 71.5-108.5, 7.1"})
    void tailsSlopeAsTheirWoodAsks(String wood, String first, String second, double degrees) {
        Features made = drawer(wood);
        Feature one = at(made, "tail 1 in left side");
        Feature two = at(made, "tail 2 in left side");
        assertEquals("10-50", Made.range(one.across()));
        assertEquals("70-110", Made.range(two.across()));
        assertEquals(first, narrow(one));
        assertEquals(second, narrow(two));
        assertEquals(Surface.NEAR_END, one.surface());
        assertEquals(Surface.FAR_END, one.taper().orElseThrow().narrow());
        assertEquals(degrees, Objects.requireNonNull(one.setting().angles().get("slope")), 0.05);
    }

    /** Half pins are square at the board's edges; pins are narrow outside and wide inside. */
    @Test
    void pinsAreMarkedOutOnBothFaces() {
        Features made = drawer("eastern white pine");
        Feature half = at(made, "pin 1 in front");
        Feature whole = at(made, "pin 2 in front");
        assertEquals("0-12", Made.range(half.across()));
        assertEquals("0-10", narrow(half));
        assertEquals("48-72", Made.range(whole.across()));
        assertEquals("50-70", narrow(whole));
        assertEquals(
                List.of("12", "10", "20", "12", "24", "40", "60"),
                whole.setting().sizes().values().stream().map(Made::mm).toList());
        assertEquals(
                List.of(
                        "baseline from the end",
                        "half pin outside",
                        "pin outside",
                        "half pin inside",
                        "pin inside",
                        "between two pins outside",
                        "pitch"),
                List.copyOf(whole.setting().sizes().keySet()));
    }
}
