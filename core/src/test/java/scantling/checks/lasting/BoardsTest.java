package scantling.checks.lasting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.space.Axis;
import scantling.space.Side;

/** Seats, drawer floors, rails, and ends that are held, against closed forms. */
class BoardsTest {
    private static final Shelf FREE = new Shelf(10_000, 300, 20, 900, List.of(), 1);

    private static double bending(Shelf shelf) {
        // Shear apart, which no end changes: the rest of a very slender board is bending alone.
        return shelf.sag(1000, false) - shear();
    }

    private static double shear() {
        double load = 1000e-6 * 300 * 900;
        return load * 900 / 8 / Section.rectangle(10_000, 300, 20).shear();
    }

    /** Wood Handbook Table 9-1: clamped ends take four fifths of the bending away (1/384 against 5/384). */
    @Test
    void endsHeldFastBendAFifth() {
        assertEquals(bending(FREE) / 5, bending(FREE.held(Ends.FAST)), 1e-9);
    }

    /** Springs of 2 E I/L at both ends: 5 - 4/(1 + 1) = 3 of the 384 parts (slope-deflection by hand). */
    @Test
    void endsThatGiveLieBetween() {
        double bending = 10_000 * 300 * Math.pow(20, 3) / 12;
        assertEquals(bending(FREE) * 3 / 5, bending(FREE.held(new Ends(2 * bending / 900, 0))), 1e-9);
    }

    /** Supports set in by .2236 of the span between them: the middle stands level, w L^4/384 (5 - 24 (a/L)^2) with moments alike. */
    @Test
    void supportsSetInFromTheEndsTakeTheMiddleUp() {
        assertEquals(bending(FREE) * (5 - 24 * 0.09) / 5, bending(FREE.held(new Ends(0, 270))), 1e-9);
    }

    /**
     * A square plate on its four corners sinks .0255 q a^4/D in the middle (Timoshenko and Woinowsky-Krieger, art. 48; from
     * memory): beam and end strip together come to that or a little more, never less.
     */
    @Test
    void pinsAtTheCornersComeToTheTabulatedPlateOrALittleMore() {
        double stiff = 6000 * Math.pow(18, 3) / (12 * (1 - 0.3 * 0.3));
        double plate = 0.0255 * 718e-6 * Math.pow(800, 4) / stiff;
        double ours = new Shelf(6000, 800, 18, 800, List.of(), 1)
                .on(new Pins(0, 6000))
                .sag(718, false);
        assertTrue(ours > plate && ours < 1.2 * plate, ours + " against " + plate);
    }

    /** The end as a beam between its pins that runs on past them, 5 - 24 (a/L)^2 of the 384 parts (hand, as for set-in supports). */
    @Test
    void pinsFurtherInSagLess() {
        Shelf edge = new Shelf(10_000, 300, 18, 900, List.of(), 1).on(new Pins(0, 500));
        Shelf setIn = edge.on(new Pins(37, 500));
        double between = 300 - 2 * 37;
        Section strip = Section.rectangle(500, 150, 18);
        double load = 1000e-6 * 450 * between;
        double hand = load * Math.pow(between, 3) / (384 * strip.bending()) * (5 - 24 * Math.pow(37 / between, 2))
                + load * between / 8 / strip.shear();
        assertEquals(hand, setIn.sag(1000, false) - FREE18.sag(1000, false), 1e-9);
        assertTrue(setIn.sag(1000, false) < edge.sag(1000, false));
    }

    private static final Shelf FREE18 = new Shelf(10_000, 300, 18, 900, List.of(), 1);

