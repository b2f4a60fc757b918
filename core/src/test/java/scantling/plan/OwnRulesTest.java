package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.construct.Fitting;
import scantling.feature.Feature;
import scantling.joinery.JointRules;
import scantling.joinery.OwnRows;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.stock.HardwareProfiles;
import scantling.stock.Rack;

/** A shop's own rules for joints and its own hardware reach every hole. */
class OwnRulesTest {
    private static final String PIECE = """
        piece: Try-out
        unit: mm
        size: 500 wide, 450 deep, 700 high
        materials:
          oak: {solid: white oak, thickness: 20}
          ply: {sheet: birch plywood, thickness: 18}
          box: {sheet: birch plywood, thickness: 12}
          thin: {sheet: birch plywood, thickness: 6}
        build:
          - ends: {frame: {stiles: oak 60, top rail: oak 60, bottom rail: oak 80, joint: loose tenon}}
          - rails: oak 60
          - drawer: {fronts: {of: oak, set: inset}, box: {of: box, floor: thin}}
        """;

    private static Plan plan(String shop) {
        ShopReader.Result read = ShopReader.read(shop, Rack.EMPTY);
        assertEquals(List.of(), read.problems());
        Piece piece = PieceReader.read(PIECE, Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        return Planner.plan(piece, BenchLog.EMPTY, read.shop().orElseThrow()).plan();
    }

    private static List<String> bits(Plan plan) {
        return plan.features().features().stream()
                .filter(each -> each.kind() == Feature.Kind.MORTISE)
                .map(each -> each.setting().tool())
                .distinct()
                .toList();
    }

    /** A third of 20 is 6.67: of the usual bits 6 is nearest, of 8 and 12 it is 8. */
    @Test
    void theBitsOfTheShopDecideHowThickTenonsAre() {
        assertEquals(List.of("straight bit 6.0"), bits(plan("joints: {glue room: 1 mm}")));
        assertEquals(List.of("straight bit 8.0"), bits(plan("joints:\n  bits: 8 mm, 12 mm\n")));
    }

    /** 450 less 20 of front: 430, less 13 behind: 417. */
    @Test
    void theLengthsOfTheShopsSlidesDecideHowLongABoxIs() {
        assertEquals(List.of("concealed undermount slide 400.0 mm"), slides(plan("joints: {glue room: 1 mm}")));
        assertEquals(
                List.of("concealed undermount slide 410.0 mm"),
                slides(plan("hardware:\n  concealed undermount:\n    length: 310 mm, 410 mm\n")));
    }

    private static List<String> slides(Plan plan) {
        return plan.assembly().fittings().stream()
                .map(Fitting::what)
                .filter(what -> what.contains("slide"))
                .toList();
    }

    private static JointRules rules(String joints) {
        ShopReader.Result read = ShopReader.read("joints:\n" + joints.indent(2), Rack.EMPTY);
        assertEquals(List.of(), read.problems());
        return read.shop().orElseThrow().joints();
    }

    private static String plan(String joint, String joints) {
        ShopReader.Result read = ShopReader.read("joints:\n" + joints.indent(2), Rack.EMPTY);
        Piece piece = PieceReader.read(
                        PIECE.replace("loose tenon", joint), Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        return Planner.plan(piece, BenchLog.EMPTY, read.shop().orElseThrow()).plan().features().choices().stream()
                .filter(choice -> choice.owner().equals("left end / top rail to front stile"))
                .map(choice -> choice.sentence() + " " + choice.source())
                .findFirst()
                .orElse("");
    }

    /** The table gives pocket screws no. 8 x 32 for 18 mm; stock of 20 takes that row. */
    @Test
    void aRowOfThePocketScrewsIsTheShopsOwn() {
        assertTrue(plan("pocket screw", "glue room: 1 mm").contains("pocket screws no. 8 x 32.0"));
        String own = plan("pocket screw", "pocket screw for 18 mm: {screw: 30 mm, gauge: 7}");
        assertTrue(own.contains("pocket screws no. 7 x 30.0"), own);
        assertTrue(own.endsWith("the shop's own"), own);
    }

    /** The smallest biscuit of the table wants 57 of width; one of 40 goes into a rail of 60 and into thinner stock. */
    @Test
    void aBiscuitOfTheShopsOwnIsUsed() {
        String own = plan("biscuit", """
            biscuit house: {length: 48 mm, width: 14 mm, thickness: 4 mm, slot: 7.5 mm, least stock: 9 mm}
            biscuits: house
            """);
        assertTrue(own.startsWith("1 biscuit house: the largest"), own);
    }

    @Test
    void oneSizeOfABiscuitCanBeReplacedByItself() {
        JointRules own = rules("biscuit 20: {slot: 12 mm}");
        JointRules.Biscuit twenty = own.biscuits().stream()
                .filter(each -> each.name().equals("#20"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "12", twenty.slot().value().millimetres().stripTrailingZeros().toPlainString());
        assertEquals(
                "56", twenty.length().value().millimetres().stripTrailingZeros().toPlainString());
        assertEquals("the shop's own", twenty.source());
    }

    /** Holes of a screw reach joints and hinges alike. */
    @Test
    void aRowOfTheScrewsReachesTheHolesOfHinges() {
        String hinged = PIECE.substring(0, PIECE.indexOf("  - drawer")) + "  - doors: {count: 1, of: oak}\n";
        ShopReader.Result read = ShopReader.read("joints:\n  screw no. 6: {hardwood: 2.5 mm}\n", Rack.EMPTY);
        Piece piece = PieceReader.read(hinged, Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        List<String> tools =
                Planner.plan(piece, BenchLog.EMPTY, read.shop().orElseThrow()).plan().features().features().stream()
                        .filter(each ->
                                each.path().endsWith("screw") && each.owner().endsWith("hinges"))
                        .map(each -> each.setting().tool())
                        .distinct()
                        .toList();
        assertEquals(List.of("twist bit 2.5 mm"), tools);
    }

    @Test
    void aDowelsLengthsAreThoseOnTheShelf() {
        JointRules own = rules("dowel 8 mm:\n  lengths: 36 mm, 44 mm\n");
        List<String> lengths = own.dowels().stream()
                .filter(each -> each.diameter().value().toMillimetres() == 8)
                .flatMap(each -> each.lengths().stream())
                .map(each -> each.value().millimetres().stripTrailingZeros().toPlainString())
                .toList();
        assertEquals(List.of("36", "44"), lengths);
    }

    @Test
    void aRowThatIsNotWholeIsToldWithWhatItLacks() {
        ShopReader.Result read = ShopReader.read(
                "joints:\n  biscuit house: {length: 40 mm}\n  screw no. 8: {pilot: 3 mm}\n  nail 3: {length: 40 mm}\n",
                Rack.EMPTY);
        assertEquals(
                List.of(
                        "screw no. 8 has no (pilot); it has shank, clearance, hardwood, softwood, least board,"
                                + " lengths.",
                        "biscuit house is not in the table, so it needs (width).",
                        "(nail 3) names no row: write biscuit 20, dowel 8 mm, screw no. 8 or pocket screw for 18 mm."),
                read.problems().stream().map(each -> each.message()).toList());
    }

    @Test
    void whatIsNoSizeIsToldWithItsPlace() {
        ShopReader.Result read = ShopReader.read("joints:\n  bits: thick\n  biscuits: \"#99\"\n", Rack.EMPTY);
        assertEquals(
                List.of("(thick) of bits is no length.", "No biscuit is called (#99); there are #0, #10, #20, S6."),
                read.problems().stream().map(each -> each.message()).toList());
    }

    @Test
    void everyRuleAndEveryProfileIsInTheManual() throws IOException {
        Path root = Path.of("").toAbsolutePath();
        Path manual = Files.exists(root.resolve("docs/shop.md")) ? root : root.resolve("..");
        String text = Files.readString(manual.resolve("docs/shop.md"));
        OwnRows.tables().forEach((table, sizes) -> {
            assertTrue(text.contains("`" + table.strip()), table);
            sizes.forEach(size -> assertTrue(text.contains("`" + size + "`"), size));
        });
        JointRules.keys().forEach(key -> assertTrue(text.contains("`" + key + "`"), key));
        HardwareProfiles.standard().names().forEach(name -> assertTrue(text.contains("`" + name + "`"), name));
    }
}
