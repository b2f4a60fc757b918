package scantling.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.drawing.Region.Where;
import scantling.measure.LengthFormat;
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
    void aDadoIsSaidFromTheMarks() {
        // By hand: the shelf stands 100 up and is 18 thick, let 6 into the inner side.
        Region dado = Region.of(shelf, part("left end")).get(0);
        assertEquals("dado", dado.what());
        assertEquals(Where.FACE_SIDE, dado.where());
        assertEquals("100 mm", dado.along().from().value().toString());
        assertEquals("118 mm", dado.along().to().value().toString());
        assertEquals("200 mm", dado.across().size().value().toString());
        assertEquals("6 mm", dado.depth().value().toString());
    }

    @Test
    void whatIsLetInStandsOutOfAnEnd() {
        Region end = Region.of(shelf, part("lower shelf")).get(1);
        assertEquals(Where.FAR_END, end.where());
        assertFalse(end.removed());
        assertEquals("770 mm", end.along().from().value().toString());
        assertEquals("6 mm", end.depth().value().toString());
    }

    @Test
    void oneOfAMirroredPairHasItsNearEndAtTheRight() {
        // With the left end's inner side up and its front edge toward you, its foot is at your right hand.
        assertTrue(Region.isNearEndRight(part("left end")));
        assertFalse(Region.isNearEndRight(part("right end")));
        assertFalse(Region.isNearEndRight(part("lower shelf")));
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
        assertTrue(
                words.containsAll(List.of("1", "2", "3", "4", "A1", "B", "796.0 × 206.0", "206.0")), words.toString());
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
        shelf.parts()
                .forEach(part -> all.add(PartDrawing.of(shelf, part, "<" + part.path() + "> & \"", LengthFormat.INCH)));
        all.add(CutDrawing.of(Shelf.content().sheets().get(0), LengthFormat.MM));
        all.add(ProofLine.draw());
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
