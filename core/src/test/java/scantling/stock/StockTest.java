package scantling.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;

class StockTest {
    private static final Board BOARD =
            Board.rough("B1", "black cherry", RoughClass.get("4/4"), Length.inches(6), Length.inches(96));
    private static final Sheet SHEET = Sheet.whole(
            "S1", "birch plywood", Length.mm(18), SheetSize.find("5x5").orElseThrow(), Sheet.Grain.ALONG);

    @ParameterizedTest
    @CsvSource({
        "4x8, 2438.4, 1219.2",
        "4 x 8 ft, 2438.4, 1219.2",
        "5x5, 1524, 1524",
        "2440 x 1220, 2440, 1220",
        "2800x2070, 2800, 2070",
        "2500 x 1250 mm, 2500, 1250"
    })
    void knowsTheSizesSheetsComeIn(String name, String length, String width) {
        SheetSize size = SheetSize.find(name).orElseThrow();
        assertEquals(Length.mm(length), size.length().value());
        assertEquals(Length.mm(width), size.width().value());
    }

    @Test
    void buysMultiPlyBirchFiveByFiveAndTheRestFourByEight() {
        assertEquals("5 x 5 ft", SheetSize.usualFor("birch plywood").name());
        assertEquals("4 x 8 ft", SheetSize.usualFor("MDF").name());
    }

    /** AHEC summary of the NHLA rules (2004): FAS 83-1/3 %, No. 1 Common 66-2/3 %, FAS extra cutting 91-2/3 %. */
    @ParameterizedTest
    @CsvSource({"FAS, 83.333", "1C, 66.667", "No. 2A Common, 50", "3A, 33.333"})
    void aGradePromisesAShareOfClearWood(String name, double percent) {
        assertEquals(percent, 100 * Grade.find(name).orElseThrow().clearYield(), 0.001);
    }

    @Test
    void aGradeKnowsItsLeastBoardAndItsExtraCutting() {
        Grade fas = Grade.find("fas").orElseThrow();
        assertEquals(91.667, 100 * fas.extraYield().orElseThrow(), 0.001);
        assertEquals(Length.inches(6), fas.leastWidth().value());
        assertEquals(List.of("4 in x 5 ft", "3 in x 7 ft"), fas.cuttings());
    }

    @Test
    void takesTheThicknessOfASheetByTheCalliperWhereThereIsOne() {
        Sheet measured = new Sheet(
                "S2",
                "MDF",
                Length.mm(13),
                Optional.of(Length.mm("12.6")),
                Length.mm(2440),
                Length.mm(1220),
                Sheet.Grain.NONE);
        assertEquals(Length.mm("12.6"), measured.thickness());
        assertEquals(Length.mm(18), SHEET.thickness());
    }

    @Test
    void aRackGivesBackWhatWasPutInAndIsNeverChanged() {
        Offcut offcut = new Offcut(
                Board.rough("B2", "black cherry", RoughClass.get("4/4"), Length.inches(5), Length.inches(30)), "B1");
        Rack rack = Rack.EMPTY.with(BOARD).with(SHEET).with(offcut);
        assertEquals(List.of(BOARD, offcut.piece()), rack.boards());
        assertEquals(List.of(SHEET), rack.sheets());
        assertEquals(List.of(offcut), rack.offcuts());
        assertEquals(Optional.of(SHEET), rack.find("S1"));
        assertEquals(List.of(SHEET, offcut), rack.without("B1").stock());
        assertEquals(3, rack.stock().size());
        assertEquals(rack, rack.without("nothing"));
    }

    @Test
    void refusesASecondPieceWithTheSameIdAndPiecesWithoutSize() {
        Rack rack = Rack.EMPTY.with(BOARD);
        assertThrows(IllegalArgumentException.class, () -> rack.with(BOARD));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Stick("T1", "white oak", Length.mm(20), Length.ZERO, Length.mm(900)));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Stick(" ", "white oak", Length.mm(20), Length.mm(20), Length.mm(900)));
    }

    @Test
    void anOffcutOfAnOffcutIsOneOffcut() {
        Offcut twice = new Offcut(new Offcut(BOARD, "B0"), "B1");
        assertEquals(BOARD, twice.piece());
        assertEquals("B1", twice.cutFrom());
    }

    @Test
    void paysABoardByItsRoughClass() {
        assertEquals(4, BOARD.boardFeet(), 1e-12);
    }

    /** The Technique of Furniture Making (E. Joyce), Cutting lists: 1/2 in over in length, 3/16 in over in width, in its metric. */
    @Test
    void addsToFinishedSizesWhatTheTextbookAdds() {
        Allowances standard = Allowances.standard();
        assertEquals(Length.mm("12.5"), standard.length().value());
        assertEquals(Length.mm(5), standard.width().value());
        var from = assertInstanceOf(Making.LookedUp.class, standard.length().making());
        assertEquals("The Technique of Furniture Making (E. Joyce): Cutting lists", from.source());
    }

    @Test
    void aShopReplacesAnyAllowanceByItsKey() {
        Dim own = Dim.lookedUp(Length.mm(2), "shop settings", "kerf", "own");
        Allowances shop = Allowances.with(key -> key.equals("kerf") ? Optional.of(own) : Optional.empty());
        assertEquals(own, shop.kerf());
        assertEquals(Allowances.standard().sheetKerf(), shop.sheetKerf());
        HashSet<String> asked = new HashSet<>();
        Allowances.with(key -> {
            asked.add(key);
            return Optional.empty();
        });
        assertEquals(new HashSet<>(Allowances.keys()), asked);
    }

    @Test
    void knowsTheKerfOfASaw() {
        assertEquals(
                Length.mm("3.2"), Kerf.find("table saw").orElseThrow().width().value());
        assertEquals(
                Length.mm("1.2"), Kerf.find("band saw").orElseThrow().width().value());
        assertEquals(Optional.empty(), Kerf.find("chainsaw"));
    }
}
