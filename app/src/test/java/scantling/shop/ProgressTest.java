package scantling.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import scantling.cutting.CutPiece;
import scantling.plan.CutGroup;
import scantling.plan.Plan;
import scantling.route.Operation;
import scantling.route.Step;

/** How far the bench has come with a route. */
class ProgressTest {
    @TempDir
    Path folder;

    private TestShop shop;
    private String job;

    @BeforeEach
    void open() {
        shop = new TestShop(folder);
        job = shop.addJob("wall-shelf");
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Plan plan() {
        return ((JobPlan.Planned) shop.store().jobBook().planOf(job).orElseThrow()).plan();
    }

    private Progress progress() {
        return Progress.of(plan(), shop.store().bench(job));
    }

    private Operation operation(Step step) {
        return plan().route().operations().stream()
                .filter(one -> one.step() == step)
                .findFirst()
                .orElseThrow();
    }

    private void log(BenchEntry entry) {
        shop.log(job, entry);
    }

    private void sawAll() {
        while (!plan().cuts().isEmpty()) {
            CutGroup group = plan().cuts().get(0);
            CutPiece piece = group.plan().used().get(0);
            log(SawnAsPlanned.of(piece, group, plan().blanks(), shop.store().rack(), job));
        }
    }

    @Test
    void theRouteStaysWholeWhateverIsSawnAndCut() {
        List<String> before =
                plan().route().operations().stream().map(Operation::id).toList();
        sawAll();
        log(new BenchEntry.Cut("left side", Map.of()));
        assertEquals(
                before, plan().route().operations().stream().map(Operation::id).toList());
    }

    @Test
    void whenAllIsSawnTheSawOperationsAreDoneAndNoOther() {
        assertFalse(progress().isDone(operation(Step.CROSSCUT)));
        sawAll();
        assertTrue(progress().isDone(operation(Step.CROSSCUT)));
        assertTrue(progress().isDone(operation(Step.RIP)));
        assertFalse(progress().isBegun(operation(Step.FIRST_MILL)));
    }

    @Test
    void eachPieceOfStockThatIsSawnIsCountedUntilItIsTakenBack() {
        Operation saw = operation(Step.CROSSCUT);
        assertEquals(0, progress().piecesSawn(saw));
        sawAll();
        int all = shop.store().bench(job).size();
        assertEquals(all, progress().piecesSawn(saw));
        shop.does(new Act.Undo(shop.store().bench(job).get(0).act()));
        assertEquals(all - 1, progress().piecesSawn(saw));
    }

    @Test
    void aPartThatIsCutWasMilledBefore() {
        log(new BenchEntry.Cut("left side", Map.of()));
        assertTrue(progress().isDone(operation(Step.FINAL_MILL), "left side"));
        assertFalse(progress().isDone(operation(Step.FINAL_MILL), "right side"));
    }

    @Test
    void whatIsDoneToAnOperationIsDoneToAllItsPartsAndCanBeUndone() {
        Operation mill = operation(Step.FIRST_MILL);
        log(new BenchEntry.Done(mill.id()));
        assertTrue(progress().isDone(mill));
        log(new BenchEntry.Undone(Progress.subject(mill, "left side")));
        assertFalse(progress().isDone(mill));
        assertTrue(progress().isBegun(mill));
    }

    @Test
    void aSpoiltPartHasEverythingBeforeItAgain() {
        sawAll();
        log(new BenchEntry.Done(operation(Step.FIRST_MILL).id()));
        log(new BenchEntry.Cut("left side", Map.of()));
        log(new BenchEntry.Spoilt("left side", "dropped"));
        assertFalse(progress().isSawn("left side"));
        assertFalse(progress().isDone(operation(Step.FIRST_MILL), "left side"));
        assertTrue(progress().isDone(operation(Step.FIRST_MILL), "right side"));
        assertEquals(List.of("left side"), sawnAgain());
    }

    private List<String> sawnAgain() {
        return plan().cuts().stream()
                .flatMap(group -> group.job().parts().stream())
                .map(part -> part.name())
                .toList();
    }

    @Test
    void wholePartsAndOffcutsNeverComeToMoreThanTheStockHeld() {
        for (CutGroup group : plan().cuts()) {
            for (CutPiece piece : group.plan().used()) {
                BenchEntry.Sawn sawn = SawnAsPlanned.of(
                        piece, group, plan().blanks(), shop.store().rack(), job);
                assertEquals(Optional.empty(), sawn.stock());
                assertEquals(Optional.of(sawn), SawnAsPlanned.read(SawnAsPlanned.written(sawn)));
                assertEquals(
                        piece.parts().size(),
                        sawn.parts().stream()
                                .mapToInt(BenchEntry.SawnPart::pieces)
                                .sum());
            }
        }
    }
}
