package scantling.timber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DensityAndStrengthTest {
    /** Wood Handbook Table 4-6a. */
    @ParameterizedTest
    @CsvSource({"0.60, 12, 672", "0.40, 100, 800"})
    void weighsWhatTheTableOfDensitiesSays(double gravity, double moisture, double expected) {
        assertEquals(expected, Density.ofGravity(gravity, moisture), 1e-9);
    }

    /** Wood Handbook, white ash example: basic .55 gives .605 and 678 kg/m3 at 12 %; Eq. 4-13 itself gives .6027 and 675.0. */
    @Test
    void weighsTheWhiteAshOfTheHandbook() {
        assertEquals(0.6027, Density.gravity(0.55, 12).find().orElseThrow(), 0.00005);
        assertEquals(678, Density.ofBasic(0.55, 12).find().orElseThrow(), 3);
    }

    @Test
    void isAsLargeAsGreenAboveFibreSaturation() {
        assertEquals(0.5, Density.gravity(0.5, 30).find().orElseThrow(), 1e-12);
        assertEquals(0.5, Density.gravity(0.5, 80).find().orElseThrow(), 1e-12);
        assertInstanceOf(Estimate.Refused.class, Density.gravity(0.5, -3));
    }

    @Test
    void worksOutTheDensityOfWoodsThatAreTabulatedGreenOnly() {
        Species mahogany = SpeciesTable.standard().find("mahogany").orElseThrow();
        assertEquals(true, mahogany.mechanics().densityAt12().isEmpty());
        // 1000 * .45 / (1 - .265 * .45 * .6) * 1.12 by hand
        assertEquals(542.8, mahogany.density().orElseThrow(), 0.1);
    }

    /** Wood Handbook, example to Eq. 5-3: white ash, 103,000 kPa at 12 %, 66,000 green, meeting at 24 %: 119,500 at 8 %. */
    @Test
    void isAsStrongAsTheWhiteAshOfTheHandbook() {
        Species ash = SpeciesTable.standard().find("white ash").orElseThrow();
        assertEquals(24, Strength.intersection(ash));
        assertEquals(119_500, strength(8), 50);
        assertEquals(103_000, strength(12), 1e-6);
        assertEquals(66_000, strength(24), 1e-6);
        assertEquals(66_000, strength(40), 1e-6);
    }

    @Test
    void takesTwentyFivePerCentForWoodsThatAreNotListedAndRefusesNonsense() {
        assertEquals(
                25, Strength.intersection(SpeciesTable.standard().find("cherry").orElseThrow()));
        assertInstanceOf(Estimate.Refused.class, Strength.at(100, 60, 12, 8));
        assertInstanceOf(Estimate.Refused.class, Strength.at(100, 60, 25, -1));
    }

    private static double strength(double moisture) {
        return Strength.at(103_000, 66_000, 24, moisture).find().orElseThrow();
    }
}
