package scantling.checks.lasting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Finding.Severity;
import scantling.construct.Joint;
import scantling.space.Axis;
import scantling.space.Side;

class LastingChecksTest {
    private static List<Finding> about(Assembly assembly, String subject) {
        return LastingChecks.check(assembly).stream()
                .filter(finding -> finding.subject().equals(subject))
                .toList();
    }

    private static Made bookcase(String panel, double width, int shelves) {
        Made made = new Made("Wall unit")
                .part("left side", Made.sheet(panel), Axis.UP, Side.LEFT, Made.box(0, 18, 0, 300, 0, 500))
                .part(
                        "right side",
                        Made.sheet(panel),
                        Axis.UP,
                        Side.RIGHT,
                        Made.box(width - 18, width, 0, 300, 0, 500));
        for (int i = 1; i <= shelves; i++) {
            double top = 100 * i + 50;
            made.part(
                    "shelf " + i,
                    Made.sheet(panel),
                    Axis.ACROSS,
                    Side.TOP,
                    Made.box(18, width - 18, 0, 300, top - 18, top));
        }
        return made;
    }

    // MDF 18 mm, E 2,200 MPa, 864 mm, 1915 Pa by hand: 5 q L^4 / (32 E t^3) = 12.99 mm of bending (the formula of a
    // fibreboard trade body), about 0.02 mm of shear; allowed 864 / 144 = 6.0.
    @Test
    void aLongFibreboardShelfIsToldOnceWithWhatWouldKeepIt() {
        List<Finding> findings = LastingChecks.check(bookcase("MDF", 900, 3).assembly()).stream()
                .filter(finding -> finding.sentence().contains(" sag "))
                .toList();
        assertEquals(1, findings.size());
        Finding finding = findings.get(0);
        assertEquals(Severity.CAUTION, finding.severity());
        assertEquals("shelf 1", finding.subject());
        assertTrue(finding.sentence().startsWith("shelf 1, shelf 2, shelf 3 sag "), finding.sentence());
        double bending = 5 * 40 * 47.88e-6 * Math.pow(864, 4) / (32 * 2200 * Math.pow(18, 3));
        assertEquals(bending, Parts.mm(finding.numbers().get(0)), 0.1);
        assertTrue(finding.sentence().contains("allows 6.0 mm"), finding.sentence());
        assertTrue(finding.remedy().contains("lipping"), finding.remedy());
    }

    @Test
    void aShortShelfIsLeftInPeace() {
        assertEquals(List.of(), about(bookcase("birch plywood", 400, 1).assembly(), "shelf 1"));
    }

    @Test
    void aShelfThatNothingHoldsIsAFinding() {
        Assembly lone = new Made("Board")
                .part("shelf", Made.solid("white oak"), Axis.ACROSS, Side.TOP, Made.box(0, 800, 0, 200, 500, 520))
                .assembly();
        assertTrue(about(lone, "shelf").get(0).sentence().startsWith("Nothing was found to carry"));
    }

    private static Made panelIn(double clearance) {
        Made made = new Made("Door")
                .part("panel", Made.solid("northern red oak"), Axis.UP, Side.FRONT, Made.box(0, 400, 0, 8, 0, 600));
        double wall = 10 - clearance;
        return made.part(
                        "left stile",
                        Made.solid("northern red oak"),
                        Axis.UP,
                        Side.FRONT,
                        Made.box(-50, wall, 0, 20, 0, 600))
                .part(
                        "right stile",
                        Made.solid("northern red oak"),
                        Axis.UP,
                        Side.FRONT,
                        Made.box(400 - wall, 450, 0, 20, 0, 600))
                .joint(Joint.Kind.GROOVE, "panel", "left stile", Map.of("depth", Made.mm(10)))
                .joint(Joint.Kind.GROOVE, "panel", "right stile", Map.of("depth", Made.mm(10)));
    }

    // Wood Handbook Eq. 13-2: 400 x .00369 x (11.0 - 8) = 4.4 mm, 2.2 mm at each edge (60 % at 23 C gives 10.9 %).
    @Test
    void aPanelWithoutRoomToGrowIsToldAndOneWithRoomIsNot() {
        Finding tight = about(panelIn(1).assembly(), "panel").get(0);
        assertEquals(Severity.CAUTION, tight.severity());
        assertEquals(4.3, Parts.mm(tight.numbers().get(0)), 0.2);
        assertEquals(List.of(), about(panelIn(3).assembly(), "panel"));
    }

    @Test
    void wideSolidEdgingAcrossASolidEndStopsTheJob() {
        Assembly assembly = new Made("Top")
                .part("core", Made.solid("black cherry"), Axis.ACROSS, Side.TOP, Made.box(0, 900, 0, 400, 500, 520))
                .part(
                        "left lipping",
                        Made.solid("black cherry"),
                        Axis.DEEP,
                        Side.LEFT,
                        Made.box(-20, 0, 0, 400, 500, 520))
                .joint(Joint.Kind.GLUED, "left lipping", "core", Map.of())
                .assembly();
        assertEquals(Severity.STOP, LastingChecks.check(assembly).get(0).severity());
    }

    // White fir 232 mm, 8 to 11 %: 1.7 mm (Wood Handbook ch. 13 example); here through the climate that gives 11 %.
    @Test
    void movementFollowsTheHandbookExample() {
        Assembly board = new Made("Board")
                .part("board", Made.solid("white fir"), Axis.ACROSS, Side.TOP, Made.box(0, 900, 0, 232, 500, 520))
                .assembly();
        Climate eleven = new Climate("test", List.of(new Climate.Month(20, 60)), "Eq. 4-5 at 20 C, 60 %: 11.000");
        assertEquals(
                1.705, Parts.mm(LastingChecks.movements(board, eleven, 8).get(0).growth()), 0.005);
    }

