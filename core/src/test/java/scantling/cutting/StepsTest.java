package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

class StepsTest {
    private static final Length SHEET_LENGTH = Length.mm(2440);
    private static final Length SHEET_WIDTH = Length.mm(1220);

    /** Plays the maker: a piece can be cut only when an earlier cut has made it. */
    @Test
    void aPieceIsCutOnlyWhenItIsThere() {
        SplittableRandom random = new SplittableRandom(5);
        for (int round = 0; round < 40; round++) {
            CutPlan plan = SawPlans.sheets(job(random), new Effort(20, round), () -> false);
            for (CutPiece piece : plan.used()) {
                Set<String> there = new HashSet<>(Set.of("1"));
                for (CutStep step : piece.steps()) {
                    assertTrue(there.remove(step.piece()), () -> step + " cuts a piece that is not there: " + there);
                    boolean trims = step.first().equals(step.piece());
                    there.addAll(trims ? Set.of(step.first()) : Set.of(step.piece() + ".1", step.piece() + ".2"));
                }
            }
        }
    }

    @Test
    void stepsAreNumberedFromOne() {
        CutPlan plan = SawPlans.sheets(job(new SplittableRandom(1)), new Effort(0, 1), () -> false);
        List<Integer> numbers =
                plan.used().get(0).steps().stream().map(CutStep::number).toList();
        for (int i = 0; i < numbers.size(); i++) {
            assertEquals(i + 1, numbers.get(i));
        }
    }

    private static CutJob job(SplittableRandom random) {
        List<CutPart> parts = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            Length length = Length.mm(random.nextInt(80, 900));
            parts.add(
                    new CutPart("part " + i, length, Length.mm(random.nextInt(60, 600)), 1 + random.nextInt(3), true));
        }
        Stock sheet = new Stock.SheetStock("sheet", SHEET_LENGTH, SHEET_WIDTH, OptionalInt.empty(), 100);
        Saw saw = new Saw(Length.mm("3.2"), Length.mm(10), 0, FirstCut.ANY);
        return new CutJob(saw, CutJob.Keep.USUAL, List.of(sheet), parts);
    }
}
