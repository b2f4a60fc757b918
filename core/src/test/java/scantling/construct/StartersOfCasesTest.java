package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import scantling.measure.Ledger;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.measure.Unit;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;

/** The documents of cases and shelves, read and built; part lists worked by hand with a ruler. */
class StartersOfCasesTest {
    private static Assembly built(InputStream document) throws IOException {
        String text = new String(document.readAllBytes(), StandardCharsets.UTF_8);
        ReadResult read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        Piece piece = read.piece().orElseThrow(() -> new AssertionError(read.problems()));
        Tolerances tolerances = Tolerances.standard();
        return Construction.assemble(
                piece, new Ledger(Map.of(), piece.sizes(), tolerances.of("measured at the bench")), tolerances);
    }

    private static Assembly starter(String name) throws IOException {
        return built(Starters.open(name));
    }

    private static String inches(Length length) {
        return LengthFormat.of(Unit.INCH).format(length);
    }

    @Test
    void the_wall_shelf_has_five_parts() throws IOException {
        Assembly shelf = starter("wall-shelf");
        Judge.sound(shelf);
        assertEquals(
                List.of(
                        "left side: 14 x 9 x 3/4",
                        "bottom: 31 x 9 x 3/4", // 32 - 2 x 3/4 + 2 x 1/4
                        "right side: 14 x 9 x 3/4",
                        "top: 31 x 9 x 3/4",
                        "hanging rail: 30 1/2 x 2 3/4 x 3/4"), // 32 - 2 x 3/4
                shelf.parts().stream()
                        .map(part -> "%s: %s x %s x %s"
                                .formatted(
                                        part.path(),
                                        inches(part.length().value()),
                                        inches(part.width().value()),
                                        inches(part.thickness().value())))
                        .toList());
    }

    @Test
    void the_bookcase() throws IOException {
        Assembly bookcase = starter("bookcase");
        Judge.sound(bookcase);
        assertEquals(
                List.of(
                        "kick board: 860 x 70 x 20", // 900 - 40
                        "left side: 1900 x 320 x 20",
                        // a dado a third of 20, to the mm: 7; 860 + 14; back measured 6.2: 320 - 6.2
                        "bottom: 874 x 313.8 x 20",
                        "right side: 1900 x 320 x 20",
                        "top: 880 x 313.8 x 20", // 860 + 2 x 10
                        "back: 1830 x 880 x 6.2", // 1900 - 70; 860 + 2 x 10
                        "divider: 874 x 313.8 x 20",
                        "upper / adjustable shelf 1: 858 x 309.8 x 20", // 860 - 2; 313.8 - 3 - 1
                        "upper / adjustable shelf 2: 858 x 309.8 x 20",
                        "lower / shelf: 874 x 313.8 x 20"),
                Said.list(bookcase));
    }

    @Test
    void the_kitchen() throws IOException {
        Assembly kitchen = starter("kitchen");
        Judge.sound(kitchen);
        // plinth 4 and case 6, eight times: 80; two doors of 5 in four units: 40; three shelves; 3 drawers of 6 in
        // four: 72
        assertEquals(195, kitchen.parts().size());
        List<String> parts = Said.list(kitchen);
        // 820 - 100; 600 - 22
        assertTrue(parts.contains("cupboards / sink / left side: 720 x 578 x 17.8"), parts::toString);
        // 600 - 2 x 17.8
        assertTrue(parts.contains("cupboards / sink / bottom: 564.4 x 578 x 17.8"), parts::toString);
    }

    @Test
    void a_lidded_chest_that_no_starter_shows() throws IOException {
        InputStream document =
                Objects.requireNonNull(getClass().getResourceAsStream("/scantling/pieces/lidded-chest.yaml"));
        Assembly chest = built(document);
        Judge.sound(chest);
        assertEquals(
                List.of(
                        "lid: 1000 x 480 x 20",
                        "front: 970 x 500 x 20", // 1000 - 2 x 15; 520 - 20
                        "back: 970 x 500 x 20",
                        "left end: 425 x 500 x 20", // 480 - 15 - 2 x 20
                        "right end: 425 x 500 x 20",
                        // 970 - 40 = 930 and 425 inside; groove 7 less 0.5 of air at each edge
                        "floor: 943 x 438 x 9",
                        "till: 439 x 200 x 20"), // 425 + 2 x 7
                Said.list(chest));
    }
}
