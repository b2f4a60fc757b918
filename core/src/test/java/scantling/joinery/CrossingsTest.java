package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.feature.Features;
import scantling.measure.Unit;
import scantling.piece.Piece;
import scantling.space.Axis;
import scantling.space.Lie;
import scantling.space.Side;

/** Cuts of two joints that come too near to each other inside one part. */
class CrossingsTest {
    private static Part part(String path, double[] low, double[] high, Lie lie) {
        return Placed.part(path, low, high, lie);
    }

    private static Joint joint(Joint.Kind kind, String one, String two) {
        return new Joint(one + " to " + two, kind, one, two, Optional.empty(), Map.of());
    }

    private static Features made(List<Part> parts, Joint... joints) {
        Piece piece = new Piece(
                "crossing",
                Optional.empty(),
                Unit.MM,
                Placed.mm(900),
                Placed.mm(900),
                Placed.mm(900),
                Map.of(),
                List.of(),
                Map.of(),
                Map.of(),
                "");
        return Joinery.of(
                new Assembly(piece, parts, List.of(joints), List.of(), List.of(), Map.of(), List.of()),
                JointRules.standard());
    }

    /** A divider 18 thick between two shelves at one height, each so deep in it. */
    private static Features shelves(double deep) {
        return made(
                List.of(
                        part("left shelf", new double[] {0, 0, 300}, new double[] {400 + deep, 300, 318}, LEVEL),
                        part("divider", new double[] {400, 0, 0}, new double[] {418, 300, 700}, UPRIGHT),
                        part("right shelf", new double[] {418 - deep, 0, 300}, new double[] {800, 300, 318}, LEVEL)),
                joint(Joint.Kind.DADO, "left shelf", "divider"),
                joint(Joint.Kind.DADO, "right shelf", "divider"));
    }

    private static final Lie LEVEL = Lie.along(Axis.ACROSS, Side.TOP);
    private static final Lie UPRIGHT = Lie.along(Axis.UP, Side.LEFT);

    /** 18 - 6 - 6 = 6 stay: well. 18 - 8 - 8 = 2: too little by 1. */
    @Test
    void dadosFromBothSidesOfADividerLeaveAWallOrAreTold() {
        assertEquals(List.of(), shelves(6).findings());
        Finding told = shelves(8).findings().get(0);
        assertEquals(Finding.Severity.CAUTION, told.severity());
        assertEquals(
                "The dado of left shelf to divider and the dado of right shelf to divider leave only 2.0 mm of wood"
                        + " between them in divider.",
                told.sentence());
        assertEquals("Make the two 1.0 mm shallower together, or divider thicker.", told.remedy());
    }

    @Test
    void dadosThatMeetAreAStop() {
        Finding told = shelves(9).findings().stream()
                .filter(finding -> finding.sentence().contains("run into each other"))
                .findFirst()
                .orElseThrow();
        assertEquals(Finding.Severity.STOP, told.severity());
    }

    /**
     * A leg of 40 and two rails 20 thick, flush outside, tenons 32 long. Third of 20 is 6.67: bit 6, so the first mortise
     * takes 7 to 13 behind the outer face. The second comes from the other side: 40 - 13 = 27 to it, less 3 of wood and 1
     * for glue: 23.
     */
    @Test
    void tenonsThatMeetInALegNameBothAndTheLengthThatClears() {
        Features made = made(
                List.of(
                        part("front rail", new double[] {8, 0, 600}, new double[] {500, 20, 700}, RAIL),
                        part("side rail", new double[] {-20 + 20, 8, 600}, new double[] {20, 500, 700}, SIDE_RAIL),
                        part("leg", new double[] {0, 0, 0}, new double[] {40, 40, 700}, UPRIGHT)),
                joint(Joint.Kind.MORTISE_AND_TENON, "front rail", "leg"),
                joint(Joint.Kind.MORTISE_AND_TENON, "side rail", "leg"));
        Finding told = made.findings().get(0);
        assertEquals(Finding.Severity.STOP, told.severity());
        assertEquals(
                "No tenon fits where side rail and leg meet: they meet over 100.0 mm, and beside the mortise of front"
                        + " rail to leg there is no stretch of 12.0 mm.",
                told.sentence());
        assertEquals(
                "Make the tenon 23.0 mm long, which is the longest that clears it, or mitre the ends of both where they"
                        + " meet inside leg.",
                told.remedy());
    }

    private static final Lie RAIL = Lie.along(Axis.ACROSS, Side.FRONT);
    private static final Lie SIDE_RAIL = Lie.along(Axis.DEEP, Side.LEFT);

    /** A lap half way through a stile 20 thick runs into the mortise that the stile's middle is taken up by. */
    @Test
    void aLapThatCutsIntoAMortiseIsTold() {
        Features made = made(
                List.of(
                        part("stile", new double[] {0, 0, 0}, new double[] {60, 20, 700}, STILE),
                        part("rail", new double[] {35, 0, 300}, new double[] {500, 20, 360}, RAIL),
                        part("brace", new double[] {-100, 0, 310}, new double[] {160, 20, 350}, RAIL)),
                joint(Joint.Kind.HALF_LAP, "brace", "stile"),
                joint(Joint.Kind.MORTISE_AND_TENON, "rail", "stile"));
        assertTrue(
                made.findings().stream().anyMatch(finding -> finding.sentence().contains("brace to stile")),
                made.findings()::toString);
    }

    private static final Lie STILE = Lie.along(Axis.UP, Side.FRONT);

    @ParameterizedTest
    @MethodSource("scantling.joinery.Made#starters")
    void noStarterHasCutsThatBreakIntoEachOther(String starter) {
        assertEquals(
                List.of(),
                Made.joined(Made.assembly(starter)).findings().stream()
                        .filter(finding -> finding.sentence().contains("run into each other")
                                || finding.sentence().contains("of wood between them"))
                        .toList());
    }
}
