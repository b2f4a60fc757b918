package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Assembly;
import scantling.construct.Joint;
import scantling.feature.Features;

/** What belongs together on two parts meets in space, wherever they are and however they are marked. */
class MatesTest {
    private static final int PLACEMENTS = 400;

    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"LOOSE_TENON", "DOWEL", "BISCUIT", "SCREW"})
    void partsThatTouchHaveTheirPocketsOppositeEachOther(Joint.Kind kind) {
        Random random = new Random(7);
        long pairs = 0;
        for (int i = 0; i < PLACEMENTS; i++) {
            Assembly assembly = Placed.any(random, kind, false).assembly();
            Features made = Joinery.of(assembly, JointRules.standard());
            assertEquals(List.of(), Mates.mismatches(assembly, made));
            pairs += Mates.pairs(assembly, made);
        }
        assertTrue(pairs > PLACEMENTS / 3, "only " + pairs + " pairs were judged");
    }

    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"MORTISE_AND_TENON", "HAUNCHED", "TONGUE", "DADO", "STOPPED_DADO", "GROOVE", "RABBET"})
    void partsThatEnterOthersFindTheirPlaceCut(Joint.Kind kind) {
        Random random = new Random(11);
        long features = 0;
        for (int i = 0; i < PLACEMENTS; i++) {
            Assembly assembly = Placed.any(random, kind, true).assembly();
            Features made = Joinery.of(assembly, JointRules.standard());
            assertEquals(List.of(), Mates.mismatches(assembly, made));
            features += made.features().size();
        }
        assertTrue(features > PLACEMENTS / 2, "only " + features + " features were judged");
    }

    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"HALF_LAP", "BRIDLE"})
    void lapsAndBridlesTakeAwayWhatTheOtherKeeps(Joint.Kind kind) {
        Random random = new Random(13);
        long pairs = 0;
        for (int i = 0; i < PLACEMENTS; i++) {
            Placed.Corner corner = Placed.Corner.values()[random.nextInt(3)];
            Assembly assembly = Placed.corner(random, kind, corner, true).assembly();
            Features made = Joinery.of(assembly, JointRules.standard());
            assertEquals(List.of(), Mates.mismatches(assembly, made));
            pairs += Mates.pairs(assembly, made);
        }
        assertEquals(PLACEMENTS, pairs);
    }

    @Test
    void theFingersOfABoxJointMeetTheirSockets() {
        Random random = new Random(17);
        for (int i = 0; i < PLACEMENTS; i++) {
            Assembly assembly = Placed.corner(random, Joint.Kind.BOX_JOINT, Placed.Corner.BOX, i % 2 == 0)
                    .assembly();
            Features made = Joinery.of(assembly, JointRules.standard());
            assertEquals(List.of(), Mates.mismatches(assembly, made));
            assertTrue(Mates.pairs(assembly, made) >= 3 || !made.findings().isEmpty());
        }
    }

    /** Tails and pins fill the corner: at the tails' ends and at the baseline their widths come to the board's. */
    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"DOVETAIL", "HALF_BLIND"})
    void tailsAndPinsFillTheCornerAtBothEndsOfTheirSlope(Joint.Kind kind) {
        Random random = new Random(19);
        for (int i = 0; i < PLACEMENTS; i++) {
            Placed placed = Placed.corner(random, kind, Placed.Corner.BOX, i % 2 == 0);
            Assembly assembly = placed.assembly();
            Features made = Joinery.of(assembly, JointRules.standard());
            assertEquals(List.of(), Mates.mismatches(assembly, made));
            assertTrue(Mates.pairs(assembly, made) >= 3);
            double high = placed.entering().width().value().toMillimetres();
            assertEquals(0, Mates.uncovered(assembly, made, high), Mates.TOLERANCE);
        }
    }

    /** The two slots of a slanting key lie on one line, and that is square to the mitre, whatever its angle. */
    @ParameterizedTest
    @EnumSource(
            value = Joint.Kind.class,
            names = {"MITRE", "MITRE_BISCUIT", "MITRE_SPLINE"})
    void slotsAcrossAMitreLieOnOneLineSquareToIt(Joint.Kind kind) {
        Random random = new Random(23);
        int mitred = 0;
        for (int i = 0; i < PLACEMENTS; i++) {
            Assembly assembly =
                    Placed.corner(random, kind, Placed.Corner.BOX, i % 2 == 0).assembly();
            Features made = Joinery.of(assembly, JointRules.standard());
            assertEquals(List.of(), Mates.mismatches(assembly, made));
            if (!made.features().isEmpty()) {
                mitred++;
                assertEquals(0, Mates.worstBend(assembly, made), Mates.TOLERANCE);
            }
        }
        assertTrue(mitred > PLACEMENTS / 4, mitred + " were mitred");
    }

    @ParameterizedTest
    @MethodSource("scantling.joinery.Made#starters")
    void everyFeatureOfEveryStarterMeetsItsMate(String starter) {
        Assembly assembly = Made.assembly(starter);
        assertEquals(List.of(), Mates.mismatches(assembly, Joinery.of(assembly, JointRules.standard())));
    }
}
