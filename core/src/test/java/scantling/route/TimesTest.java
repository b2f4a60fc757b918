package scantling.route;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TimesTest {
    private static Logged dowels(double minutes) {
        return new Logged("dowel", 10, minutes);
    }

    @Test
    void withoutALogTheStandardStands() {
        Times.Standard dowel = Times.standard().of("dowel");
        assertEquals(new Minutes(3, 5, 8), dowel.each());
        assertEquals(0, dowel.observations());
    }

    /** Worked by hand: ten dowel joints by the standard 10 + 50 = 60 min; logged 120, 90, 180: ratios 2, 1.5, 3, median 2. */
    @Test
    void threeObservationsMoveHalfWayToTheirMedianOnALogScale() {
        Times.Standard dowel =
                Times.learned(List.of(dowels(120), dowels(90), dowels(180))).of("dowel");
        assertEquals(3, dowel.observations());
        assertEquals(5 * Math.sqrt(2), dowel.each().likely(), 1e-9);
        assertEquals(10 * Math.sqrt(2), dowel.setUp(), 1e-9);
        // Distances of ln 1.5, ln 2, ln 3 from ln 2: 0.2877, 0, 0.4055; median 0.2877, times 1.4826 is the deviation.
        double observed = 1.2816 * 1.4826 * Math.log(2 / 1.5);
        double up = Math.sqrt((3 * Math.pow(Math.log(8 / 5.0), 2) + 3 * observed * observed) / 6);
        assertEquals(dowel.each().likely() * Math.exp(up), dowel.each().high(), 1e-9);
    }

    @Test
    void manyEvenTimesNarrowTheSpreadAndOneOutlierDoesNotMoveTheMedian() {
        List<Logged> log =
                IntStream.range(0, 40).mapToObj(k -> dowels(k == 7 ? 900 : 60)).toList();
        Times.Standard dowel = Times.learned(log).of("dowel");
        assertEquals(5, dowel.each().likely(), 1e-9);
        assertTrue(dowel.each().high() < 6, dowel::toString);
    }

    @Test
    void nothingIsLearnedFromNothing() {
        assertThrows(IllegalArgumentException.class, () -> new Logged("dowel", 0, 10));
        assertThrows(IllegalArgumentException.class, () -> new Logged("dowel", 1, -3));
        assertThrows(IllegalArgumentException.class, () -> new Minutes(3, 2, 4));
    }

    private static Operation operation(String work) {
        return new Operation(
                work,
                Step.DRILL,
                work,
                List.of("part"),
                List.of(),
                List.of(),
                work,
                1,
                new Minutes(10, 20, 35),
                0,
                Pause.NONE,
                Needs.HANDS,
                List.of(),
                List.of());
    }

    /** By hand: of one kind of work down 10 each, (20 x 20 + 200) / 2 = 300; of two kinds 200; up 15 each, 675 and 450. */
    @Test
    void whatIsAlikeGoesWrongTogetherHalfTheWay() {
        Minutes alike = Marks.of(List.of(operation("dowel"), operation("dowel")));
        assertEquals(40 - Math.sqrt(300), alike.low(), 1e-9);
        assertEquals(40 + Math.sqrt(675), alike.high(), 1e-9);
        Minutes apart = Marks.of(List.of(operation("dowel"), operation("rip")));
        assertEquals(40 - Math.sqrt(200), apart.low(), 1e-9);
        assertEquals(40 + Math.sqrt(450), apart.high(), 1e-9);
    }
}