    /** AISC Manual Table 3-23 case 25: w a^3 (4 L + 3 a)/(24 E I); with no span behind it the cantilever's w a^4/(8 E I). */
    @ParameterizedTest
    @CsvSource({"400, 900", "250, 300", "300, 0"})
    void anOverhangSinksByTheClosedForm(double reach, double back) {
        double inertia = Math.pow(20, 3) / 12;
        double w = 718e-6;
        double turns = w * reach * reach / 2 * back / (3 * 10_000 * inertia);
        double bends = w * Math.pow(reach, 4) / (8 * 10_000 * inertia);
        double shears = w * reach * reach / 2 / (10_000 / 16.0 * 5 / 6 * 20);
        assertEquals(turns * reach + bends + shears, new Tip(10_000, 20, reach, back, 2).sinks(718, false), 1e-9);
    }

    private static Made desk(double past) {
        return new Made("Desk")
                .part("top", Made.sheet("MDF"), Axis.ACROSS, Side.TOP, Made.box(0, 1000, 0, 500, 700, 718))
                .part("left side", Made.sheet("MDF"), Axis.UP, Side.LEFT, Made.box(0, 18, 0, 500, 0, 700))
                .part(
                        "right side",
                        Made.sheet("MDF"),
                        Axis.UP,
                        Side.RIGHT,
                        Made.box(982 - past, 1000 - past, 0, 500, 0, 700));
    }

    @Test
    void aLongOverhangIsToldWithTheOverhangThatWouldDo() {
        Finding told = about(desk(400), "top").stream()
                .filter(finding -> finding.rule().equals("overhang"))
                .findFirst()
                .orElseThrow();
        assertTrue(told.remedy().contains("let it run past by"), told.remedy());
        assertTrue(about(desk(60), "top").stream()
                .noneMatch(finding -> finding.rule().equals("overhang")));
    }

    /** Parallel axes: a batten glued on edge under a board stiffens it as a lipping does. */
    @Test
    void aStripGluedAlongTheEdgeStiffensTheBoard() {
        Made bare = shelfOn("MDF");
        Made stiff = shelfOn("MDF")
                .part(
                        "stiffener",
                        Made.solid("white oak"),
                        Axis.ACROSS,
                        Side.FRONT,
                        Made.box(20, 1180, 0, 20, 142, 182))
                .joint(Joint.Kind.GLUED, "stiffener", "shelf", Map.of());
        double before = Sags.of(bare.assembly()).get(0).free();
        double after = Sags.of(stiff.assembly()).get(0).free();
        assertTrue(after < before / 2, before + " to " + after);
    }

    private static Made shelfOn(String sheet) {
        return new Made("Wall unit")
                .part("left side", Made.sheet(sheet), Axis.UP, Side.LEFT, Made.box(0, 20, 0, 300, 0, 500))
                .part("right side", Made.sheet(sheet), Axis.UP, Side.RIGHT, Made.box(1180, 1200, 0, 300, 0, 500))
                .part("shelf", Made.sheet(sheet), Axis.ACROSS, Side.TOP, Made.box(20, 1180, 0, 300, 182, 200));
    }

    @Test
    void aShelfOnPinsIsShownWithItsEndsAndWhatWouldJustDo() {
        Made pinned = shelfOn("birch plywood").pins("shelf", "left side", "right side");
        Sags.Row row = Sags.of(pinned.assembly()).get(0);
        assertEquals("on pins", row.ends());
        assertTrue(
                row.free() > Sags.of(shelfOn("birch plywood").assembly()).get(0).free());
        assertTrue(row.thin().orElseThrow() > 18 && row.wide().orElseThrow() < 1160, row.toString());
        assertTrue(row.lipping().isPresent());
    }

    /** "Adjustable" holds the letters of another word that stands for a lighter load. */
    @Test
    void anAdjustableShelfIsNoTable() {
        assertEquals(
                40,
                PlannedLoad.of(shelfOn("MDF").assembly(), "adjustable shelf").psf());
        assertEquals(
                15, PlannedLoad.of(new Made("Dining table").assembly(), "top").psf());
    }

