package scantling.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.openhtmltopdf.util.XRLog;
import java.awt.geom.Line2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Fitting;
import scantling.construct.Part;
import scantling.construct.Starters;
import scantling.drawing.Drawing;
import scantling.drawing.Mark;
import scantling.feature.Feature;
import scantling.measure.LengthFormat;

/** Templates of every starter: all that is asked for is there, and true on paper, measured with PDFBox. */
class StarterTemplatesTest {
    static {
        XRLog.setLoggingEnabled(false);
    }

    private static final double TENTH = 0.1;

    static List<String> starters() {
        return Starters.NAMES;
    }

    private static List<String> captions(PacketContent content, String chapter) {
        return TemplatePages.of(content).chapters().stream()
                .filter(each -> each.id().equals(chapter))
                .flatMap(each -> each.rows().stream())
                .flatMap(List::stream)
                .map(Drawing::title)
                .toList();
    }

    /** Marks of the parts as drawn: the second hand of a pair by the mark of the first. */
    private static Map<String, String> marks(PacketContent content) {
        Map<String, String> marks = new HashMap<>();
        for (PartGroup group : content.groups()) {
            group.paths().forEach(path -> marks.put(path, group.mirrors().orElse(group.mark())));
        }
        return marks;
    }

    private static boolean names(String caption, String mark) {
        return List.of(caption.split("[:,] ")).contains(mark) || caption.startsWith(mark + ":");
    }

