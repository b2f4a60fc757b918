package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
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
    @MethodSource("scantling.joinery.Made#starters")
    void everyFeatureOfEveryStarterMeetsItsMate(String starter) {
        Assembly assembly = Made.assembly(starter);
        assertEquals(List.of(), Mates.mismatches(assembly, Joinery.of(assembly, JointRules.standard())));
    }
}
