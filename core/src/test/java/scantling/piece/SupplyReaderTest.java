package scantling.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;
import scantling.stock.Defect;
import scantling.stock.Grade;

final class SupplyReaderTest {
    private static final String HEAD = "piece: x\nsize: 500 wide, 420 deep, 620 high\nmaterials:\n";

    private static Supply supply(String material) {
        Piece piece = Bench.piece(HEAD + "  it: " + material + "\nbuild: []\n");
        return Optional.ofNullable(piece.materials().get("it")).orElseThrow().supply();
    }

    private static List<String> problems(String material) {
        return Bench.read(HEAD + "  it: " + material + "\nbuild: []\n").problems().stream()
                .map(Problem::message)
                .toList();
    }

    @Test
    void readsSheetsOfMoreThanOneSize() {
        Supply said = supply("{sheet: birch plywood, thickness: 18, sheets: [{size: 2440 x 1220, price: 84.00},"
                + " {name: rest, size: 700 x 500, price: 0, count: 2, trimmed: yes}]}");
        Supply.Sheets first = said.sheets().get(0);
        assertEquals(Length.mm(2440), first.length().value());
        assertEquals(Length.mm(1220), first.width().value());
        assertEquals(Optional.of(8400L), first.price());
        assertEquals(OptionalInt.empty(), first.count());
        Supply.Sheets second = said.sheets().get(1);
        assertEquals(Optional.of("rest"), second.name());
        assertEquals(OptionalInt.of(2), second.count());
        assertTrue(second.trimmed());
    }

    /** The trade name puts the width first; a sheet of 4 by 8 feet is 2438.4 mm long (international foot of 304.8 mm). */
    @Test
    void aSizeInFeetIsTheSheetOfThatName() {
        Supply said = supply("{sheet: birch plywood, thickness: 18, sheets: [{size: 4 x 8 ft}]}");
        assertEquals(Length.mm("2438.4"), said.sheets().get(0).length().value());
        assertEquals(Length.mm("1219.2"), said.sheets().get(0).width().value());
    }

    @Test
    void readsTheBoardsOfAYard() {
        Supply said = supply(
                "{solid: black cherry, thickness: 20, grade: 1C, boards: [{name: A, size: 2450 x 165, rough: 5/4,"
                        + " grade: FAS, price: 9.80, defects: [300 to 420, \"900 to 1100, 40 off the far edge\"]}]}");
        assertEquals(Grade.find("No. 1 Common"), said.grade());
        Supply.Boards board = said.boards().get(0);
        assertEquals(Optional.of("A"), board.name());
        assertEquals(Grade.find("FAS"), board.grade());
        assertEquals(1, board.count());
        assertEquals(
                List.of(
                        Defect.across(Length.mm(300), Length.mm(420)),
                        new Defect(Length.mm(900), Length.mm(1100), Defect.Edge.FAR, Length.mm(40))),
                board.defects());
    }

    @Test
    void tellsAllThatIsWrongAtOnce() {
        assertEquals(
                Set.of(
                        "\"materials / it\" comes as sheet: it has no \"boards\".",
                        "\"siz\" cannot be said about materials / it / sheets / 1.",
                        "\"materials / it / sheets / 1\" needs a \"size\", as in 2440 x 1220; here stands keys with"
                                + " values.",
                        "\"materials / it / sheets / 2 / count\" needs a whole number, 1 or more; here stands \"0\"."),
                Set.copyOf(problems("{sheet: birch plywood, thickness: 18, boards: [], sheets: [{siz: 3}, {size: 3 x 4,"
                        + " count: 0}]}")));
    }

    @Test
    void aStretchThatCannotBeIsRefused() {
        assertEquals(
                1,
                problems("{solid: black cherry, thickness: 20, boards: [{size: 2450 x 165, defects: 400 to 300}]}")
                        .size());
    }

    @Test
    void bothSizesAndASizeIsRefused() {
        assertEquals(
                List.of("\"materials / it\" says both \"sheets\" and \"sheet size\"."),
                problems("{sheet: birch plywood, thickness: 18, sheet size: 3 x 4, sheets: [{size: 3 x 4}]}"));
    }
}
