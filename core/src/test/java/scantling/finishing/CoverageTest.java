package scantling.finishing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against printed coverage examples. */
class CoverageTest {
    private static final double MICRONS_PER_MIL = 25.4;
    /** A US gallon of 231 cubic inches in litres over a square foot in square metres, both exact by definition. */
    private static final double FT2_PER_GALLON = 3.785411784 / 0.09290304;

    /** Coatings sheet 'Spreading Rate' (.65, 5 mil); WOODWEB 2001 (.25, half, 1 mil); Ron Joseph, paint trade column (.52, .30, 1.5 mil); data sheet of a varnish (2.9 mil wet, 1.3 dry). */
    @ParameterizedTest
    @CsvSource({
        "0.65, 1, 5, 208.52",
        "0.25, 0.5, 1, 200.5",
        "0.52, 0.30, 1.5, 166.8",
        "1, 1, 10, 160.417",
        "0.448, 1, 1.3, 553"
    })
    void coversAsPrintedInSquareFeetToTheGallon(double solids, double transfer, double mils, double printed) {
        double metric = Coverage.squareMetresPerLitre(solids, transfer, mils * MICRONS_PER_MIL);
        assertEquals(printed, metric * FT2_PER_GALLON, printed * 0.0005);
    }

    /** Coatings sheet 'Spreading Rate': 65 % solids, 125 micrometres, 5.2 m2/L. */
    @Test
    void coversAsPrintedInSquareMetresToTheLitre() {
        assertEquals(5.2, Coverage.squareMetresPerLitre(0.65, 1, 125), 1e-9);
    }

    /** Data sheet of a polyurethane varnish: 2.9 mil wet, 1.3 mil dry. */
    @Test
    void theWetFilmIsTheDryOneOverItsSolids() {
        assertEquals(2.9, Coverage.wetFilm(1.3, 0.448, 0), 0.005);
        assertEquals(2.9 * 1.1, Coverage.wetFilm(1.3, 0.448, 0.1), 0.01);
    }

    /** The published varnish again, through the table of coats: 553 ft2 to the gallon, less what stays in the brush. */
    @Test
    void theTableGivesThePublishedSpreadOfAVarnish() {
        Coat varnish = CoatTable.standard().find("polyurethane varnish").orElseThrow();
        Method brush = Method.find("brush").orElseThrow();
        double likely = Coverage.spread(varnish, brush, 0).orElseThrow().likely();
        assertEquals(553, likely * FT2_PER_GALLON / brush.transfer().likely(), 3);
    }

    @Test
    void thinningLowersTheSolids() {
        Coat lacquer = CoatTable.standard().find("waterborne lacquer").orElseThrow();
        Method gun = Method.find("hvlp").orElseThrow();
        double whole = Coverage.spread(lacquer, gun, 0).orElseThrow().likely();
        assertEquals(
                whole / 1.25, Coverage.spread(lacquer, gun, 0.25).orElseThrow().likely(), 1e-9);
    }

    /** By hand: a fan of 200 mm lapping half moves on by 100: 200 wide is one pass, 500 wide is 1 + 3. */
    @Test
    void passesOfAGunAreCountedByItsLap() {
        Method gun = Method.find("hvlp").orElseThrow();
        assertEquals(List.of(1, 1, 2, 4), List.of(gun.passes(20), gun.passes(200), gun.passes(201), gun.passes(500)));
        assertEquals(0, Method.find("brush").orElseThrow().passes(500));
    }

    @Test
    void tinsHoldWhatIsNeeded() {
        assertEquals(List.of(), Buying.tins(0));
        assertEquals(List.of(0.25), Buying.tins(0.2));
        assertEquals(List.of(1.0), Buying.tins(0.51));
        assertEquals(List.of(5.0, 0.5), Buying.tins(5.3));
    }
}
