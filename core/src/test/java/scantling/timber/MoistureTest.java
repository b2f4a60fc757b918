package scantling.timber;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoistureTest {
    /** Wood Handbook FPL-GTR-190 (2010) Table 4-2, 30 to 200 F, printed to 0.1 %. */
    @Test
    void comesWithinSixHundredthsOfEveryPrintedCell() {
        List<CSVRecord> cells = PublishedTable.read("emc-table.csv");
        assertEquals(342, cells.size());
        assertAll(cells.stream()
                .map(cell -> () -> assertEquals(
                        Double.parseDouble(cell.get("emc_pct")),
                        equilibrium(
                                Moisture.celsius(Double.parseDouble(cell.get("temp_f"))),
                                Double.parseDouble(cell.get("rh_pct"))),
                        0.06,
                        cell::toString)));
    }

    /** Eq. 4-5 worked apart from this program, at 20 C, 70 F and 5 C. */
    @ParameterizedTest
    @CsvSource({
        "20, 20, 4.507",
        "20, 40, 7.722",
        "20, 65, 11.996",
        "20, 80, 16.037",
        "20, 100, 28.838",
        "5, 50, 9.513",
        "5, 85, 18.470"
    })
    void givesWhatTheEquationGivesByHand(double celsius, double humidity, double expected) {
        assertEquals(expected, equilibrium(celsius, humidity), 0.001);
    }

    @Test
    void neverFallsAsTheAirGetsDamper() {
        for (int humidity = 0; humidity < 100; humidity++) {
            assertTrue(equilibrium(20, humidity) < equilibrium(20, humidity + 1));
        }
        assertEquals(0, equilibrium(20, 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {130, -1, Double.NaN})
    void refusesAnImpossibleHumidityWithASentence(double humidity) {
        var refused = assertInstanceOf(Estimate.Refused.class, Moisture.equilibrium(20, humidity));
        assertTrue(refused.reason().contains("between 0 and 100"), refused.reason());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, 150, Double.NaN})
    void refusesATemperatureOutsideThePublishedRange(double celsius) {
        var refused = assertInstanceOf(Estimate.Refused.class, Moisture.equilibrium(celsius, 50));
        assertTrue(refused.reason().contains("30 to 270 F"), refused.reason());
    }

    @Test
    void warnsOutsideTheTabulatedHumidity() {
        assertEquals(List.of(), Moisture.equilibrium(20, 95).remarks());
        assertEquals(
                List.of("98 % relative humidity lies outside the published table (5 to 95 %)."),
                Moisture.equilibrium(20, 98).remarks());
    }

    /** Wood Handbook Eq. 4-3: 268.4 % at 0.30, 46.2 % at 0.90. */
    @Test
    void knowsHowMuchWaterWoodCanHold() {
        assertEquals(268.4, Moisture.most(0.30), 0.05);
        assertEquals(46.2, Moisture.most(0.90), 0.05);
    }

    private static double equilibrium(double celsius, double humidity) {
        return Moisture.equilibrium(celsius, humidity).find().orElseThrow();
    }
}
