package scantling.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.piece.Shape;

/** What is offered where; what may stand there at all is said by the list of elements itself. */
class CompletionTest {
    private static final String TEXT = """
        piece: Shelf
        size: 800 wide, 200 deep, 300 high
        lengths:
          kick: 70
        materials:
          oak: {solid: white oak, thickness: 20}
        build:
          - case: {of: oak}
        """;

    private static List<String> at(String text) {
        return Completion.of(text, text.length()).stream()
                .map(Completion.Offer::word)
                .toList();
    }

    @Test
    void atTheLeftTheKeysOfAPieceAreOffered() {
        assertEquals(List.of("finish: "), at(TEXT + "fin"));
    }

    @Test
    void inAListOfElementsElementsAreOffered() {
        List<String> offered = at(TEXT + "  - sh");
        assertEquals(List.of("shelves: "), offered);
    }

    @Test
    void insideAnElementItsFieldsAreOffered() {
        List<String> offered = at(TEXT + "  - shelves: {");
        List<String> fields = Construction.language().find("shelves").map(Shape::fields).orElseThrow().stream()
                .map(field -> field.key() + ": ")
                .toList();
        assertTrue(fields.containsAll(offered) && !offered.isEmpty(), offered::toString);
    }

    @Test
    void whereAMaterialMayStandTheMakersOwnAreOffered() {
        assertEquals(List.of("oak"), at(TEXT + "  - shelves: {of: "));
    }

    @Test
    void insideAMaterialAndItsListsTheirKeysAreOffered() {
        String begun = TEXT.substring(0, TEXT.indexOf("build:"));
        assertEquals(
                List.of("sheets: "),
                at(begun + "  ply: {sheets").stream()
                        .filter(word -> word.endsWith("s: "))
                        .toList());
        assertEquals(List.of("trimmed: "), at(begun + "  ply:\n    sheets:\n      - {tr"));
        assertEquals(List.of("defects: "), at(begun + "  ash:\n    boards:\n      - {de"));
    }

    @Test
    void whereAWoodMayStandWoodsAreOffered() {
        String begun = TEXT.substring(0, TEXT.indexOf("white oak")) + "white a";
        assertEquals(List.of("white ash"), at(begun));
    }

    @Test
    void whereWordsAreChosenFromThoseAreOffered() {
        assertTrue(at(TEXT + "  - shelves: {of: oak, held: ").contains("pins"));
    }

    @Test
    void onALineOfItsOwnTheElementAboveDecides() {
        assertTrue(at(TEXT + "  - drawers:\n      ro").contains("rows: "));
    }
}
