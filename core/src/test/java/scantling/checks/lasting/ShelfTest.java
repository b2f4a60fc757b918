package scantling.checks.lasting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfTest {
    private static final double PSI = 0.00689475729;
    private static final double INCH = 25.4;
    private static final SagRule WOODWORK = SagRule.all().get(0);
    private static final SagRule CABINET = SagRule.all().get(1);
    private static final SagRule EYE = SagRule.all().get(2);

    private static Shelf shelf(double psi, double thickInches, double spanInches) {
        return new Shelf(psi * PSI, 12 * INCH, thickInches * INCH, spanInches * INCH, List.of(), 2);
    }

    // Architectural Woodwork Standards ed. 1 (2009) p. 279: greatest shelf length in whole inches.
    @ParameterizedTest
    @CsvSource({
        "0.95e6, 0.75, 40, 40",
        "0.95e6, 0.75, 50, 37",
        "0.95e6, 1, 40, 53",
        "1.8e6, 0.75, 40, 49",
        "1.8e6, 0.75, 50, 46",
        "1.8e6, 1, 50, 61",
        "1.82e6, 0.75, 40, 49",
        "1.82e6, 0.75, 50, 46",
        "1.82e6, 1, 50, 61"
    })
    void theGreatestSpanIsThePublishedOneWithinAnInch(double psi, double thick, double load, double printed) {
        double span = shelf(psi, thick, 30)
                        .greatestSpan(WOODWORK, SagRule.pascal(load))
                        .orElseThrow()
                / INCH;
        assertEquals(printed, span, 1);
    }

    // AWS L/144 of 36 in is 1/4 in; ANSI/KCMA A161.1 gives 3/16 in there, and 1/4 in is its cap from 48 in on.
    @Test
    void theLimitsOfDifferentPublishersAreKeptApart() {
        assertEquals(0.25, WOODWORK.allowed(36 * INCH) / INCH, 1e-9);
        assertEquals(0.1875, CABINET.allowed(36 * INCH) / INCH, 1e-9);
        assertEquals(0.25, CABINET.allowed(60 * INCH) / INCH, 1e-9);
    }

    // ANSI/KCMA A161.1 prints 15 lb/ft2 as 718 Pa.
    @Test
    void fifteenPoundsOnAFootAreThePrintedPascal() {
        assertEquals(718, SagRule.pascal(15), 0.5);
    }

    @Test
    void whatIsSolvedForJustKeepsTheRule() {
        Shelf shelf = shelf(0.32e6, 0.75, 48);
        double load = SagRule.pascal(40);
        assertFalse(shelf.keeps(WOODWORK, load));
        double thick = shelf.leastThickness(WOODWORK, load).orElseThrow();
        double span = shelf.greatestSpan(WOODWORK, load).orElseThrow();
        assertEquals(thick * thick * thick / Math.pow(0.75 * INCH, 3), Math.pow(48 * INCH / span, 3), 0.02);
        assertTrue(shelf(0.32e6, thick / INCH + 0.001, 48).keeps(WOODWORK, load));
        assertFalse(shelf(0.32e6, thick / INCH - 0.001, 48).keeps(WOODWORK, load));
    }

    @Test
    void aDeeperLippingKeepsWhatTheBareBoardDoesNot() {
        Shelf shelf = shelf(0.32e6, 0.75, 40);
        double load = SagRule.pascal(40);
        double deep = shelf.lippingDepth(WOODWORK, load).orElseThrow();
        assertTrue(deep > 0.75 * INCH && deep < 60, () -> "depth " + deep);
    }

    // GTR-190 p. 5-37: after years the whole is about twice the first deflection.
    @Test
    void yearsDoubleTheSagOfSolidWood() {
        Shelf shelf = shelf(1.82e6, 0.75, 36);
        assertEquals(2 * shelf.sag(718, false), shelf.sag(718, true), 1e-9);
        assertEquals(shelf.sag(EYE.load().orElseThrow(), true), shelf.sag(EYE, 0), 1e-9);
    }
}
