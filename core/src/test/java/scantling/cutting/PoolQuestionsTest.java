package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

/** When the pool is asked, and that its answer is a plan; the plan itself is worked by hand. */
class PoolQuestionsTest {
    private static final long LONG_ENOUGH = 200_000;

    private final Problem problem = new Problem(
            job(Saw.of(Length.ZERO), List.of(sheet(100, 100, 1)), part("large", 100, 60, 2), part("small", 100, 40, 2)),
            0,
            FirstCut.ANY);
    private final BinPool pool = new BinPool(problem);
    private final PoolQuestions questions = new PoolQuestions(pool, () -> false);

    /** The items of one sheet, one above the other. */
    private void put(Layout layout, int... items) {
        Bin bin = layout.open(0, -1);
        for (int item : items) {
            bin.place(bin.lefts.get(0), Node.Y, item, false, problem.length[item], problem.width[item]);
        }
    }

    private Layout three() {
        Layout three = new Layout(problem, List.of());
        put(three, 0);
        put(three, 1);
        put(three, 2, 3);
        return three;
    }

    /** Both sheets of a large and a small part have been met, on different ways: together they are a plan of two. */
    @Test
    void sheetsMetOnDifferentWaysMakeAPlan() {
        Layout met = new Layout(problem, List.of());
        put(met, 0, 2);
        pool.add(met.bins);

        questions.ask(three(), LONG_ENOUGH);
        assertTrue(questions.answer(LONG_ENOUGH + 1).isEmpty(), "the search goes on for a while first");
        Layout plan = questions.lastAnswer().orElseThrow();

        assertEquals(2, plan.cost);
        assertEquals(4, plan.bins.stream().mapToInt(bin -> bin.parts.size()).sum());
    }

    @Test
    void nothingIsAskedOfAShortSearch() {
        questions.ask(three(), 1_000);

        assertTrue(questions.lastAnswer().isEmpty());
    }

    /** Two large parts never come out of one sheet, so two are wanted: none is cheaper, and nothing is found. */
    @Test
    void nothingIsFoundWhereNothingCheaperIsPossible() {
        Layout two = new Layout(problem, List.of());
        IntStream.of(0, 1).forEach(i -> put(two, i, i + 2));

        questions.ask(two, LONG_ENOUGH);

        assertTrue(questions.lastAnswer().isEmpty());
    }
}
