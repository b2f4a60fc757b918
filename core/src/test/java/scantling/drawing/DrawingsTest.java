package scantling.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.feature.Surface;
import scantling.measure.LengthFormat;
import scantling.packet.PartGroup;
import scantling.packet.Shelf;

class DrawingsTest {
    private final Assembly shelf = Shelf.assembly();

    @Test
    void everyDrawingIsWellFormed() throws Exception {
        for (Drawing drawing : all()) {
            assertEquals("svg", parse(drawing.screenSvg()).getDocumentElement().getTagName());
            assertEquals("svg", parse(drawing.paperSvg()).getDocumentElement().getTagName());
        }
    }

    @Test
    void theSameDrawingIsTheSameTextWhereverItRuns() {
        List<String> here = all().stream().map(Drawing::paperSvg).toList();
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(here, all().stream().map(Drawing::paperSvg).toList());
        } finally {
            Locale.setDefault(usual);
        }
    }

    @Test
    void figuresCarryTheirPathAndOrigin() {
        String front = new Views(shelf, LengthFormat.MM).front().screenSvg();
        assertTrue(front.contains("<g class=\"n given\" data-path=\"width\">"));
        assertTrue(front.contains("<g class=\"n worked\" data-path=\"middle / width\">"));
    }

    @Test
    void printedWidthIsDrawnWidthOverUnitsToTheMillimetreOfPaper() throws Exception {
        Drawing front = new Views(shelf, LengthFormat.MM).front();
        Element svg = parse(front.paperSvg()).getDocumentElement();
        double units = Double.parseDouble(svg.getAttribute("viewBox").split(" ")[2]);
        assertEquals(units / 4, Double.parseDouble(svg.getAttribute("width").replace("mm", "")), 0.01);
        // 800 mm at 1 : 8, hand arithmetic: 100 mm, 400 units.
        assertEquals("1 : 8", front.scale().words());
        assertTrue(front.paperSvg().contains("x2=\"400\""));
    }

    @Test
    void whatIsNearerIsPaintedLaterAndHidesWhatLiesBehind() {
        List<String> front =
                View.FRONT.solids(shelf).stream().map(s -> s.part().path()).toList();
        assertEquals("back rail", front.get(0));
        List<String> top =
                View.TOP.solids(shelf).stream().map(s -> s.part().path()).toList();
        assertTrue(top.indexOf("lower shelf") < top.indexOf("upper shelf"));
        assertTrue(top.indexOf("back rail") < top.indexOf("upper shelf"));
    }

    @Test
    void workOnAPartIsDrawnToScaleFromItsMarksAndNumbered() {
        // By hand: 200 wide on 30 mm of paper is 1 : 8, so a millimetre is 0.5 units; the near end is at the right, so
        // the
        // dado that begins 100 from it begins at 300 - 50 = 250 and ends at 300 - 59 = 241; it is 200 wide, 100 units.
        PartGroup end = Shelf.content().groups().get(0);
        Drawing drawing = PartDrawing.of(end.sample(), end.work(), "end", LengthFormat.MM);
        assertEquals("1 : 8", drawing.scale().words());
        String svg = drawing.screenSvg();
        assertTrue(svg.contains("points=\"241,-100 250,-100 250,0 241,0\""), svg);
        assertTrue(svg.contains(">1<"), svg);
    }

    @Test
    void anEdgeWithWorkOnItIsFoldedOut() {
        Fold fold = new Fold(
                480, 160, 14, false, Set.of(Surface.FACE_SIDE, Surface.FACE_EDGE, Surface.FAR_END), new Spot(0, 300));
        assertEquals(new Spot(100, Fold.GAP + 7), fold.spot(Surface.FACE_EDGE, 100, 0, 7));
        assertEquals(new Spot(480 + Fold.GAP + 7, -30), fold.spot(Surface.FAR_END, 480, 30, 7));
        assertEquals(new Spot(100, -30), fold.spot(Surface.FACE_SIDE, 100, 30, 0));
        // Turned over along its length: the near end stays at the left, the face edge goes to the far side.
        assertEquals(new Spot(100, 330), fold.spot(Surface.BACK_SIDE, 100, 30, 14));
    }

    @Test
    void numbersKeepClearOfTheWorkAndOfEachOther() {
        Sketch sketch = new Sketch(LengthFormat.MM);
        Taken taken = new Taken();
        WorkNumbers numbers = new WorkNumbers(sketch, taken);
        Hatch.Field hole = new Hatch.Field(10, 10, 14, 14);
        taken.take(hole);
        numbers.write("1", hole);
        numbers.write("2", hole);
        List<Mark> marks = sketch.finish("", new Scale(10)).marks();
        assertEquals(2, marks.size());
        assertFalse(marks.get(0).equals(marks.get(1)));
        Mark.Words first = (Mark.Words) marks.get(0);
        Mark.Words second = (Mark.Words) marks.get(1);
        double apart = Math.max(
                Math.abs(first.spot().x() - second.spot().x()),
                Math.abs(first.spot().y() - second.spot().y()));
        assertTrue(apart > 8, first + " " + second);
    }

    @Test
    void oneOfAMirroredPairHasItsNearEndAtTheRight() {
        // With the left end's inner side up and its front edge toward you, its foot is at your right hand.
        assertTrue(part("left end").lie().hasNearEndRight());
        assertFalse(part("right end").lie().hasNearEndRight());
        assertFalse(part("lower shelf").lie().hasNearEndRight());
    }

    @Test
    void everyCutIsNumberedInItsOrder() throws Exception {
        CutSheet sheet = Shelf.content().sheets().get(0);
        NodeList texts =
                parse(CutDrawing.of(sheet, LengthFormat.MM).screenSvg()).getElementsByTagName("text");
        List<String> words = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            words.add(texts.item(i).getTextContent());
        }
        assertTrue(words.containsAll(List.of("1", "2", "3", "4", "A1", "B", "796.0 × 206.0")), words.toString());
    }

    @Test
    void everyPartIsMarkedWhereItIsDrawnApart() {
        String svg = Exploded.all(shelf, Map.of("left end", "A1", "back rail", "C"))
                .get(0)
                .screenSvg();
        assertTrue(svg.contains(">A1<"));
        assertTrue(svg.contains(">C<"));
    }

    @Test
    void hatchLinesStayInsideTheirField() throws Exception {
        Hatch.Field field = new Hatch.Field(10, 20, 70, 45);
        Sketch sketch = new Sketch(LengthFormat.MM);
        Hatch.slant(sketch, field, 7);
        Hatch.rings(sketch, field);
        Hatch.waves(sketch, field);
        Hatch.plies(sketch, field);
        Hatch.dots(sketch, field);
        Element svg = parse(sketch.finish("hatch", new Scale(10)).screenSvg()).getDocumentElement();
        String[] box = svg.getAttribute("viewBox").split(" ");
        assertTrue(Double.parseDouble(box[0]) >= 10 - 4 && Double.parseDouble(box[1]) >= 20 - 4);
        assertTrue(Double.parseDouble(box[2]) <= 60 + 8 && Double.parseDouble(box[3]) <= 25 + 8);
        assertTrue(svg.getChildNodes().getLength() > 50);
    }

    private List<Drawing> all() {
        List<Drawing> all = new ArrayList<>(new Views(shelf, LengthFormat.MM).all());
        all.addAll(Exploded.all(shelf, Map.of()));
        Shelf.content()
                .groups()
                .forEach(group -> all.add(PartDrawing.of(
                        group.sample(), group.work(), "<" + group.names() + "> & \"", LengthFormat.INCH)));
        all.add(CutDrawing.of(Shelf.content().sheets().get(0), LengthFormat.MM));
        all.add(ProofLine.draw(LengthFormat.MM));
        return all;
    }

    private Part part(String path) {
        return shelf.parts().stream()
                .filter(part -> part.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
