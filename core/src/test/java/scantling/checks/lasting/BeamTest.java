package scantling.checks.lasting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.checks.lasting.Section.Strip;

class BeamTest {
    private static final double PSI = 0.00689475729;
    private static final double INCH = 25.4;

    // Closed forms of elementary beam theory (any strength-of-materials text), written out here and not taken from the
    // table: bending of a beam so stiff in shear that shear is nothing, and the other way round.
    @ParameterizedTest
    @CsvSource({
        "UNIFORM_SUPPORTED, 0.013020833333, 0.125",
        "UNIFORM_CLAMPED, 0.002604166667, 0.125",
        "POINT_SUPPORTED, 0.020833333333, 0.25",
        "POINT_CLAMPED, 0.005208333333, 0.25",
        "TWO_POINTS_MIDSPAN, 0.014322916667, 0.125",
        "TWO_POINTS_UNDER_LOAD, 0.010416666667, 0.125",
        "UNIFORM_CANTILEVER, 0.125, 0.5",
        "POINT_CANTILEVER, 0.333333333333, 1"
    })
    void everyRowOfTheTableGivesItsClosedForm(Loading loading, double bending, double shear) {
        double load = 100;
        double span = 900;
        double onlyBending = new Beam(loading, span, new Section(2e9, 1e30)).deflection(load);
        double onlyShear = new Beam(loading, span, new Section(1e30, 1e6)).deflection(load);
        assertEquals(bending * load * 900 * 900 * 900 / 2e9, onlyBending, 1e-8);
        assertEquals(shear * load * 900 / 1e6, onlyShear, 1e-9);
    }

    // Two loads W/2 at a = L/4: P a (3 L^2 - 4 a^2) / (24 E I) at midspan, P a^2 (3 L - 4 a) / (6 E I) under a load.
    @Test
    void twoPointsAgreeWithTheirTextbookFormula() {
        double p = 50;
        double l = 800;
        double a = 200;
        Section section = new Section(3e9, 1e30);
        double midspan = p * a * (3 * l * l - 4 * a * a) / (24 * 3e9);
        double underLoad = p * a * a * (3 * l - 4 * a) / (6 * 3e9);
        assertEquals(midspan, new Beam(Loading.TWO_POINTS_MIDSPAN, l, section).deflection(2 * p), 1e-9);
        assertEquals(underLoad, new Beam(Loading.TWO_POINTS_UNDER_LOAD, l, section).deflection(2 * p), 1e-9);
    }

    // 36 x 12 x 3/4 in northern red oak, E 1.82e6 psi, 40 lb/ft2: bending .0949 in, shear .0006 in by hand.
    @Test
    void anOakShelfSagsByBendingAndShear() {
        Section section = Section.rectangle(1.82e6 * PSI, 12 * INCH, 0.75 * INCH);
        double load = 120 * 4.4482216;
        double sag = new Beam(Loading.UNIFORM_SUPPORTED, 36 * INCH, section).deflection(load) / INCH;
        assertEquals(0.0949 + 0.0006, sag, 0.0001);
    }

    @Test
    void aRectangleIsBreadthTimesCubeOfDepthOverTwelve() {
        assertEquals(
                10_000.0 * 300 * 8000 / 12, Section.rectangle(10_000, 300, 20).bending(), 1e-3);
    }

    // Parallel axes by hand: board 300 x 18 (E 2,000) and strip 20 x 40 (E 10,000) with its top flush. Axial stiffness
    // 10.8e6 at 9, 8e6 at -2: neutral axis (97.2e6 - 16e6) / 18.8e6 = 4.31915. Then E (I + A d^2) for each.
    @Test
    void aLippedBoardIsTheSumAboutItsNeutralAxis() {
        double axis = 81.2e6 / 18.8e6;
        double board = 2000.0 * 300 * 5832 / 12 + 10.8e6 * (9 - axis) * (9 - axis);
        double strip = 10_000.0 * 20 * 64_000 / 12 + 8e6 * (-2 - axis) * (-2 - axis);
        Section section = Section.of(List.of(new Strip(2000, 300, 18, 0), new Strip(10_000, 20, 40, -22)));
        assertEquals(board + strip, section.bending(), 1);
    }

    @Test
    void twoHalvesGluedTogetherAreOneWhole() {
        Section halves = Section.of(List.of(new Strip(9000, 100, 10, 0), new Strip(9000, 100, 10, 10)));
        assertEquals(Section.rectangle(9000, 100, 20).bending(), halves.bending(), 1e-3);
        assertEquals(Section.rectangle(9000, 100, 20).shear(), halves.shear(), 1e-6);
    }
}
