package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.feature.Withdrawal;
import scantling.feature.WoodScrew;
import scantling.measure.Dim;
import scantling.measure.Length;

/** What screws hold, against published figures. */
class WithdrawalTest {
    private static Dim inches(double inches) {
        return Dim.worked(Length.ofMillimetres(inches * 25.4), "test");
    }

    /** Engineering reference page "Wood Screws - Withdrawal Force": G .45, D .190 in, prints 109 lb per inch (109.65). */
    @Test
    void theDesignLoadOfANumberTenScrewIsTheReferencePages() {
        Withdrawal load = Withdrawal.of(0.45, inches(0.190), inches(1));
        assertEquals(109.65, load.design() / 4.4482216, 0.6);
    }

    /** Wood Handbook Eq. 8-10 in inch-pound units: p = 15,700 G^2 D L. */
    @ParameterizedTest
    @CsvSource({"0.68, 1192", "0.63, 1023", "0.42, 455", "0.35, 316"})
    void aNumberEightScrewDrawsOutWhereTheHandbooksEquationSays(double gravity, double pounds) {
        Withdrawal load = Withdrawal.of(gravity, WoodScrew.of(8).shank(), inches(1));
        assertEquals(15_700 * gravity * gravity * 4.17 / 25.4, load.ultimate() / 4.4482216, 0.005 * pounds);
        assertEquals(pounds, load.ultimate() / 4.4482216, 0.005 * pounds);
    }
}
