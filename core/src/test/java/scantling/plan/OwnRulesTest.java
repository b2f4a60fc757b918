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
        JointRules.keys().forEach(key -> assertTrue(text.contains("`" + key + "`"), key));
        HardwareProfiles.standard().names().forEach(name -> assertTrue(text.contains("`" + name + "`"), name));
    }
}
