package scantling.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Tolerance;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** Worst case and root-sum-square as tolerance stacks are added by hand (any text on tolerance stacks). */
class FitsTest {
    private static final Tolerance STOP = new Tolerance(Length.mm("0.3"), "cut to a stop");
    private static final Tolerance FENCE = new Tolerance(Length.mm("0.4"), "ripped to a fence");

    /** An opening between two sides 400 apart, the rail that sets it cut to 0.3; a front of 396 ripped to 0.4. */
    private static Assembly chest() {
        Dim opening = Dim.named("rail / length", HandBuilt.given("rail", 400), STOP);
        Dim front = Dim.named("front / length", HandBuilt.given("front", 396), FENCE);
        Dim left = HandBuilt.given(2);
        Box space = new Box(Dim.ZERO, opening, Dim.ZERO, HandBuilt.given(300), Dim.ZERO, HandBuilt.given(150));
        Box box = new Box(
                left, left.plus(front), Dim.ZERO, HandBuilt.given(20), HandBuilt.given(2), HandBuilt.given(148));
        Part part = HandBuilt.part("front", box, Lie.along(Axis.ACROSS, Side.FRONT));
        return new HandBuilt(400, 300, 150)
                .with(part)
                .opening("opening", space, "front")
                .assembly();
    }

    private static Fits.Fit fit(Fits.Kind kind, Axis axis) {
        return Fits.of(chest()).stream()
                .filter(fit -> fit.kind() == kind && fit.axis() == axis)
                .findFirst()
                .orElseThrow();
    }

    // 400 - 396 = 4; worst .3 + .4 = .7; root of .09 + .16 = .5.
    @Test
    void aRevealKnowsItsWorstAndItsUsualError() {
        Fits.Fit reveal = fit(Fits.Kind.REVEAL, Axis.ACROSS);
        assertEquals(Length.mm(4), reveal.planned().value());
        assertEquals(0.7, reveal.spread().worstCase().toMillimetres(), 1e-9);
        assertEquals(0.5, reveal.spread().rootSumSquare().toMillimetres(), 1e-9);
        assertTrue(!reveal.mayVanish());
    }

    // The front is glued on behind a frame planed to 20 within .3: flush by plan, off by .3 at worst.
    @Test
    void aFaceMeantToBeFlushIsAFitOfItsOwn() {
        Dim frame = Dim.named("frame / thickness", HandBuilt.given("frame", 20), STOP);
        Box space =
                new Box(Dim.ZERO, HandBuilt.given(400), frame, HandBuilt.given(300), Dim.ZERO, HandBuilt.given(150));
        Part part = HandBuilt.part("front", HandBuilt.box(2, 398, 20, 40, 2, 148), Lie.along(Axis.ACROSS, Side.FRONT));
        Fits.Fit flush =
                Fits.of(new HandBuilt(400, 300, 150)
                                .with(part)
                                .opening("opening", space, "front")
                                .assembly())
                        .stream()
                        .filter(fit -> fit.kind() == Fits.Kind.FLUSHNESS)
                        .findFirst()
                        .orElseThrow();
        assertEquals(0.3, flush.spread().worstCase().toMillimetres(), 1e-9);
    }

    @Test
    void edgingThatMustCloseAGapIsBetterLeftLong() {
        Dim sum = HandBuilt.given("width", 900);
        for (int i = 0; i < 4; i++) {
            sum = sum.minus(Dim.named("board " + i, HandBuilt.given("board", 20), STOP));
        }
        Dim length = Dim.named("edging / length", sum, STOP);
        Box box = new Box(Dim.ZERO, length, Dim.ZERO, HandBuilt.given(20), Dim.ZERO, HandBuilt.given(20));
        Part plain = HandBuilt.part("edging", box, Lie.along(Axis.ACROSS, Side.FRONT));
        Assembly assembly = new HandBuilt(900, 20, 20).with(plain).assembly();
        var note = FitCheck.check(assembly).get(0);
        assertEquals("left long", note.rule());
        assertTrue(note.sentence().contains("1.2 mm"), note.sentence());
        assertEquals(
                List.of(),
                FitCheck.check(chest()).stream()
                        .filter(found -> found.rule().equals("left long"))
                        .toList());
    }
}
