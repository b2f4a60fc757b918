package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import scantling.measure.Length;
import scantling.stock.Defect;

/** What of a board with defects any plan can have: figures worked by hand, areas by JTS. */
class ClearBoardTest {
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private static Problem problem(long kerf, Stock... boards) {
        CutJob job =
                Jobs.job(Saw.of(Length.mm(kerf)), List.of(boards), Jobs.part("a", 3, 3, 1), Jobs.part("b", 1, 1, 1));
        return new Problem(job, 2, FirstCut.ACROSS);
    }

    private static Stock board(long length, long width, long cost, List<Defect> defects) {
        return new Stock.BoardStock("b", Length.mm(length), Length.mm(width), OptionalInt.of(1), cost, false, defects);
    }

    /** 1000 by 100, a knot from 300 to 420, kerf 3: 300 + 3 and 580 + 3 long, 100 + 3 wide. */
    @Test
    void aKnotOverTheWholeWidthLeavesTwoStretches() {
        Problem problem = problem(3, board(1000, 100, 1, List.of(Defect.across(Length.mm(300), Length.mm(420)))));
        ClearBoard clear = new ClearBoard(problem, 0);

        assertEquals(List.of(303L, 583L), clear.stretches());
        assertEquals((303 + 583) * 103, clear.area());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void withoutKerfTheAreaIsThatWhichJtsFinds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int board = 0; board < 50; board++) {
            List<Defect> defects = new ArrayList<>();
            Geometry clear = SHAPES.toGeometry(new Envelope(0, 1000, 0, 100));
            for (int k = random.nextInt(1, 6); k > 0; k--) {
                long from = random.nextInt(0, 950);
                long to = from + random.nextInt(1, 200);
                long deep = random.nextInt(1, 70);
                Defect.Edge edge = Defect.Edge.values()[random.nextInt(3)];
                boolean whole = edge == Defect.Edge.WHOLE;
                defects.add(new Defect(Length.mm(from), Length.mm(to), edge, whole ? Length.ZERO : Length.mm(deep)));
                long low = edge == Defect.Edge.FAR ? 100 - deep : 0;
                long high = edge == Defect.Edge.NEAR ? deep : 100;
                clear = clear.difference(SHAPES.toGeometry(new Envelope(from, to, low, high)));
            }
            Problem problem = problem(0, board(1000, 100, 1, defects));

            assertEquals(clear.getArea(), new ClearBoard(problem, 0).area(), 1e-6);
        }
    }

    /**
     * By hand: two boards of 1000 by 100 for 10 each and one for 30, all with a knot from 300 to 700, hold three parts of 300 by
     * 100 at most twice each: five parts need all three, 50; by the clear boards two of them, 20.
     */
    @Test
    void theBoundCountsWhatTheDefectsLeave() {
        List<Defect> knot = List.of(Defect.across(Length.mm(300), Length.mm(700)));
        CutJob job = Jobs.job(
                Saw.of(Length.ZERO),
                List.of(board(1000, 100, 10, knot), board(1000, 100, 10, knot), board(1000, 100, 30, knot)),
                Jobs.part("a", 300, 100, 5));

        CutPlan plan = SawPlans.boards(job, new Effort(2_000, 1), () -> false);

        assertEquals(50, plan.cost());
        assertEquals(50, plan.lowerBound());
    }
}