    @Test
    void aWoodOfUnknownStiffnessIsSaidToBeSoWithTheNearest() {
        Made odd = new Made("Wall unit")
                .part("left side", Made.solid("white oak"), Axis.UP, Side.LEFT, Made.box(0, 20, 0, 300, 0, 500))
                .part("right side", Made.solid("white oak"), Axis.UP, Side.RIGHT, Made.box(880, 900, 0, 300, 0, 500))
                .part("shelf", Made.solid("moon oak"), Axis.ACROSS, Side.TOP, Made.box(20, 880, 0, 300, 182, 200));
        Finding told = about(odd, "shelf").stream()
                .filter(finding -> finding.sentence().contains("stiff"))
                .findFirst()
                .orElseThrow();
        assertTrue(told.remedy().contains("oak"), told.remedy());
    }

    /** Ends that hold keep it within the limit (a fifth of the bending, Wood Handbook Table 9-1): a note, no caution. */
    @Test
    void aShelfThatKeepsTheLimitOnlyBecauseItsEndsAreHeldIsANote() {
        Made held = new Made("Wall unit")
                .part("left side", Made.solid("white oak"), Axis.UP, Side.LEFT, Made.box(0, 20, 0, 300, 0, 500))
                .part("right side", Made.solid("white oak"), Axis.UP, Side.RIGHT, Made.box(1300, 1320, 0, 300, 0, 500))
                .part("shelf", Made.solid("white oak"), Axis.ACROSS, Side.TOP, Made.box(20, 1300, 0, 300, 200, 219))
                .joint(Joint.Kind.DADO, "shelf", "left side", Map.of())
                .joint(Joint.Kind.DADO, "shelf", "right side", Map.of());
        Sags.Row row = Sags.of(held.assembly()).get(0);
        assertTrue(row.fast() < row.held() && row.held() < row.free(), row.toString());
        Finding told = about(held, "shelf").get(0);
        assertTrue(told.sentence().contains("within it"), told.sentence());
        assertEquals(Finding.Severity.NOTE, told.severity());
    }

    /** Square and long plates: .00406 and, past five to one, that of a strip 5/384 (Timoshenko and Woinowsky-Krieger Table 8). */
    @ParameterizedTest
    @CsvSource({"400, 400, 0.00406", "400, 800, 0.01013", "400, 40000, 0.01302"})
    void platesSinkByTheTabulatedShare(double one, double other, double alpha) {
        double stiff = 6000 * Math.pow(6, 3) / (12 * (1 - 0.25 * 0.25));
        assertEquals(alpha * 718e-6 * Math.pow(400, 4) / stiff, new Plate(6000, one, other, 6).sag(718), 1e-9);
    }

    private static List<Finding> about(Made made, String subject) {
        return LastingChecks.check(made.assembly()).stream()
                .filter(finding -> finding.subject().equals(subject))
                .toList();
    }

    private static Made bench(double thick) {
        return new Made("Bench for the hall")
                .part(
                        "seat",
                        Made.solid("eastern white pine"),
                        Axis.ACROSS,
                        Side.TOP,
                        Made.box(0, 1200, 0, 300, 430, 430 + thick))
                .part("left leg", Made.solid("eastern white pine"), Axis.UP, Side.LEFT, Made.box(0, 30, 0, 300, 0, 430))
                .part(
                        "right leg",
                        Made.solid("eastern white pine"),
                        Axis.UP,
                        Side.RIGHT,
                        Made.box(1170, 1200, 0, 300, 0, 430));
    }

    // P L^3/(48 E I): 1079 N on 1140 mm of pine 300 x 18, E 8.5 GPa: 26.8 mm (hand); 16 times stiffer at 45 mm.
    @Test
    void aThinBenchIsToldAndAThickOneIsNot() {
        Finding seat = about(bench(18), "seat").stream()
                .filter(finding -> finding.rule().equals("seat"))
                .findFirst()
                .orElseThrow();
        double inertia = 300 * Math.pow(18, 3) / 12;
        double stiff = new Stiffness(Woods.standard())
                .find(bench(18).assembly().parts().get(0), Axis.ACROSS)
                .orElseThrow();
        double hand = 110 * 9.80665 * Math.pow(1140, 3) / (48 * stiff * inertia);
        assertEquals(hand, Parts.mm(seat.numbers().get(0)), 0.03 * hand);
        assertTrue(about(bench(45), "seat").stream()
                .noneMatch(finding -> finding.rule().equals("seat")));
    }

