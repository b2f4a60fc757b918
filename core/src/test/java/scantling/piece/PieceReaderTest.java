package scantling.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.measure.Unit;
import scantling.space.Side;

final class PieceReaderTest {
    private static final Piece CHEST = Bench.piece(Bench.CHEST);

    private static Length mm(String decimal) {
        return Length.mm(decimal);
    }

    private static Element step(int index) {
        return CHEST.steps().get(index);
    }

    private static Material material(String name) {
        return Optional.ofNullable(CHEST.materials().get(name)).orElseThrow();
    }

    private static Making.Given given(Dim dim) {
        return (Making.Given) dim.making();
    }

    @Test
    void readsTheHeadOfTheDescription() {
        assertEquals("Bedside chest, three drawers", CHEST.title());
        assertEquals(Optional.of("O. Finchweir"), CHEST.client());
        assertEquals(Unit.MM, CHEST.unit());
        assertEquals(mm("500"), CHEST.width().value());
        assertEquals(mm("420"), CHEST.depth().value());
        assertEquals(mm("620"), CHEST.height().value());
        assertEquals(
                "[drawers / drawer 2 / front / width]", CHEST.sizes().keySet().toString());
        assertEquals("[stain, seal, top]", CHEST.finish().keySet().toString());
    }

    @Test
    void readsTheSizeByKeysAndInInches() {
        Piece desk = Bench.piece(
                "piece: x\nunit: in\nsize: {width: 19 1/2, depth: 420 mm, height: width + 3/4}\nbuild: []\n");
        assertEquals(Length.inches(39, 2), desk.width().value());
        assertEquals(mm("420"), desk.depth().value());
        assertEquals(Length.inches(81, 4), desk.height().value());
        Piece said = Bench.piece("piece: x\nsize: 6' 3\" long, 30 in tall, 19 1/2 in deep\nbuild: []\n");
        assertEquals(Length.inches(75), said.width().value());
        assertEquals(Length.inches(39, 2), said.depth().value());
    }

    @Test
    void buildsWithTheMeasuredThicknessAndKeepsTheNominal() {
        Material veneered = material("veneered");
        assertEquals(mm("12.6"), veneered.thickness().value());
        assertEquals(mm("13"), veneered.nominal().orElseThrow().value());
        assertEquals(Material.Kind.SHEET, veneered.kind());
        assertTrue(veneered.grained());
    }

    @Test
    void readsWhatIsSaidAboutASheet() {
        Material core = material("core");
        assertEquals(mm("1525"), core.sheetLength().orElseThrow().value());
        assertEquals(mm("1524"), core.sheetWidth().orElseThrow().value());
        assertFalse(core.grained());
        assertEquals(Optional.of(8400L), core.price());
        assertEquals(mm("6.35"), material("edging").thickness().value());
    }

    @Test
    void readsLengthsBySideAndLeavesOutWhatWasNotSaid() {
        Element top = step(0);
        assertEquals(mm("12"), top.onSide("overhang", Side.FRONT).value());
        assertEquals(mm("8"), top.onSide("overhang", Side.RIGHT).value());
        assertEquals(Dim.ZERO, top.onSide("overhang", Side.BACK));
    }

    @Test
    void theNarrowerWordForSidesWins() {
        Element top = Bench.piece(Bench.with("- top: {of: cherry, overhang: {left: 1, ends: 2, sides: 3}}"))
                .steps()
                .get(0);
        assertEquals(mm("1"), top.onSide("overhang", Side.LEFT).value());
        assertEquals(mm("2"), top.onSide("overhang", Side.RIGHT).value());
        assertEquals(mm("3"), top.onSide("overhang", Side.BACK).value());
    }

    @Test
    void aGivenNumberKnowsItsPathAndItsPlace() {
        Making.Given front = given(step(0).onSide("overhang", Side.FRONT));
        assertEquals("top / overhang / front", front.label());
        assertEquals(
                "12", Bench.CHEST.substring(front.span().start(), front.span().end()));
        assertEquals("size / depth", given(CHEST.depth()).label());
        assertEquals(
                "420",
                Bench.CHEST.substring(
                        given(CHEST.depth()).span().start(),
                        given(CHEST.depth()).span().end()));
    }