    private static void missing(Set<String> wanted, Set<String> missing, Predicate<String> there) {
        wanted.stream().filter(there.negate()).forEach(missing::add);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everySlideHingeHandleAndFrontHasATemplateOnEveryPartItIsFixedTo(String starter) {
        PacketContent content = StarterPapers.content(starter, LengthFormat.MM);
        Map<String, String> marks = marks(content);
        Map<String, String> fittings = new HashMap<>();
        for (Fitting fitting : content.assembly().fittings()) {
            fittings.put(fitting.path(), fitting.what());
        }
        List<String> captions = captions(content, "fittings");
        List<String> strips = captions(content, "strips");
        Set<String> missing = new TreeSet<>();
        for (Feature feature : content.features().features()) {
            String what = fittings.get(feature.owner());
            if (what != null) {
                String mark = String.valueOf(marks.get(feature.part()));
                String wanted = ", " + what + ", " + feature.surface().words();
                boolean there = captions.stream().anyMatch(each -> names(each, mark) && each.contains(wanted));
                boolean onStrip = strips.stream().anyMatch(each -> names(each, mark));
                if (!there && !onStrip) {
                    missing.add(mark + wanted);
                }
            }
        }
        assertEquals(Set.of(), missing);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyPartThatIsNoPlainBoardHasItsShape(String starter) {
        PacketContent content = StarterPapers.content(starter, LengthFormat.MM);
        Map<String, String> marks = marks(content);
        List<String> captions = captions(content, "outlines");
        Set<String> wanted = new TreeSet<>();
        for (Part part : content.assembly().parts()) {
            if (part.outline().isPresent()) {
                wanted.add(String.valueOf(marks.get(part.path())));
            }
        }
        Set<String> missing = new TreeSet<>();
        missing(wanted, missing, mark -> captions.stream().anyMatch(each -> names(each, mark)));
        assertEquals(Set.of(), missing);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyPartWithTwoPlacesAlongItHasItsStrip(String starter) {
        PacketContent content = StarterPapers.content(starter, LengthFormat.MM);
        Map<String, String> marks = marks(content);
        Map<String, Set<String>> places = new HashMap<>();
        for (Feature feature : content.features().features()) {
            boolean onEnd = feature.surface().words().endsWith("end");
            if (!onEnd && feature.kind() == Feature.Kind.HOLE) {
                places.computeIfAbsent(String.valueOf(marks.get(feature.part())), key -> new TreeSet<>())
                        .add(feature.along().middle().value().toString());
            }
        }
        List<String> captions = captions(content, "strips");
        Set<String> wanted = new TreeSet<>(places.keySet());
        wanted.removeIf(mark -> places.getOrDefault(mark, Set.of()).size() < 2);
        Set<String> missing = new TreeSet<>();
        missing(wanted, missing, mark -> captions.stream().anyMatch(each -> names(each, mark)));
        assertEquals(Set.of(), missing);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void noTileIsPrintedOnWhichNothingStands(String starter) {
        for (LengthFormat format : List.of(LengthFormat.MM, LengthFormat.INCH)) {
            Set<String> bare = new TreeSet<>();
            TemplatePages.of(StarterPapers.content(starter, format)).chapters().stream()
                    .filter(chapter -> !chapter.id().equals("outlines"))
                    .flatMap(chapter -> chapter.rows().stream())
                    .flatMap(List::stream)
                    .filter(tile -> tile.marks().stream()
                            .noneMatch(mark -> mark instanceof Mark.Circle || mark instanceof Mark.Figure))
                    .forEach(tile -> bare.add(tile.title()));
            assertEquals(Set.of(), bare);
        }
    }

    @ParameterizedTest
    @MethodSource("starters")
    void theProofLineIsTwoHundredMillimetresOnEveryPaper(String starter) throws IOException {
        PacketContent content = StarterPapers.content(starter, LengthFormat.MM);
        for (Paper paper : Paper.values()) {
            try (PDDocument document =
                    Loader.loadPDF(TemplatePages.pdf(content, paper).orElseThrow())) {
                List<Double> lines = StrokedLines.upright(document.getPage(0));
                assertTrue(lines.stream().anyMatch(line -> Math.abs(line - 200) < TENTH), lines.toString());
            }
        }
    }

    @Test
    void thePlacesOnAStripAreAsFarFromTheNearEndOnPaperAsOnThePart() throws IOException {
        // By hand: three slots in the front lipping (A) of the chest, 500 long: 80 and 250 from the near end, 170
        // apart.
        PacketContent content = StarterPapers.content("bedside-chest", LengthFormat.MM);
        try (PDDocument document =
                Loader.loadPDF(TemplatePages.pdf(content, Paper.A4).orElseThrow())) {
            assertTrue(anyPage(document, "A, top / front lipping, tile 1", StarterTemplatesTest::hasEightyFromTheEnd));
        }
    }

    @Test
    void theTwoHolesOfAHandleAreAsFarApartOnPaperAsOnTheFront() throws IOException {
        // By hand: the front is 420 long and its holes 146 and 274 from its near end: 128 apart.
        PacketContent content = StarterPapers.content("bedside-chest", LengthFormat.MM);
        try (PDDocument document =
                Loader.loadPDF(TemplatePages.pdf(content, Paper.LETTER).orElseThrow())) {
            assertTrue(anyPage(document, "drawer 1 / handle, handle, face side", StarterTemplatesTest::hasPairAt128));
        }
    }

    private static boolean anyPage(PDDocument document, String words, Predicate<List<Line2D>> holds)
            throws IOException {
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
            PDFTextStripper text = new PDFTextStripper();
            text.setStartPage(page);
            text.setEndPage(page);
            if (text.getText(document).contains(words) && holds.test(StrokedLines.all(document.getPage(page - 1)))) {
                return true;
            }
        }
        return false;
    }

    private static double high(Line2D line) {
        return Math.abs(line.getY1() - line.getY2());
    }

    private static List<Line2D> upright(List<Line2D> lines) {
        List<Line2D> upright = new ArrayList<>(lines);
        upright.removeIf(line -> Math.abs(line.getX1() - line.getX2()) > 0.01);
        return upright;
    }

    /** The end of the strip is 34 mm high, a place 15 mm. */
    private static boolean hasEightyFromTheEnd(List<Line2D> lines) {
        List<Line2D> all = upright(lines);
        return all.stream()
                .filter(end -> Math.abs(high(end) - 34) < TENTH)
                .anyMatch(end -> all.stream()
                        .filter(place -> Math.abs(high(place) - 15) < TENTH)
                        .anyMatch(place -> Math.abs(place.getX1() - end.getX1() - 80) < TENTH));
    }

    private static boolean hasPairAt128(List<Line2D> lines) {
        List<Line2D> all = upright(lines);
        return all.stream()
                .anyMatch(one -> all.stream()
                        .anyMatch(other -> Math.abs(high(one) - high(other)) < 0.01
                                && Math.abs(one.getY1() - other.getY1()) < 0.01
                                && Math.abs(other.getX1() - one.getX1() - 128) < TENTH));
    }
}
