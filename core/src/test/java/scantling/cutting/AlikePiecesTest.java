package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.plan;
import static scantling.cutting.Jobs.sheet;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

/** Sheets that are cut alike; how many there are is counted by hand. */
class AlikePiecesTest {
    /** Each part is larger than half a sheet, so each takes one: five of one size under two names, one of another. */
    private static final CutPlan PLAN = plan(job(
            new Saw(Length.mm(3), Length.ZERO, 0, FirstCut.ANY),
            List.of(sheet(1000, 400, 1)),
            part("left", 900, 380, 3),
            part("right", 900, 380, 2),
            part("shelf", 800, 300, 1)));

    private static final List<AlikePieces> ALIKE = AlikePieces.of(PLAN.used());

    @Test
    void sheetsCutAlikeAreTakenTogetherWhateverTheirPartsAreCalled() {
        assertEquals(
                List.of(1, 5), ALIKE.stream().map(AlikePieces::count).sorted().toList());
        assertEquals(
                PLAN.used().stream().map(CutPiece::number).toList(),
                ALIKE.stream()
                        .flatMap(each -> each.pieces().stream())
                        .map(CutPiece::number)
                        .sorted()
                        .toList());
    }

    @Test
    void whichOfThemGivesWhichPartIsStillKnown() {
        AlikePieces five =
                ALIKE.stream().filter(each -> each.count() == 5).findFirst().orElseThrow();
        List<AlikePieces> by = five.byParts(name -> name);

        assertEquals(List.of(2, 3), by.stream().map(AlikePieces::count).sorted().toList());
        assertEquals(1, five.differing(name -> name).size());
        assertEquals(List.of(), five.differing(name -> "end"));
        assertEquals(1, five.byParts(name -> "end").size());
    }

    @Test
    void theirNumbersAreToldInRuns() {
        CutPiece one = PLAN.used().get(0);
        AlikePieces some =
                new AlikePieces(List.of(at(one, 1), at(one, 2), at(one, 3), at(one, 5), at(one, 7), at(one, 8)));

        assertEquals("1 to 3, 5, 7 and 8", some.numbers());
    }

    private static CutPiece at(CutPiece piece, int number) {
        return new CutPiece(piece.stock(), number, piece.tree(), piece.parts(), piece.steps(), piece.offcuts());
    }
}
