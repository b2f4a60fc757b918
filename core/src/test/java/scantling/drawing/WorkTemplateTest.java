package scantling.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.construct.Part;
import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Setting;
import scantling.feature.Surface;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.packet.Shelf;

/**
 * Held against a board in the hand, near end at the left, face side up, face edge toward you: turned over toward you, its face
 * edge is away and the near end still left, so that with the face edge below the near end is at the right.
 */
class WorkTemplateTest {
    private static final Part RAIL = Shelf.content().groups().get(3).sample();

    private static Range range(String from, String to) {
        Dim low = Dim.lookedUp(Length.mm(from), "test", "test", "by hand");
        Dim high = Dim.lookedUp(Length.mm(to), "test", "test", "by hand");
        return new Range(low, high);
    }

    private static Feature hole(Surface surface, String along, String across, String through) {
        String[] sizes = {along, across, through};
        Range[] ranges = new Range[sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            double at = Double.parseDouble(sizes[i]);
            ranges[i] = range(String.valueOf(at - 2.5), String.valueOf(at + 2.5));
        }
        return new Feature(
                "screws / hole",
                RAIL.path(),
                "screws",
                Feature.Kind.HOLE,
                surface,
                ranges[0],
                ranges[1],
                ranges[2],
                Optional.empty(),
                new Setting("drill", "brad-point 5.0", Map.of(), List.of()));
    }

    private static double at(Drawing drawing, String words) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Words said && said.words().equals(words))
                .map(mark -> ((Mark.Words) mark).spot().x())
                .findFirst()
                .orElseThrow();
    }

    private static double circle(Drawing drawing) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Circle)
                .map(mark -> ((Mark.Circle) mark).centre().x())
                .findFirst()
                .orElseThrow();
    }

    private static Drawing one(Surface surface, String along, String across, String through) {
        return WorkTemplate.all(RAIL, List.of(hole(surface, along, across, through)), "test", LengthFormat.MM)
                .get(0);
    }

    @Test
    void onTheFaceSideTheNearEndIsAtTheLeft() {
        Drawing drawing = one(Surface.FACE_SIDE, "60", "30", "9");
        assertTrue(at(drawing, "near end") < circle(drawing));
    }

    @Test
    void onTheBackSideItIsAtTheRight() {
        Drawing drawing = one(Surface.BACK_SIDE, "60", "30", "9");
        assertTrue(at(drawing, "near end") > circle(drawing));
    }

    @Test
    void aHoleInAnEndIsPlacedFromTheFaceEdgeAndTheFaceSide() {
        // By hand, at 4 units to the millimetre: 20 from the face edge.
        Drawing near = one(Surface.NEAR_END, "5", "20", "9");
        assertEquals(80, circle(near), 0.01);
        Drawing far = one(Surface.FAR_END, "5", "20", "9");
        assertEquals((60 - 20) * 4, circle(far), 0.01);
    }

    @Test
    void workAtBothEndsOfALongPartGetsATemplateToEachEnd() {
        List<Drawing> all = WorkTemplate.all(
                RAIL,
                List.of(hole(Surface.FACE_SIDE, "60", "30", "9"), hole(Surface.FACE_SIDE, "704", "30", "9")),
                "screws",
                LengthFormat.MM);
        assertEquals(
                List.of("screws, near end", "screws, far end"),
                all.stream().map(Drawing::title).toList());
    }

    @Test
    void aHoleFarFromBothEndsIsLeftToTheStrip() {
        List<Drawing> all = WorkTemplate.all(
                RAIL,
                List.of(
                        hole(Surface.FACE_SIDE, "60", "30", "9"),
                        hole(Surface.FACE_SIDE, "382", "30", "9"),
                        hole(Surface.FACE_SIDE, "704", "30", "9")),
                "screws",
                LengthFormat.MM);
        assertEquals(
                List.of("screws, near end", "screws, far end"),
                all.stream().map(Drawing::title).toList());
    }

    @Test
    void workEvenAboutTheMiddleOfALongPartIsLaidOnByItsMiddle() {
        // By hand: the rail is 764 long; 318 and 446 are 64 to each side of 382.
        Drawing drawing = WorkTemplate.all(
                        RAIL,
                        List.of(hole(Surface.FACE_SIDE, "318", "30", "9"), hole(Surface.FACE_SIDE, "446", "30", "9")),
                        "handle",
                        LengthFormat.MM)
                .get(0);
        assertEquals((at(drawing, "middle") - 4) / 4, 382, 0.01);
    }

    private static Laid pair(String first, String second) {
        return WorkTemplate.laid(
                        RAIL,
                        List.of(hole(Surface.FACE_SIDE, first, "30", "9"), hole(Surface.FACE_SIDE, second, "30", "9")),
                        "pins",
                        LengthFormat.MM)
                .get(0);
    }

    @Test
    void theSameWorkFurtherAlongAPartIsTheSameTemplate() {
        // By hand: 32 apart, 300 and 420 from the near end of a part of 764.
        assertEquals(pair("300", "332").likeness(), pair("420", "452").likeness());
        assertEquals("pins, from 300 mm", pair("300", "332").drawing().title().replace(".0", ""));
    }

    @Test
    void otherWorkOrTheSameAtAnEndIsAnother() {
        assertNotEquals(pair("300", "332").likeness(), pair("420", "484").likeness());
        assertNotEquals(pair("300", "332").likeness(), pair("60", "92").likeness());
    }

    @Test
    void aNameOfAnEdgeStandsClearOfTheHoles() {
        // By hand, at 4 units to the millimetre: the hole lies where the middle of the near end is, 30 from the face
        // edge of a rail 60 wide; it reaches 19 units to each side.
        Drawing drawing = one(Surface.FACE_SIDE, "5", "30", "9");
        double name = drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Words said && said.words().equals("near end"))
                .map(mark -> ((Mark.Words) mark).spot().y())
                .findFirst()
                .orElseThrow();
        assertTrue(Math.abs(name + 120) > 19, "name at " + name);
    }
}