    @Test
    void aWideThinDrawerFloorIsToldWithTheThicknessThatWouldDo() {
        Made drawer = new Made("Chest")
                .part("drawer 1 / floor", Made.sheet("MDF"), Axis.ACROSS, Side.TOP, Made.box(0, 900, 0, 500, 100, 103));
        Finding floor = about(drawer, "drawer 1 / floor").get(0);
        assertTrue(floor.remedy().startsWith("Make it "), floor.remedy());
        Made small = new Made("Chest")
                .part("drawer 1 / floor", Made.sheet("MDF"), Axis.ACROSS, Side.TOP, Made.box(0, 300, 0, 350, 100, 106));
        assertEquals(List.of(), about(small, "drawer 1 / floor"));
    }

    @Test
    void aSlenderRailUnderABookShelfIsTold() {
        Made shelf = new Made("Book wall")
                .part("shelf", Made.solid("white oak"), Axis.ACROSS, Side.TOP, Made.box(0, 1500, 0, 400, 820, 840))
                .part(
                        "front rail",
                        Made.solid("white oak"),
                        Axis.ACROSS,
                        Side.FRONT,
                        Made.box(0, 1500, 0, 18, 800, 820));
        assertEquals("sag", about(shelf, "front rail").get(0).rule());
    }

    @Test
    void heldEndsAreAComfortThatIsNotCountedOn() {
        Made held = new Made("Wall unit")
                .part("left side", Made.solid("white oak"), Axis.UP, Side.LEFT, Made.box(0, 20, 0, 300, 0, 500))
                .part("right side", Made.solid("white oak"), Axis.UP, Side.RIGHT, Made.box(1180, 1200, 0, 300, 0, 500))
                .part("shelf", Made.solid("white oak"), Axis.ACROSS, Side.TOP, Made.box(20, 1180, 0, 300, 200, 218))
                .joint(Joint.Kind.DADO, "shelf", "left side", Map.of())
                .joint(Joint.Kind.DADO, "shelf", "right side", Map.of());
        assertTrue(
                about(held, "shelf").get(0).sentence().contains("lying free"),
                about(held, "shelf").toString());
    }

    /** Two like strips that cross each take half (Grashof); held all round, a top of one stiffness sags half as far. */
    @Test
    void aBoardHeldBothWaysSagsLess() {
        assertEquals(bending(FREE) / 2, bending(FREE.held(new Ends(0, 0, 0.5))), 1e-9);
        Made square = new Made("Cabinet")
                .part("left side", Made.sheet("MDF"), Axis.UP, Side.LEFT, Made.box(0, 18, 0, 836, 0, 500))
                .part("right side", Made.sheet("MDF"), Axis.UP, Side.RIGHT, Made.box(818, 836, 0, 836, 0, 500))
                .part("front apron", Made.sheet("MDF"), Axis.UP, Side.FRONT, Made.box(18, 818, 0, 18, 0, 500))
                .part("back", Made.sheet("MDF"), Axis.UP, Side.FRONT, Made.box(18, 818, 818, 836, 0, 500))
                .part("shelf", Made.sheet("MDF"), Axis.ACROSS, Side.TOP, Made.box(18, 818, 18, 818, 300, 318));
        double sag = Parts.mm(about(square, "shelf").get(0).numbers().get(0));
        Shelf one = new Shelf(2200, 800, 18, 800, List.of(), 3.25);
        // 4.8 mm under 40 lb/ft2 keeps L/144; what the eye sees, 15 lb/ft2 after years, is told.
        assertEquals(one.sag(SagRule.pascal(15), true) / 2, sag, 0.05 * sag);
    }
}