    @Test
    void aDrawerFrontWithoutAGapBindsInTheDampMonth() {
        Assembly assembly = new Made("Chest")
                .part(
                        "drawer 1 / front",
                        Made.solid("sugar maple"),
                        Axis.ACROSS,
                        Side.FRONT,
                        Made.box(0, 400, 0, 20, 1, 199))
                .opening("drawer 1 / opening", Made.box(0, 402, 0, 300, 0, 200), "drawer 1 / front")
                .assembly();
        assertTrue(about(assembly, "drawer 1 / front").get(0).sentence().contains("bind"));
    }

    @Test
    void airThatCannotBeIsAFindingAndNoFailure() {
        Climate wet = new Climate("bath", List.of(new Climate.Month(20, 130)), "typed");
        List<Finding> findings = LastingChecks.check(panelIn(1).assembly(), wet, 8);
        assertTrue(findings.get(0).sentence().contains("130"), findings.toString());
    }

    @Test
    void woodAboveFibreSaturationIsAFinding() {
        List<Finding> findings = LastingChecks.check(panelIn(1).assembly(), Climate.usual(), 45);
        assertTrue(findings.get(0).sentence().contains("fibre saturation"), findings.toString());
    }

    @Test
    void aWoodWithoutDataIsSaidToBeSo() {
        Assembly board = new Made("Board")
                .part("board", Made.solid("moon oak"), Axis.ACROSS, Side.TOP, Made.box(0, 900, 0, 232, 500, 520))
                .assembly();
        assertTrue(about(board, "board").get(0).sentence().contains("in no table"));
    }

    private static Made table() {
        return new Made("Table")
                .part("top", Made.solid("sugar maple"), Axis.ACROSS, Side.TOP, Made.box(0, 900, 0, 600, 700, 725))
                .part("left rail", Made.solid("sugar maple"), Axis.DEEP, Side.LEFT, Made.box(40, 60, 40, 560, 600, 700))
                .part(
                        "right rail",
                        Made.solid("sugar maple"),
                        Axis.DEEP,
                        Side.RIGHT,
                        Made.box(840, 860, 40, 560, 600, 700));
    }

    // Wood Handbook: 24 in of hard maple, 6 to 9 %: .254 in (.00353 each %). 600 mm from 6.4 to 11.0 %: about 9.7 mm,
    // half of it at each edge beside the screw of 5 mm: slots about 10 mm long.
    @Test
    void aSolidTopOnRailsAcrossItsGrainNeedsSlots() {
        Finding slots = about(table().assembly(), "top").get(0);
        assertEquals(Severity.NOTE, slots.severity());
        double expected = 600 * 0.00353 * (10.9 - 6.5);
        assertEquals(expected, Parts.mm(slots.numbers().get(0)), 0.5);
        assertTrue(slots.remedy().contains("slots 10.0 mm long"), slots.remedy());
    }

    @Test
    void breadboardEndsNeedSlotsForTheirOuterPins() {
        Assembly assembly = table().part(
                        "left breadboard end",
                        Made.solid("sugar maple"),
                        Axis.DEEP,
                        Side.TOP,
                        Made.box(-60, 0, 0, 600, 700, 725))
                .joint(Joint.Kind.MORTISE_AND_TENON, "top", "left breadboard end", Map.of())
                .assembly();
        assertTrue(about(assembly, "top").get(0).remedy().contains("slot the outer pins"));
    }

    // Sides of one grain direction with the top move along with it: nothing to slot.
    @Test
    void aTopOnSidesThatMoveWithItNeedsNone() {
        Assembly assembly = new Made("Case")
                .part("top", Made.solid("sugar maple"), Axis.ACROSS, Side.TOP, Made.box(0, 500, 0, 400, 700, 725))
                .part("left side", Made.solid("sugar maple"), Axis.UP, Side.LEFT, Made.box(0, 20, 0, 400, 0, 700))
                .part("right side", Made.solid("sugar maple"), Axis.UP, Side.RIGHT, Made.box(480, 500, 0, 400, 0, 700))
                .assembly();
        assertEquals(List.of(), about(assembly, "top"));
    }

    @Test
    void aLippingUnderTheFrontEdgeTakesSagAway() {
        Assembly bare = bookcase("MDF", 900, 1).assembly();
        Assembly lipped = bookcase("MDF", 900, 1)
                .part(
                        "front lipping",
                        Made.solid("black cherry"),
                        Axis.ACROSS,
                        Side.FRONT,
                        Made.box(18, 882, -20, 0, 90, 150))
                .joint(Joint.Kind.GLUED, "front lipping", "shelf 1", Map.of())
                .assembly();
        double before = Parts.mm(about(bare, "shelf 1").get(0).numbers().get(0));
        double after = about(lipped, "shelf 1").stream()
                .mapToDouble(finding -> Parts.mm(finding.numbers().get(0)))
                .findFirst()
                .orElse(0);
        assertTrue(after < before / 3, () -> before + " " + after);
    }

    @Test
    void booksWeighMoreThanOtherThings() {
        Assembly books = new Made("Bookcase")
                .part("left side", Made.sheet("MDF"), Axis.UP, Side.LEFT, Made.box(0, 18, 0, 300, 0, 500))
                .part("right side", Made.sheet("MDF"), Axis.UP, Side.RIGHT, Made.box(882, 900, 0, 300, 0, 500))
                .part("shelf", Made.sheet("MDF"), Axis.ACROSS, Side.TOP, Made.box(18, 882, 0, 300, 132, 150))
                .assembly();
        assertTrue(about(books, "shelf").get(0).sentence().contains("50 lb/ft2 (books)"));
    }
}
