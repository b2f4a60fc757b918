package scantling.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DimTest {
    private static final Tolerance SAW = new Tolerance(Length.mm("0.2"), "cut to a stop");
    private static final Tolerance RULE = new Tolerance(Length.mm("0.1"), "measured at the bench");
    private final Dim width = given("width", 500, 1);
    private final Dim leg = given("leg", 40, 2);
    private final Dim slides = Dim.lookedUp(Length.mm(42), "slides", "concealed undermount", "common practice");

    private static Dim given(String label, long mm, int line) {
        return Dim.given(Length.mm(mm), label, mm + "", new Span(line, 1, line * 10, line * 10 + 3));
    }

    @Test
    void likeTermsAreCollectedSoThatASumReadsAsOneWouldSayIt() {
        Dim between = width.minus(leg).minus(leg);
        assertEquals(Length.mm(420), between.value());
        assertEquals("420.0 = width 500.0 - 2 x leg 40.0", new Explain(LengthFormat.MM).line(between));
    }

    @Test
    void whatIsAddedAndTakenAwayAgainLeavesNoTrace() {
        assertSame(width.making(), width.plus(leg).minus(leg).making());
        assertSame(Dim.ZERO.making(), width.minus(width).making());
    }

    @Test
    void twoNumbersOfTheSameSizeFromDifferentPlacesAreNotOne() {
        Dim otherLeg = given("other leg", 40, 3);
        Dim difference = leg.minus(otherLeg);
        assertEquals(Length.ZERO, difference.value());
        assertEquals("0.0 = leg 40.0 - other leg 40.0", new Explain(LengthFormat.MM).line(difference));
    }

    @Test
    void theTreeGoesDownToWhatWasTypedOrLookedUp() {
        Dim opening = Dim.named("opening / width", width.minus(leg.times(2)), Tolerance.NONE);
        Dim inside = Dim.named("box / inside width", opening.minus(slides), Tolerance.NONE);
        assertEquals("""
            box / inside width 378.0 = opening / width 420.0 - concealed undermount 42.0
              opening / width 420.0 = width 500.0 - 2 x leg 40.0
                width 500.0 given on line 1, column 1, "500"
                leg 40.0 given on line 2, column 1, "40"
              concealed undermount 42.0 from slides, concealed undermount (common practice)\
            """, new Explain(LengthFormat.MM).tree(inside));
    }

    @Test
    void aMeasuredNumberKeepsItsPlanAndMovesWhatIsBuiltOnIt() {
        Ledger ledger = new Ledger(Map.of("opening / width", Length.mm("419.2")), Map.of(), RULE);
        Dim opening = ledger.name("opening / width", width.minus(leg.times(2)));
        assertEquals(Length.mm("377.2"), opening.minus(slides).value());
        assertEquals(Length.mm(420), opening.planned().value());
        assertEquals("opening / width 419.2 measured (by the plan 420.0)", new Explain(LengthFormat.MM).line(opening));
    }

    @Test
    void aNumberTheMakerSetsReplacesItsSumAndSaysSo() {
        Ledger ledger = new Ledger(Map.of(), Map.of("front / width", given("sizes", 149, 9)), RULE);
        Dim front = ledger.name("front / width", given("row", 150, 4), SAW);
        assertEquals(Length.mm(149), front.value());
        assertEquals(
                "front / width 149.0 set to 149.0 on line 9, column 1 (by its sum 150.0)",
                new Explain(LengthFormat.MM).line(front));
    }

    @Test
    void aNameIsGivenOnce() {
        Ledger ledger = new Ledger(Map.of(), Map.of(), RULE);
        ledger.name("rail / length", width);
        assertThrows(IllegalStateException.class, () -> ledger.name("rail / length", leg));
    }

    @Test
    void sensitivityCountsEveryWayASourceActs() {
        Dim shelf = width.minus(leg.times(2)).share(1, 2);
        Sensitivity sensitivity = Sensitivity.toSources(shelf);
        assertEquals(0.5, sensitivity.of(width));
        assertEquals(-1, sensitivity.of(leg));
        assertEquals(0, sensitivity.of(slides));
    }

    /** Against finite differences: an outside judge of the derivative. */
    @Test
    void sensitivityAgreesWithMovingASourceALittle() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 300; i++) {
            long seed = random.nextLong();
            Dim at = build(seed, 0);
            Dim moved = build(seed, 1000);
            double difference = (moved.value().tenthNanometres() - at.value().tenthNanometres()) / 1000.0;
            Dim source = given("a", 300, 1);
            assertEquals(difference, Sensitivity.toSources(at).of(source), 0.02);
        }
    }

    private static Dim build(long seed, long move) {
        SplittableRandom random = new SplittableRandom(seed);
        Dim a = Dim.given(Length.mm(300).plus(new Length(move)), "a", "300", new Span(1, 1, 10, 13));
        List<Dim> pool = new ArrayList<>(List.of(a, given("b", 70, 2), given("c", 1900, 3)));
        for (int i = 0; i < 8; i++) {
            Dim x = pool.get(random.nextInt(pool.size()));
            Dim y = pool.get(random.nextInt(pool.size()));
            pool.add(
                    switch (random.nextInt(4)) {
                        case 0 -> x.plus(y);
                        case 1 -> x.minus(y.times(2));
                        case 2 -> x.share(1, 1 + random.nextInt(4));
                        default -> Dim.named("n" + i, x, Tolerance.NONE);
                    });
        }
        return pool.get(pool.size() - 1);
    }

    @Test
    void independentErrorsAddAtTheirWorstAndAsTheRootOfTheirSquares() {
        Dim left = Dim.named("left / thickness", given("t", 20, 4), SAW);
        Dim right = Dim.named("right / thickness", given("u", 20, 5), SAW);
        Sensitivity.Spread spread = Sensitivity.tolerance(width.minus(left).minus(right));
        assertEquals(Length.mm("0.4"), spread.worstCase());
        assertEquals(0.2 * Math.sqrt(2), spread.rootSumSquare().toMillimetres(), 1e-6);
    }

    @Test
    void aMeasuredOpeningHidesTheErrorsOfWhatBoundsIt() {
        Ledger ledger = new Ledger(Map.of("opening", Length.mm(460)), Map.of(), RULE);
        Dim side = ledger.name("side", given("t", 20, 4), SAW);
        Dim opening = ledger.name("opening", width.minus(side.times(2)));
        assertEquals(RULE.halfRange(), Sensitivity.tolerance(opening).worstCase());
    }

    @Test
    void aSlopeIsTheLongSideOfASquareTriangle() {
        Dim slope = Dim.slope(given("run", 30, 1), given("rise", 40, 2));
        assertEquals(Length.mm(50), slope.value());
        assertEquals(0.6, Sensitivity.toSources(slope).effects().get(0).effect(), 1e-12);
        assertTrue(new Explain(LengthFormat.MM).line(slope).contains("run 30.0, rise 40.0"));
    }

    @Test
    void roundingAndChoosingSayWhatTheyStartedFrom() {
        Explain explain = new Explain(LengthFormat.MM);
        Dim third = width.share(1, 3).rounded(Length.mm(1), Rounding.DOWN);
        assertEquals("166.0 = (1/3 of width 500.0) rounded down to 1.0 mm", explain.line(third));
        assertEquals(
                "500.0 = the larger of width 500.0, leg 40.0",
                explain.line(Dim.largerOf(leg, width)).replace("width 500.0 =", "500.0 ="));
    }
}
