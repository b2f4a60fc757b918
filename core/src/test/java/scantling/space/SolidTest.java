package scantling.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Span;

class SolidTest {
    private static final Lie LEG = Lie.along(Axis.UP, Side.FRONT);

    private static Dim mm(long mm) {
        return Dim.given(Length.mm(mm), "drawn", mm + " mm", new Span(1, 1, 0, 1));
    }

    private static Box box(long left, long right, long front, long back, long bottom, long top) {
        return new Box(mm(left), mm(right), mm(front), mm(back), mm(bottom), mm(top));
    }

    private static Solid plain(Box box) {
        return Solid.of(box, LEG, Optional.empty(), Optional.empty());
    }

    @Test
    void twoBoxesThreeMillimetresIntoEachOtherAreThreeDeep() {
        assertEquals(3, plain(box(0, 40, 0, 40, 0, 400)).depthIn(plain(box(37, 80, 0, 40, 0, 400))), 1e-9);
    }

    @Test
    void boxesFaceToFaceTouchAndShareNothing() {
        Solid one = plain(box(0, 40, 0, 40, 0, 400));
        Solid two = plain(box(40, 80, 10, 30, 0, 400));
        assertTrue(one.touches(two));
        assertTrue(one.findShared(two).isEmpty());
    }

    @Test
    void aTaperedLegLeavesRoomWhereItsBoxWouldNot() {
        // Tapered from 40 at the top to 20 at the floor, on the edge away from the face edge (left).
        Outline taper = new Outline(List.of(
                new Outline.Corner(mm(0), mm(0)),
                new Outline.Corner(mm(400), mm(0)),
                new Outline.Corner(mm(400), mm(40)),
                new Outline.Corner(mm(0), mm(20))));
        Solid leg = Solid.of(box(0, 40, 0, 40, 0, 400), LEG, Optional.of(taper), Optional.empty());
        assertEquals(30.0 * 400 * 40, leg.volume(), 1e-6);
        assertFalse(leg.touches(plain(box(35, 80, 0, 40, 0, 100))), "at 100 up it is 25 wide");
        assertTrue(leg.findShared(plain(box(35, 80, 0, 40, 300, 400))).isPresent(), "at 400 up it is 40 wide");
    }

    @Test
    void aTurnMovesAcrossTowardDeepAboutAnUprightLine() {
        Turn quarter = new Turn(Axis.UP, 90, mm(0), mm(0));
        Solid turned = Solid.of(box(10, 30, 0, 5, 0, 7), LEG, Optional.empty(), Optional.of(quarter));
        Extent extent = turned.extent();
        assertEquals(10, extent.front(), 1e-9);
        assertEquals(30, extent.back(), 1e-9);
        assertEquals(-5, extent.left(), 1e-9);
        assertEquals(0, extent.right(), 1e-9);
    }

    @Test
    void aLegSplayedByAnEighthOfATurnReachesTheDiagonalOfItsSection() {
        Turn eighth = new Turn(Axis.UP, 45, mm(20), mm(20));
        Extent extent = Solid.of(box(0, 40, 0, 40, 0, 400), LEG, Optional.empty(), Optional.of(eighth))
                .extent();
        // half the diagonal of a 40 mm square is 28.284 mm (Pythagoras)
        assertEquals(20 - 28.284, extent.left(), 1e-3);
        assertEquals(20 + 28.284, extent.back(), 1e-3);
    }

    @Test
    void edgesThatCrossInTheAirAreSeenToBeApart() {
        // Two square bars, each on its edge by 45 degrees, crossing at right angles: their nearest are two edges.
        Turn aboutAcross = new Turn(Axis.ACROSS, 45, mm(0), mm(0));
        Turn aboutDeep = new Turn(Axis.DEEP, 45, mm(30), mm(0));
        Solid lower = Solid.of(box(-100, 100, -10, 10, -10, 10), LEG, Optional.empty(), Optional.of(aboutAcross));
        Solid upper = Solid.of(box(-10, 10, -100, 100, 20, 40), LEG, Optional.empty(), Optional.of(aboutDeep));
        // each reaches 14.142 from its middle, the middles are 30 apart: a gap of 1.716
        assertEquals(-(30 - 2 * 14.1421356), lower.depthIn(upper), 1e-6);
        assertFalse(lower.touches(upper));
    }

    @Test
    void outlineDistancesRunFromTheNearEndAndTheFaceEdgeEvenOnFarSides() {
        Lie fromTop = new Lie(Axis.UP, Axis.DEEP, Side.FRONT, Side.RIGHT, Side.TOP);
        Outline corner = new Outline(List.of(
                new Outline.Corner(mm(0), mm(0)),
                new Outline.Corner(mm(10), mm(0)),
                new Outline.Corner(mm(10), mm(5)),
                new Outline.Corner(mm(0), mm(5))));
        Extent extent = Solid.of(box(0, 40, 0, 20, 0, 400), fromTop, Optional.of(corner), Optional.empty())
                .extent();
        assertEquals(new Extent(35, 40, 0, 20, 390, 400), extent);
    }

    @Test
    void contactIsTheExactRectangleOfTouching() {
        Box rail = box(40, 360, 5, 25, 300, 380);
        Contact contact = Contact.between(box(0, 40, 0, 40, 0, 400), rail).orElseThrow();
        assertEquals(Side.RIGHT, contact.side());
        assertEquals(box(40, 40, 5, 25, 300, 380), contact.patch());
    }

    @Test
    void boxesThatMeetInAnEdgeOnlyOrShareSpaceHaveNoContact() {
        Box one = box(0, 40, 0, 40, 0, 400);
        assertTrue(Contact.between(one, box(40, 80, 40, 80, 0, 400)).isEmpty());
        assertTrue(Contact.between(one, box(39, 80, 0, 40, 0, 400)).isEmpty());
        assertTrue(Contact.between(one, box(41, 80, 0, 40, 0, 400)).isEmpty());
    }

    @Test
    void aBowTieIsNoSimpleOutline() {
        Outline bowTie = new Outline(List.of(
                new Outline.Corner(mm(0), mm(0)),
                new Outline.Corner(mm(10), mm(10)),
                new Outline.Corner(mm(10), mm(0)),
                new Outline.Corner(mm(0), mm(10))));
        assertFalse(Outlines.isSimple(bowTie));
    }
}
