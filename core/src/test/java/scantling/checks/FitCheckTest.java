package scantling.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.checks.HandBuilt.box;
import static scantling.checks.HandBuilt.given;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Tolerance;
import scantling.piece.Material;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.Lie;
import scantling.space.Side;

/** A front of 396 by 126 by 20 in an opening of 400 by 130, the shop cutting to half a millimetre. */
class FitCheckTest {
    private static final Tolerance CUT = new Tolerance(Length.mm("0.5"), "cut to a stop");
    private static final Tolerance BENCH = new Tolerance(Length.mm("0.1"), "measured");
    private static final Dim GAP = given("gap", 2);

    private static Dim planned(String name, long opening) {
        return Dim.named(name, given("opening", opening).minus(GAP.times(2)), CUT);
    }

    private static Dim cut(Dim planned, String mm) {
        return Dim.measured(planned.findPath().orElseThrow(), planned, Length.mm(mm), BENCH);
    }

    private static Part front(Dim length, Dim width, Dim thickness, Material.Kind kind) {
        Box box = new Box(Dim.ZERO, length, Dim.ZERO, thickness, Dim.ZERO, width);
        return new Part(
                "front",
                HandBuilt.material(kind, thickness),
                length,
                width,
                thickness,
                box,
                Lie.along(Axis.ACROSS, Side.FRONT),
                Optional.empty(),
                Optional.empty(),
                Set.of(),
                true);
    }

    private static Part front(Dim length, Dim width) {
        return front(length, width, Dim.named("front / thickness", given("cherry", 20), CUT), Material.Kind.SOLID);
    }

    private static List<Finding> check(Part... parts) {
        return FitCheck.check(new HandBuilt(400, 20, 130).with(parts).assembly());
    }

    @Test
    void whatIsNotCutHasNothingToFind() {
        assertEquals(List.of(), check(front(planned("front / length", 400), planned("front / width", 130))));
    }

    @Test
    void aFrontWithinWhatTheCutAllowsIsSound() {
        Dim length = planned("front / length", 400);
        assertEquals(List.of(), check(front(cut(length, "396.5"), planned("front / width", 130))));
    }

    @Test
    void aFrontTooWideIsAStopThatSaysWhatToPlane() {
        Part front = front(planned("front / length", 400), cut(planned("front / width", 130), "126.6"));
        Finding finding = check(front).get(0);
        assertEquals(Finding.Severity.STOP, finding.severity());
        assertEquals("front", finding.subject());
        assertTrue(finding.sentence().startsWith("front is cut 0.6 mm too wide"), finding.sentence());
        assertEquals("Plane 0.6 mm off one edge.", finding.remedy());
        assertEquals(
                List.of(Length.mm("126.6"), Length.mm(126)),
                finding.numbers().stream().map(Dim::value).toList());
    }

    @Test
    void aFrontTooShortIsACautionToCutANewOne() {
        Part front = front(cut(planned("front / length", 400), "395"), planned("front / width", 130));
        Finding finding = check(front).get(0);
        assertEquals(Finding.Severity.CAUTION, finding.severity());
        assertTrue(finding.sentence().startsWith("front is cut 1.0 mm too short"), finding.sentence());
        assertTrue(finding.remedy().startsWith("Cut a new one"), finding.remedy());
    }

    @Test
    void aFrontCutRightNoLongerFitsWhenItsOpeningIsMeasuredSmaller() {
        Dim opening = Dim.measured(
                "opening / width", Dim.named("opening / width", given(400), Tolerance.NONE), Length.mm(399), BENCH);
        Dim length = Dim.named("front / length", opening.minus(GAP.times(2)), CUT);
        Finding finding =
                check(front(cut(length, "396"), planned("front / width", 130))).get(0);
        assertEquals("Cut 1.0 mm off one end.", finding.remedy());
    }

    @Test
    void stockThatCameOutThickerIsOnlyANoteBecauseTheRestFollows() {
        Dim thickness = cut(Dim.named("front / thickness", given("cherry", 20), CUT), "20.8");
        Part front =
                front(planned("front / length", 400), planned("front / width", 130), thickness, Material.Kind.SOLID);
        Finding finding = check(front).get(0);
        assertEquals(Finding.Severity.NOTE, finding.severity());
        assertEquals("front has a thickness of 20.8 mm, 0.8 mm more than the plan says now.", finding.sentence());
    }

    @Test
    void nobodyPlanesASheetThinner() {
        Dim thickness = cut(Dim.named("front / thickness", given("space", 24).minus(given("gap", 12)), CUT), "12.7");
        Part front =
                front(planned("front / length", 400), planned("front / width", 130), thickness, Material.Kind.SHEET);
        assertEquals(
                "Cut its groove or rabbet 0.7 mm wider, or take a thinner sheet.",
                check(front).get(0).remedy());
    }

    @Test
    void anOpeningWhoseGapTheToleranceCanTakeIsToBeMeasuredFirst() {
        // Two ends off by 0.5 each: 1.0 at worst; root-sum-square of two 0.5 is 0.7071
        Dim left = Dim.named("left end / thickness", given("cherry", 20), CUT);
        Dim right = Dim.named("right end / thickness", given("cherry", 20), CUT);
        Box air = box(20, 420, 0, 20, 0, 130)
                .with(Side.LEFT, left)
                .with(Side.RIGHT, given("width", 440).minus(right));
        Finding note = FitCheck.measureFirst(filled(air, "399.5")).get(0);
        assertEquals(Finding.Severity.NOTE, note.severity());
        assertTrue(
                note.sentence()
                        .contains("with 0.5 mm to spare for what fills it, but may be off by 1.0 mm at worst (0.7 mm"),
                note.sentence());
        assertEquals("Measure it before cutting front: that buys 0.9 mm of certainty.", note.remedy());
    }

    private static Assembly filled(Box air, String length) {
        Part front = front(Dim.lookedUp(Length.mm(length), "drawn", "front", "test"), planned("front / width", 130));
        Box at = front.box()
                .with(Side.LEFT, given(20))
                .with(Side.RIGHT, given(20).plus(front.length()));
        Part placed = new Part(
                front.path(),
                front.material(),
                front.length(),
                front.width(),
                front.thickness(),
                at,
                front.lie(),
                Optional.empty(),
                Optional.empty(),
                Set.of(),
                true);
        return new HandBuilt(440, 20, 130)
                .with(placed)
                .opening("opening", air, "front")
                .assembly();
    }

    @Test
    void anOpeningWithRoomEnoughNeedsNoMeasuring() {
        Dim left = Dim.named("left end / thickness", given("cherry", 20), CUT);
        Box air = box(20, 420, 0, 30, 0, 140).with(Side.LEFT, left);
        assertEquals(List.of(), FitCheck.measureFirst(filled(air, "396")));
    }
}
