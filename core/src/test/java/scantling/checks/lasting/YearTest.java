package scantling.checks.lasting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import scantling.construct.Assembly;
import scantling.space.Axis;
import scantling.space.Side;

class YearTest {
    private static Assembly chest() {
        return new Made("Chest")
                .part(
                        "drawer 1 / front",
                        Made.solid("sugar maple"),
                        Axis.ACROSS,
                        Side.FRONT,
                        Made.box(0, 400, 0, 20, 2, 198))
                .opening("drawer 1 / opening", Made.box(0, 402, 0, 300, 0, 200), "drawer 1 / front")
                .assembly();
    }

    // Eq. 4-5 at 23 C and 60 %: 10.9 %; Eq. 13-2: 196 x .00353 x 2.9 = 2.0 mm of the 4.0 are gone in July and August.
    @Test
    void theGapOfAnInsetFrontIsKnownMonthByMonth() {
        Year year = Year.of(chest()).orElseThrow();
        assertEquals(12, year.moisture().size());
        assertEquals(10.9, year.moisture().get(7), 0.05);
        double august = Parts.mm(year.curves().get(1).each().get(7));
        double february = Parts.mm(year.curves().get(1).each().get(1));
        assertEquals(4 - 196 * 0.00353 * 2.9, august, 0.05);
        assertTrue(february > 4.5, () -> "" + february);
    }

    @Test
    void theRestingRangeStandsBesideTheYear() {
        assertTrue(Year.of(chest()).orElseThrow().rest().contains("near 8.7 %"));
    }
}
