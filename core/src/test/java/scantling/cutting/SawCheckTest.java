package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.plan;
import static scantling.cutting.Jobs.sheet;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

/** The check must find each way in which a plan can be wrong. */
class SawCheckTest {
    private static final CutJob JOB = job(Saw.of(Length.mm(3)), List.of(sheet(1000, 600, 5)), part("a", 450, 300, 1));
    private static final PlacedPart A =
            new PlacedPart(JOB.parts().get(0), 1, Length.ZERO, Length.ZERO, Length.mm(450), Length.mm(300), false);
    private static final CutTree REST =
            new CutTree.Offcut(Length.mm(453), Length.ZERO, Length.mm(547), Length.mm(600), true);

    private static CutTree sawn(long across, long along, PlacedPart part) {
        CutTree below =
                new CutTree.Offcut(Length.ZERO, Length.mm(along + 3), Length.mm(across), Length.mm(597 - along), false);
        CutTree strip = new CutTree.Cut(CutDirection.ALONG, Length.mm(along), new CutTree.Part(part), below);
        return new CutTree.Cut(CutDirection.ACROSS, Length.mm(across), strip, REST);
    }

    private static CutPlan with(CutTree tree, PlacedPart part, long cost) {
        CutPiece piece = new CutPiece(JOB.stock().get(0), 1, tree, List.of(part), List.of(), List.of());
        return new CutPlan(CutPlan.Status.SOUND, cost, 0, List.of(piece), List.of());
    }

    @Test
    void aSoundPlanHasNoProblems() {
        assertEquals(List.of(), SawCheck.problems(JOB, with(sawn(450, 300, A), A, 5)));
    }

    @Test
    void aWrongCostIsFound() {
        assertFalse(SawCheck.problems(JOB, with(sawn(450, 300, A), A, 4)).isEmpty());
    }

    @Test
    void aFenceOffByAMillimetreIsFound() {
        assertFalse(SawCheck.problems(JOB, with(sawn(450, 301, A), A, 5)).isEmpty());
    }

    @Test
    void aCutBeyondThePieceIsFound() {
        assertFalse(SawCheck.problems(JOB, with(sawn(450, 600, A), A, 5)).isEmpty());
    }

    @Test
    void anOffcutThatForgetsTheKerfIsFound() {
        CutTree wrong = new CutTree.Offcut(Length.mm(450), Length.ZERO, Length.mm(550), Length.mm(600), true);
        CutTree.Cut right = (CutTree.Cut) sawn(450, 300, A);

        assertFalse(SawCheck.problems(
                        JOB, with(new CutTree.Cut(right.direction(), right.position(), right.first(), wrong), A, 5))
                .isEmpty());
    }

    @Test
    void aPartTurnedAcrossTheGrainIsFound() {
        PlacedPart turned =
                new PlacedPart(JOB.parts().get(0), 1, Length.ZERO, Length.ZERO, Length.mm(300), Length.mm(450), true);

        List<String> problems = SawCheck.problems(JOB, with(sawn(300, 450, turned), turned, 5));

        assertFalse(problems.stream()
                .filter(p -> p.contains("across the grain"))
                .toList()
                .isEmpty());
    }

    @Test
    void aMissingPartIsFound() {
        CutPlan empty = new CutPlan(CutPlan.Status.SOUND, 0, 0, List.of(), List.of());

        assertEquals(List.of("a: (1) copies are neither cut nor said to be left out."), SawCheck.problems(JOB, empty));
    }

    @Test
    void aPartCutTwiceIsFound() {
        CutPlan once = plan(JOB);
        CutPlan twice = new CutPlan(
                once.status(), 10, 5, List.of(once.used().get(0), once.used().get(0)), List.of());

        assertEquals(List.of("a: (-1) copies are neither cut nor said to be left out."), SawCheck.problems(JOB, twice));
    }

    @Test
    void moreStagesThanAllowedAreFound() {
        CutJob one = job(new Saw(Length.mm(3), Length.ZERO, 1, FirstCut.ALONG), JOB.stock(), part("a", 450, 300, 1));

        assertFalse(SawCheck.problems(one, with(sawn(450, 300, A), A, 5)).isEmpty());
    }
}
