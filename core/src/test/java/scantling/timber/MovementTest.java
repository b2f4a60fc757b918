package scantling.timber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;

class MovementTest {
    /** Wood Handbook, example to Eq. 13-2: a flat-sawn white fir board 232 mm wide goes from 8 to 11 %: 1.7 mm. */
    @Test
    void swellsTheWhiteFirBoardOfTheHandbook() {
        Length change = Movement.change(Length.mm(232), wood("white fir"), Sawn.FLAT, 8, 11)
                .orElseThrow();
        assertEquals(1.7052, change.toMillimetres(), 0.0001);
        assertEquals(1.712, 232 * value(Movement.wide(7.0, 8, 11)), 0.0005);
    }

    /** Wood Handbook: mesquite, 5 in, coefficient .00129, 6 to 9 %: 0.019 in. */
    @Test
    void swellsTheMesquiteBoardOfTheHandbook() {
        assertEquals(0.01935, 5 * value(Movement.linear(0.00129, 6, 9)), 1e-9);
    }

    /** Interior range 6 to 10 % with the coefficients of Table 13-5, by hand. */
    @ParameterizedTest
    @CsvSource({
        "red oak, FLAT, 12, 6, 10, 0.177",
        "black cherry, FLAT, 12, 6, 10, 0.119",
        "black cherry, MIXED, 12, 6, 10, 0.119",
        "black cherry, QUARTER, 12, 6, 10, 0.060",
        "hard maple, FLAT, 24, 6, 9, 0.254",
        "hard maple, FLAT, 24, 9, 6, -0.254"
    })
    void movesKnownWoodsByTheirCoefficient(
            String wood, Sawn sawn, double inches, double from, double to, double expected) {
        assertEquals(expected, inches * value(Movement.strain(wood(wood), sawn, from, to)), 0.0005);
    }

    /** Wood Handbook Eq. 13-3 from 10 % by one per cent is the printed coefficient: red alder .00256, .00151; beech .00431. */
    @ParameterizedTest
    @CsvSource({"7.3, 0.00256", "4.4, 0.00151", "11.9, 0.00431"})
    void theWideFormAgreesWithThePrintedCoefficients(double shrinkage, double coefficient) {
        assertEquals(coefficient, value(Movement.wide(shrinkage, 10, 11)), 5e-6);
    }

    @Test
    void shrinksByTheWholeTabulatedShrinkageFromGreenToDry() {
        assertEquals(-0.071, value(Movement.wide(7.1, 30, 0)), 1e-12);
    }

    @Test
    void takesTheWideFormOutsideSixToFourteenPerCent() {
        Species cherry = wood("black cherry");
        assertEquals(Movement.wide(7.1, 4, 12), Movement.strain(cherry, Sawn.FLAT, 4, 12));
        assertEquals(Movement.wide(3.7, 8, 18), Movement.strain(cherry, Sawn.QUARTER, 8, 18));
        assertEquals(Movement.linear(0.00248, 6, 14), Movement.strain(cherry, Sawn.FLAT, 6, 14));
    }

    @Test
    void doesNotMoveAboveFibreSaturationAndSaysSo() {
        Estimate estimate = Movement.strain(wood("black cherry"), Sawn.FLAT, 30, 60);
        assertEquals(0, value(estimate));
        assertEquals(1, estimate.remarks().size());
    }

    @Test
    void usesShrinkageWhereNoCoefficientIsTabulatedAndRefusesWhereNeitherIs() {
        Species spruce = wood("white spruce");
        assertEquals(OptionalDouble.empty(), spruce.shrinkage().tangentialCoefficient());
        assertEquals(Movement.wide(8.2, 7, 9), Movement.strain(spruce, Sawn.FLAT, 7, 9));
        OptionalDouble none = OptionalDouble.empty();
        Species bare = new Species(
                "bog oak",
                List.of(),
                "",
                "",
                spruce.mechanics(),
                new Species.Shrinkage(none, none, none, none),
                "own",
                "no",
                List.of(),
                "");
        var refused = assertInstanceOf(Estimate.Refused.class, Movement.strain(bare, Sawn.FLAT, 7, 9));
        assertTrue(refused.reason().contains("bog oak"), refused.reason());
        assertEquals(Optional.empty(), Movement.change(Length.mm(100), bare, Sawn.FLAT, 7, 9));
    }

    @ParameterizedTest
    @CsvSource({"-1, 8", "8, -1", "NaN, 8"})
    void refusesAnImpossibleMoistureContent(double from, double to) {
        assertInstanceOf(Estimate.Refused.class, Movement.strain(wood("black cherry"), Sawn.FLAT, from, to));
    }

    @Test
    void aChangeRemembersItsWidthAndFormula() {
        Dim width = Dim.lookedUp(Length.mm(500), "test", "top width", "test");
        Dim change =
                Movement.change(width, wood("black cherry"), Sawn.FLAT, 7, 11).orElseThrow();
        assertEquals(500 * 0.00248 * 4, change.value().toMillimetres(), 1e-6);
        var made = assertInstanceOf(Making.Worked.class, change.making());
        assertEquals(
                "movement of black cherry (flat sawn) from 7 to 11 % moisture, Wood Handbook Eq. 13-2", made.rule());
        assertEquals(width, made.inputs().get(0).dim());
    }

    private static Species wood(String name) {
        return SpeciesTable.standard().find(name).orElseThrow();
    }

    private static double value(Estimate estimate) {
        return estimate.find().orElseThrow();
    }
}
