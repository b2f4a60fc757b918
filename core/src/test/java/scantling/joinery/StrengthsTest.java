package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import scantling.construct.Joint;
import scantling.feature.Features;
import scantling.measure.Unit;

/**
 * What joints are said to bear, against Eckelman, Uysal and Haviarova 2016, BioResources 11(3):7162: rails 22.2 x 63.5 with
 * a tenon 32 x 38 x 9.5, PVA; red oak 353 N m on average, standard deviation 48, 266 at 95|95; white oak 358, 62, 240.
 */
class StrengthsTest {
    /** Placed parts are of white oak. */
    private static Meeting whiteOak(double rail) {
        Placed placed = new Placed(
                Placed.part(
                        "rail",
                        new double[] {0, 0, 100},
                        new double[] {400, 22.2, 100 + rail},
                        scantling.space.Lie.along(scantling.space.Axis.ACROSS, scantling.space.Side.FRONT)),
                Placed.part(
                        "stile",
                        new double[] {-60, 0, 0},
                        new double[] {0, 22.2, 900},
                        scantling.space.Lie.along(scantling.space.Axis.UP, scantling.space.Side.FRONT)),
                new Joint("rail to stile", Joint.Kind.LOOSE_TENON, "rail", "stile", Optional.empty(), Map.of()),
                Unit.MM);
        return Meeting.find(placed.joint(), placed.entering(), placed.receiving(), Placed.mm(1))
                .orElseThrow();
    }

    private static int estimate(String told) {
        Matcher said = Pattern.compile("an estimate of (\\d+) N m").matcher(told);
        assertTrue(said.find(), told);
        return Integer.parseInt(said.group(1));
    }

    @Test
    void theTestedJointItselfComesToItsPrintedLowerLimit() {
        String told = Strengths.tenon(whiteOak(63.5), Placed.mm(9.5), Placed.mm(38), Placed.mm(32));
        assertEquals(240, estimate(told));
        assertTrue(
                told.contains("tenon in white oak, bore 358 on average (standard deviation 62) and 240 at its lower"
                        + " tolerance limit"),
                told);
        assertTrue(told.endsWith("Not a promise."), told);
    }

    @ParameterizedTest
    @CsvSource({"63.5, 12, 60, 60", "200, 9.5, 150, 40", "400, 20, 100, 50"})
    void aLargerJointIsPromisedNoMore(double rail, double thick, double wide, double into) {
        assertEquals(
                240, estimate(Strengths.tenon(whiteOak(rail), Placed.mm(thick), Placed.mm(wide), Placed.mm(into))));
    }

    /** Half as long and half as wide: a quarter. */
    @Test
    void aSmallerOneIsPromisedLessInProportion() {
        assertEquals(60, estimate(Strengths.tenon(whiteOak(63.5), Placed.mm(9.5), Placed.mm(19), Placed.mm(16))));
    }

    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"DOWEL", "BISCUIT", "POCKET_SCREW"})
    void whatNobodyPublishedIsNotInvented(Joint.Kind kind) {
        Meeting at = whiteOak(100);
        Features made = Joinery.of(
                new Placed(
                                at.entering(),
                                at.receiving(),
                                new Joint("rail to stile", kind, "rail", "stile", Optional.empty(), Map.of()),
                                Unit.MM)
                        .assembly(),
                JointRules.standard());
        assertTrue(made.choices().get(0).sentence().endsWith(Strengths.UNKNOWN), made.choices()::toString);
    }
}
