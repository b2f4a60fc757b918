package scantling.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.checks.HandBuilt.box;
import static scantling.checks.HandBuilt.given;
import static scantling.checks.HandBuilt.lying;
import static scantling.checks.HandBuilt.part;
import static scantling.checks.HandBuilt.upright;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Tolerance;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Outline;
import scantling.space.Side;
import scantling.space.Turn;

/** Two ends 20 thick, 300 deep and 400 high, 600 apart outside, and what goes between them. */
class AssemblyCheckTest {
    private static final Part LEFT = upright("left end", box(0, 20, 0, 300, 0, 400));
    private static final Part RIGHT = upright("right end", box(580, 600, 0, 300, 0, 400));
    private static final Part BOTTOM = lying("bottom", box(20, 580, 0, 300, 0, 20));

    private static HandBuilt ends() {
        return new HandBuilt(600, 300, 400).with(LEFT, RIGHT);
    }

    private static List<Finding> check(HandBuilt built) {
        return AssemblyCheck.check(built.assembly());
    }

    private static Finding only(HandBuilt built) {
        List<Finding> findings = check(built);
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0);
    }

    @Test
    void partsThatOnlyTouchAreSound() {
        assertEquals(List.of(), check(ends().with(BOTTOM)));
    }

    @Test
    void aShelfIntoBothEndsWithoutAJointSharesWoodWithEach() {
        List<Finding> findings = check(ends().with(lying("shelf", box(14, 586, 0, 280, 200, 220))));
        assertEquals(2, findings.size());
        assertEquals(
                "left end and shelf share wood (6.0 mm wide, 280.0 mm deep, 20.0 mm high), and no joint between them"
                        + " says so.",
                findings.get(0).sentence());
        assertEquals(Finding.Severity.STOP, findings.get(0).severity());
        assertEquals(Length.mm(6), findings.get(0).numbers().get(0).value());
    }

    @Test
    void aDadoAsDeepAsTheShelfEntersIsSound() {
        HandBuilt housed = ends().with(lying("shelf", box(14, 586, 0, 280, 200, 220)))
                .joined(Joint.Kind.DADO, "shelf", "left end", box(14, 20, 0, 280, 200, 220))
                .joined(Joint.Kind.DADO, "shelf", "right end", box(580, 586, 0, 280, 200, 220));
        assertEquals(List.of(), check(housed));
    }

    @Test
    void aDadoAMillimetreTooShallowIsNotEnough() {
        HandBuilt housed = ends().with(lying("shelf", box(14, 580, 0, 280, 200, 220)))
                .joined(Joint.Kind.DADO, "shelf", "left end", box(15, 20, 0, 280, 200, 220));
        assertTrue(only(housed).sentence().endsWith("more than their joint allows for."));
    }

    @Test
    void aJointOfOtherPartsExcusesNothing() {
        HandBuilt housed = ends().with(BOTTOM, lying("shelf", box(14, 580, 0, 280, 200, 220)))
                .joined(Joint.Kind.DADO, "bottom", "left end", box(14, 20, 0, 280, 200, 220));
        assertEquals("left end", only(housed).subject());
    }

    @Test
    void aTenthOfAMicrometreTooMuchIsStillSharing() {
        Dim hair = given("a hair", 20).minus(Dim.lookedUp(new Length(1000), "hair", "hair", "test"));
        Box shelf = box(20, 580, 0, 280, 200, 220).with(Side.LEFT, hair);
        assertEquals(1, check(ends().with(lying("shelf", shelf))).size());
    }

    @Test
    void aShelfThatTouchesNothingIsFoundAndOneOnPinsIsNot() {
        Part shelf = lying("shelf", box(21, 579, 0, 280, 200, 220));
        Finding floating = only(ends().with(BOTTOM, shelf));
        assertEquals("shelf touches no other part, no floor and no wall.", floating.sentence());
        assertEquals(List.of(), check(ends().with(BOTTOM, shelf).hung("shelf pins", "shelf", "left end", "right end")));
        assertEquals(List.of(), check(ends().with(BOTTOM, shelf).joined(Joint.Kind.CARRIED, "shelf", "left end")));
    }

    @Test
    void twoPartsThatHoldOnlyEachOtherAreCalledTogether() {
        Finding floating = only(ends().with(
                        lying("box bottom", box(30, 500, 20, 200, 100, 112)),
                        upright("box side", box(30, 42, 20, 200, 112, 180))));
        assertEquals(Finding.Severity.CAUTION, floating.severity());
        assertTrue(floating.sentence().endsWith("box bottom, box side."));
    }

    @Test
    void whatLeavesTheOverallSizeIsFoundWithHowMuch() {
        Finding past = only(new HandBuilt(600, 300, 400)
                .with(upright("post", box(0, 20, 0, 300, 0, 380)), lying("top", box(0, 600, -12, 300, 380, 400))));
        assertEquals("top leaves the overall size at the front by 12.0 mm.", past.sentence());
        assertEquals(Finding.Severity.STOP, past.severity());
    }

    @Test
    void anOverhangThatTheMakerGaveMayStandOver() {
        Dim overhang = given("overhang / front", 12);
        Box standing = box(0, 600, 0, 300, 380, 400).inset(Side.FRONT, overhang.times(-1));
        HandBuilt table =
                new HandBuilt(600, 300, 400).with(upright("post", box(0, 20, 0, 300, 0, 380)), lying("top", standing));
        assertEquals(List.of(), check(table));
    }

    @Test
    void anOverhangAtTheFrontDoesNotExcuseTheLeft() {
        Box standing = box(-5, 600, 0, 300, 380, 400).inset(Side.FRONT, given("overhang / front", -12));
        HandBuilt table =
                new HandBuilt(600, 300, 400).with(upright("post", box(0, 20, 0, 300, 0, 380)), lying("top", standing));
        assertEquals(
                "top leaves the overall size at the left by 5.0 mm.",
                only(table).sentence());
    }

    @Test
    void aMeasuredTopKeepsItsOverhang() {
        Dim depth = Dim.named("top / width", given("depth", 300).plus(given("overhang / front", 12)), Tolerance.NONE);
        Dim measured = Dim.measured("top / width", depth, Length.mm("312.4"), Tolerance.NONE);
        Box standing = box(0, 600, 0, 300, 380, 400).with(Side.FRONT, given(300).minus(measured));
        HandBuilt table =
                new HandBuilt(600, 300, 400).with(upright("post", box(0, 20, 0, 300, 0, 380)), lying("top", standing));
        assertEquals(List.of(), check(table));
    }

    @Test
    void aPartWithoutThicknessIsFoundAndTheRestStillChecked() {
        List<Finding> findings = check(ends().with(
                        lying("nothing", box(20, 580, 0, 300, 50, 50)),
                        lying("shelf", box(21, 579, 0, 280, 200, 220))));
        assertEquals("nothing has no thickness left: 0.0 mm.", findings.get(0).sentence());
        assertEquals("shelf", findings.get(1).subject());
    }

    @Test
    void aSizeThatDisagreesWithItsPlaceIsFound() {
        Part wrong = new Part(
                "bottom",
                BOTTOM.material(),
                given(559),
                BOTTOM.width(),
                BOTTOM.thickness(),
                BOTTOM.box(),
                BOTTOM.lie(),
                Optional.empty(),
                Optional.empty(),
                BOTTOM.shows(),
                false);
        assertEquals(
                "bottom has a length of 559.0 mm but takes up 560.0 mm.",
                only(ends().with(wrong)).sentence());
    }

    @Test
    void twoPartsOfOneNameAreFound() {
        Finding twice = only(ends().with(BOTTOM, lying("bottom", box(20, 580, 0, 300, 380, 400))));
        assertEquals("Two parts are called bottom.", twice.sentence());
    }

    @Test
    void anOutlineOutsideItsRectangleOrCrossingItselfIsFound() {
        List<Finding> found = check(ends().with(shapedBottom(0, 0, 561, 0, 560, 300, 0, 300)));
        assertEquals(2, found.size(), "and it shares a millimetre with the right end");
        Finding outside = found.get(0);
        assertTrue(outside.sentence().contains("leaves its rectangle at 561.0 mm along"), outside.sentence());
        Finding crossing = only(ends().with(shapedBottom(0, 0, 560, 300, 560, 0, 0, 300)));
        assertTrue(crossing.sentence().contains("crosses itself"), crossing.sentence());
    }

    @Test
    void aNotchAroundALegIsNoSharing() {
        // The bottom runs to the left edge, with a corner of 20 by 300 left out for the end: along from the left.
        Part notched = part(
                "bottom",
                box(0, 580, 0, 300, 0, 20),
                Lie.along(Axis.ACROSS, Side.TOP),
                Optional.of(outline(20, 0, 580, 0, 580, 300, 20, 300)),
                Optional.empty());
        assertEquals(List.of(), check(ends().with(notched)));
        Part whole = lying("bottom", box(0, 580, 0, 300, 0, 20));
        assertEquals(1, check(ends().with(whole)).size());
    }

    @Test
    void aTurnedPartIsJudgedWhereItStands() {
        // 400 long across, turned by a quarter about the middle of 300 deep: it stands over by (400 - 300) / 2
        Part cross = part(
                "bottom",
                box(100, 500, 140, 160, 0, 20),
                Lie.along(Axis.ACROSS, Side.TOP),
                Optional.empty(),
                Optional.of(new Turn(Axis.UP, 90, given(300), given(150))));
        Finding past = check(ends().with(cross)).get(0);
        assertEquals("bottom leaves the overall size at the front by 50.0 mm.", past.sentence());
    }

    private static Part shapedBottom(long... numbers) {
        return part("bottom", BOTTOM.box(), BOTTOM.lie(), Optional.of(outline(numbers)), Optional.empty());
    }

    private static Outline outline(long... numbers) {
        List<Outline.Corner> corners = new ArrayList<>();
        for (int i = 0; i < numbers.length; i += 2) {
            corners.add(new Outline.Corner(given(numbers[i]), given(numbers[i + 1])));
        }
        return new Outline(corners);
    }
}