    @Test
    void aUsualValueIsLookedUpWithItsSource() {
        assertEquals(
                new Making.LookedUp("usual sizes", "top / reveal", "common practice"),
                step(0).length("reveal").making());
        assertEquals("square", step(0).text("edge"));
        assertFalse(step(0).has("breadboards"));
    }

    @Test
    void usualSizesAreMillimetresInAPieceDrawnInInches() {
        Piece piece = Bench.piece(Bench.with("- top: cherry", "unit: in")
                .replace("500", "50")
                .replace("420", "42")
                .replace("620", "62"));
        assertEquals(mm("2"), piece.steps().get(0).length("reveal").value());
        assertEquals(Length.inches(50), piece.width().value());
    }

    @Test
    void readsPortions() {
        List<Portion> portions = step(1).portions("sizes");
        assertEquals(
                List.of(
                        new Portion.Fixed(Dim.given(
                                mm("130"), "", "", given(CHEST.width()).span())),
                        new Portion.Fixed(Dim.given(
                                mm("150"), "", "", given(CHEST.width()).span())),
                        new Portion.Shares(1)),
                portions);
        Element equal = Bench.piece(Bench.with("- rows: 3 equal")).steps().get(0);
        assertEquals(
                List.of(new Portion.Shares(1), new Portion.Shares(1), new Portion.Shares(1)), equal.portions("sizes"));
        Element shares =
                Bench.piece(Bench.with("- rows: [2 shares, rest]")).steps().get(0);
        assertEquals(List.of(new Portion.Shares(2), new Portion.Shares(1)), shares.portions("sizes"));
    }

    @Test
    void elementsNestAndCarryTheirNames() {
        List<Element> spaces = step(1).parts("spaces");
        assertEquals(
                List.of("upper", "lower"), spaces.stream().map(Element::name).toList());
        Element drawer = spaces.get(1).parts("build").get(0);
        assertEquals("drawer", drawer.kind());
        assertSame(Material.Kind.SHEET, drawer.stock("side").material().kind());
        assertEquals(mm("38.1"), drawer.stock("side").width().orElseThrow().value());
        assertEquals("dry: waxed", spaces.get(0).parts("build").get(0).text("note"));
        assertEquals(
                "cherry",
                spaces.get(0).parts("build").get(0).stock("side").material().name());
    }

    @Test
    void partsMayStandUnderTheirNames() {
        List<Element> boards = step(2).parts("parts");
        assertEquals(
                List.of("shelf", "cleat"), boards.stream().map(Element::name).toList());
        assertEquals(mm("460"), boards.get(0).length("long").value());
        assertEquals(mm("250"), boards.get(0).stock("of").width().orElseThrow().value());
        assertEquals(mm("-3"), boards.get(0).part("at").length("across").value());
        assertEquals(mm("40"), boards.get(1).stock("of").width().orElseThrow().value());
    }

    @Test
    void readsOutlines() {
        Element board = Bench.piece(
                        Bench.with("- boards: {parts: [{of: cherry, outline: [[0, 0], [400, 0], [0, -60]]}]}"))
                .steps()
                .get(0)
                .parts("parts")
                .get(0);
        assertEquals(
                mm("-60"),
                board.findOutline("outline")
                        .orElseThrow()
                        .corners()
                        .get(2)
                        .across()
                        .value());
    }

    @Test
    void aKeyThatStandsAloneMeansYes() {
        assertTrue(Bench.piece(Bench.with("- top: {of: cherry, breadboards}"))
                .steps()
                .get(0)
                .flag("breadboards"));
    }

    @Test
    void stepsMayBeBareWordsOrOneMapping() {
        assertEquals(
                "drawer", Bench.piece(Bench.with("- drawer")).steps().get(0).kind());
        List<Element> steps =
                Bench.piece(Bench.with("top: cherry\ndrawer: {name: till}")).steps();
        assertEquals(List.of("top", "till"), steps.stream().map(Element::name).toList());
    }

    @Test
    void placesAreRightBehindCharactersThatTakeTwoUnitsAndWindowsLineEnds() {
        String text =
                "\uFEFF" + Bench.CHEST.replace("three drawers", "\uD83E\uDE9A").replace("\n", "\r\n");
        Dim width = Bench.piece(text).width();
        assertEquals(
                "500",
                text.substring(given(width).span().start(), given(width).span().end()));
        assertEquals(4, given(width).span().line());
    }
}
