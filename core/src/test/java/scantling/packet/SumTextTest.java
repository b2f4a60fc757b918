package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Rounding;
import scantling.measure.Span;
import scantling.measure.Tolerance;

class SumTextTest {
    private final SumText text = new SumText(LengthFormat.MM);
    private final Dim width = Dim.given(Length.mm(900), "width", "900", new Span(2, 7, 20, 23));
    private final Dim gap = Dim.lookedUp(Length.mm(2), "gaps", "drawer gap", "common practice");

    @Test
    void eachMakingReadsInOneLine() {
        assertEquals("given as 900, line 2, column 7", text.of(width));
        assertEquals("from gaps, drawer gap (common practice)", text.of(gap));
        assertEquals(
                "width 900.0 - 2 × drawer gap 2.0", text.of(width.minus(gap).minus(gap)));
        assertEquals("1/3 of width 900.0", text.of(width.share(1, 3)));
        assertEquals("the smaller of drawer gap 2.0, width 900.0", text.of(Dim.smallerOf(width, gap)));
        assertEquals("width 900.0 rounded up to 7.0 mm", text.of(width.rounded(Length.mm(7), Rounding.UP)));
        assertEquals("the corner the piece is measured from", text.of(Dim.ZERO));
    }

    @Test
    void aMeasuredNumberStillSaysWhatThePlanSaid() {
        Dim measured = Dim.measured("opening / width", width, Length.mm(898), Tolerance.NONE);
        assertEquals("measured at the bench; by the plan 900.0", text.of(measured));
    }

    @Test
    void whatIsBuiltOnAShareShowsTheShareInsideIt() {
        assertEquals(
                "(1/2 of width 900.0) + drawer gap 2.0", text.of(width.half().plus(gap)));
    }
}
