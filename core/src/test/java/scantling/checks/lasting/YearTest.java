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

    // Rails do not move along their grain: a framed door grows by its two stiles, 2 x 60 x .00353 x 2.9 = 1.2 mm by
    // August.
    @Test
    void aFramedDoorGrowsByItsStilesAlone() {
        Made doors = new Made("Press")
                .part(
                        "door / left stile",
                        Made.solid("sugar maple"),
                        Axis.UP,
                        Side.FRONT,
                        Made.box(2, 62, 0, 20, 2, 598))
                .part(
                        "door / right stile",
                        Made.solid("sugar maple"),
                        Axis.UP,
                        Side.FRONT,
                        Made.box(338, 398, 0, 20, 2, 598))
                .part(
                        "door / top rail",
                        Made.solid("sugar maple"),
                        Axis.ACROSS,
                        Side.FRONT,
                        Made.box(62, 338, 0, 20, 538, 598))
                .opening(
                        "door / opening",
                        Made.box(0, 400, 0, 300, 0, 600),
                        "door / left stile",
                        "door / right stile",
                        "door / top rail");
        Year.Curve gaps = Year.gaps(doors.assembly()).get(0);
        assertEquals("door", gaps.words());
        assertEquals(4 - 2 * 60 * 0.00353 * 2.9, Parts.mm(gaps.each().get(7)), 0.03);
    }

    @Test
    void everyInsetFrontHasItsYear() {
        Made two = new Made("Chest");
        for (int i = 0; i < 2; i++) {
            two.part(
                            "drawer %d / front".formatted(i + 1),
                            Made.solid("sugar maple"),
                            Axis.ACROSS,
                            Side.FRONT,
                            Made.box(0, 400, 0, 20, 200 * i + 2, 200 * i + 150 + 48 * i))
                    .opening(
                            "drawer %d / opening".formatted(i + 1),
                            Made.box(0, 402, 0, 300, 200 * i, 200 * i + 152 + 48 * i),
                            "drawer %d / front".formatted(i + 1));
        }
        assertEquals(2, Year.gaps(two.assembly()).size());
        assertEquals(12, Year.gaps(two.assembly()).get(1).each().size());
    }

    // Wood Handbook Eq. 13-2: 200 x .00353 a per cent; the widest moves most and stands first.
    @Test
    void everySolidPartIsListedWithItsYear() {
        Moves.Row row = Moves.of(chest()).get(0);
        assertEquals("drawer 1 / front", row.moving().part().path());
        assertEquals(196 * 0.00353 * 2.9, Parts.mm(row.moving().growth()), 0.05);
    }
}
