package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.checks.AssemblyCheck;
import scantling.measure.Ledger;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;
import scantling.space.EndCut;
import scantling.space.Extent;

/**
 * Splayed legs, with the trigonometry worked by hand beside each check. The stool: 420 from the floor to its seat, legs
 * 40 square, feet out 60 to the sides and 40 to front and back.
 */
class SplayedLegsTest {
    private static final String STOOL = text();
    private static final double NEAR = 0.001;

    private static String text() {
        try (InputStream in = SplayedLegsTest.class.getResourceAsStream("/scantling/pieces/splayed-stool.yaml")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static ReadResult read(String text) {
        return PieceReader.read(text, Construction.language(), StandardWoods.standard());
    }

    private static Assembly build(String text) {
        ReadResult read = read(text);
        assertEquals(List.of(), read.problems());
        Tolerances tolerances = Tolerances.standard();
        Ledger ledger = new Ledger(Map.of(), Map.of(), tolerances.of("measured at the bench"));
        return Construction.assemble(read.piece().orElseThrow(), ledger, tolerances);
    }

    private static Assembly stool(String from, String to) {
        assertTrue(STOOL.contains(from), from);
        return build(STOOL.replace(from, to));
    }

    private static Part part(Assembly assembly, String end) {
        return assembly.parts().stream()
                .filter(part -> part.path().endsWith(end))
                .findFirst()
                .orElseThrow();
    }

    private static double mm(Assembly assembly, String path) {
        return Objects.requireNonNull(assembly.names().get("legs and rails / " + path), path)
                .value()
                .toMillimetres();
    }

    private static void assertSound(Assembly assembly) {
        assertEquals(List.of(), assembly.problems());
        assertEquals(
                List.of(),
                AssemblyCheck.check(assembly).stream()
                        .map(finding -> finding.subject() + ": " + finding.sentence())
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{ends: 60, front: 40, back: 40}",
                "{ends: 60}",
                "{front: 40, back: 55}",
                "8\u00b0",
                "{left: 12 deg, right: 3 degrees, back: 20}",
                "{ends: 0.5}"
            })
    void standsAsItIsAndTheJudgeFindsNothing(String splay) {
        assertSound(stool("{ends: 60, front: 40, back: 40}", splay));
    }

    @ParameterizedTest
    @ValueSource(strings = {"dowel", "loose tenon"})
    void standsWithOtherJointsToo(String joint) {
        assertSound(stool("joint: mortise and tenon", "joint: " + joint));
    }

    @Test
    void aLegIsAsLongAsItsSlope() {
        Assembly stool = build(STOOL);
        // Along an edge: square root of 420^2 + 60^2 + 40^2 = 181600, which is 426.1455.
        assertEquals(426.1455, mm(stool, "left front leg / along an edge"), NEAR);
        // In the side view 40 over 420: 5.4403 degrees. In the front view tan = 60 / 420 x cos 5.4403 = 0.142214.
        // Long point to long point adds 40 x 0.142214 + 40 x (40 / 420) / cos 8.0941 = 5.6886 + 3.8479.
        assertEquals(435.682, mm(stool, "left front leg / length"), NEAR);
    }

    @Test
    void theSawIsSetToTheAnglesOfBothViews() {
        EndCut cut = part(build(STOOL), "right back leg").ends().far();
        assertEquals(8.0941, cut.mitreDegrees(), NEAR); // arc tangent of 0.142214
        assertEquals(5.4403, cut.tiltDegrees(), NEAR); // arc tangent of 40 / 420
        EndCut oneWay = part(stool("{ends: 60, front: 40, back: 40}", "{ends: 60}"), "left back leg")
                .ends()
                .near();
        assertEquals(8.1301, oneWay.mitreDegrees(), NEAR); // arc tangent of 60 / 420
        assertEquals(0, oneWay.tiltDegrees(), NEAR);
    }

    /**
     * The table printed in the books of compound mitre saws (from memory): a moulding that leans 38 degrees off the
     * wall, laid flat for a square corner, takes a mitre of 31.62 and a tilt of 33.86 degrees.
     */
    @Test
    void anglesAgreeWithThePrintedTableForLeaningMouldings() {
        double lean = Math.toRadians(38);
        EndCut corner = new EndCut(Math.sin(lean), Math.cos(lean));
        assertEquals(31.62, corner.mitreDegrees(), 0.005);
        assertEquals(33.86, corner.tiltDegrees(), 0.005);
    }

    @Test
    void itsFeetStandFlatInTheCornersAndItsTopsUnderTheSeat() {
        Assembly stool = build(STOOL);
        Extent leg = part(stool, "left front leg").solid().extent();
        assertEquals(0, leg.bottom(), NEAR);
        assertEquals(420, leg.top(), NEAR);
        assertEquals(0, leg.left(), NEAR);
        assertEquals(0, leg.front(), NEAR);
        Extent other = part(stool, "right back leg").solid().extent();
        assertEquals(400, other.right(), NEAR);
        assertEquals(320, other.back(), NEAR);
        // The slanted cut is 40 / cos 8.0941 + 40 x 0.142214 x 0.095238 wide and 40 / cos 5.4403 deep; 60 and 40
        // further in.
        assertEquals(60 + 40.4025 + 0.5418, leg.right(), NEAR);
        assertEquals(40 + 40.1810, leg.back(), NEAR);
        // Cavalieri: square section times the length of an edge.
        assertEquals(40 * 40 * 426.1455, part(stool, "left front leg").solid().volume(), 2);
    }

    @Test
    void aRailIsCutToTheLeaningFaces() {
        Assembly stool = build(STOOL);
        // Middle of the foot at 20.4721, 20.0905. The inner face runs from there 20 / cos 8.0941 to the right, and for
        // every millimetre up another 0.142214 x cos 5.4403 = 0.141573, for every one back 0.142214 x sin 5.4403 =
        // 0.013483.
        // The lower outer corner of the shoulder, 360 up and 40 back: 20.4721 + 20.2013 + 50.9663 + 0.2684 = 91.9081.
        assertEquals(400 - 2 * 91.9081, mm(stool, "front rail / shoulder to shoulder"), NEAR);
        EndCut cut = part(stool, "front rail").ends().near();
        assertEquals(8.0580, cut.mitreDegrees(), NEAR); // arc tangent of 0.141573
        assertEquals(0.7649, cut.tiltDegrees(), NEAR); // arc tangent of 0.013483 / sqrt(1 + 0.141573^2)
        assertEquals(-8.0580, part(stool, "front rail").ends().far().mitreDegrees(), NEAR);
        // The end rail meets a face that leans to the front only: 40 over 420, square through its thickness.
        EndCut end = part(stool, "left rail").ends().near();
        assertEquals(5.4403, end.mitreDegrees(), NEAR);
        assertEquals(0, end.tiltDegrees(), NEAR);
        // 360 up the inner face is 20.0905 x 2 + 360 x 40 / 420 behind the front.
        assertEquals(320 - 2 * (40.1810 + 34.2857), mm(stool, "left rail / shoulder to shoulder"), NEAR);
    }

    @Test
    void postsSplayToo() {
        Assembly stool = build("""
            piece: Three feet and one more
            unit: mm
            size: 360 wide, 360 deep, 430 high
            materials: {seat: {solid: white ash, thickness: 30}, leg: {solid: white ash, thickness: 36}}
            build:
              - board: {name: seat, of: seat, on: top, inset: {ends: 30, front: 30, back: 30}}
              - posts: {legs: leg, splay: 6\u00b0, tapered to: 24}
            """);
        assertSound(stool);
        assertEquals(
                4,
                stool.joints().stream()
                        .filter(joint -> joint.receiving().equals("seat"))
                        .count());
    }

    @Test
    void aLegTaperedOnTwoFacesHasBothOutlines() {
        Part leg =
                part(build(STOOL.replace("joint: mortise", "tapered to: 25\n      joint: mortise")), "left back leg");
        assertEquals(
                "25",
                leg.outline()
                        .orElseThrow()
                        .corners()
                        .get(4)
                        .across()
                        .value()
                        .millimetres()
                        .stripTrailingZeros()
                        .toPlainString());
        assertEquals(
                leg.outline().orElseThrow().corners(),
                leg.edgeOutline().orElseThrow().corners());
        assertSound(build(STOOL.replace("joint: mortise", "tapered to: 25\n      joint: mortise")));
    }

    @Test
    void anAngleBeyondReasonIsRefused() {
        assertEquals(
                1, read(STOOL.replace("ends: 60", "ends: 60\u00b0")).problems().size());
        assertEquals(1, read(STOOL.replace("ends: 60", "ends: -5")).problems().size());
    }

    @Test
    void legsThatMeetInTheMiddleAreRefusedInPlainWords() {
        Assembly stool = stool("{ends: 60, front: 40, back: 40}", "{ends: 190}");
        assertTrue(
                stool.problems().stream().anyMatch(problem -> problem.message().contains("splayed")),
                stool.problems()::toString);
    }
}
