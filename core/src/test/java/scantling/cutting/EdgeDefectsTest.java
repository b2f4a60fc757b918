package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.measure.Length;
import scantling.stock.Defect;

/**
 * What no plan for boards with defects at their edges can cost less than: by hand, and against every way there is of laying
 * the parts of small jobs on a grid, cut or not cut.
 */
class EdgeDefectsTest {
    /** One of the grid, in millimetres: more than the shortest stretch that is of use. */
    private static final int UNIT = 25;

    private static final int LONG = 7;
    private static final int WIDE = 4;

    private static Stock board(long length, long width, long cost, List<Defect> defects) {
        return new Stock.BoardStock("b", Length.mm(length), Length.mm(width), OptionalInt.of(1), cost, false, defects);
    }

    private static CutPlan plan(int kerf, List<Stock> boards, CutPart... parts) {
        return SawPlans.boards(Jobs.job(Saw.of(Length.mm(kerf)), boards, parts), new Effort(300, 1), () -> false);
    }

    /**
     * By hand: 20 off one edge of boards of 1000 by 100 leave 80 wide, too little for two of 50 side by side, so each holds one
     * of 1000: three boards. By area 2 would do: 3 x 50 is less than 2 x 80.
     */
    @Test
    void aBadEdgeLeavesRoomForOneStripOnly() {
        List<Defect> edge = List.of(new Defect(Length.ZERO, Length.mm(1000), Defect.Edge.NEAR, Length.mm(20)));
        CutPlan plan = plan(
                0,
                List.of(board(1000, 100, 1, edge), board(1000, 100, 1, edge), board(1000, 100, 1, edge)),
                Jobs.part("a", 1000, 50, 3));

        assertEquals(3, plan.cost());
        assertEquals(3, plan.lowerBound());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void itIsNeverAboveTheCheapestOfAllWays(int kerf) {
        SplittableRandom random = new SplittableRandom(5 + kerf);
        int tight = 0;
        for (int round = 0; round < 150; round++) {
            List<Stock> boards = new ArrayList<>();
            for (int b = 0; b < 3; b++) {
                boards.add(board(LONG * UNIT, WIDE * UNIT, 1 + random.nextInt(4), defects(random)));
            }
            List<int[]> parts = new ArrayList<>();
            List<CutPart> asked = new ArrayList<>();
            for (int p = 0; p < 4; p++) {
                int[] size = {1 + random.nextInt(LONG), 1 + random.nextInt(WIDE)};
                parts.add(size);
                asked.add(Jobs.part("p" + p, size[0] * UNIT, size[1] * UNIT, 1));
            }
            long least = new EveryLay(kerf, boards, parts).least();
            CutJob job = Jobs.job(Saw.of(Length.mm(kerf * UNIT)), boards, asked.toArray(CutPart[]::new));
            Problem problem = new Problem(job, 2, FirstCut.ACROSS);
            if (least < Long.MAX_VALUE && problem.fitting().length == parts.size()) {
                long bound = new Bounds(problem).cost();
                assertTrue(bound <= least, () -> bound + " is more than " + least + " of " + CutJson.writeJob(job));
                tight += bound == least ? 1 : 0;
            }
        }
        assertTrue(tight > 10, "so often it is all that there is to say: " + tight);
    }

    private static List<Defect> defects(SplittableRandom random) {
        List<Defect> defects = new ArrayList<>();
        for (int d = random.nextInt(3); d > 0; d--) {
            long from = random.nextInt(LONG - 1);
            defects.add(new Defect(
                    Length.mm(from * UNIT),
                    Length.mm((from + 1 + random.nextInt(LONG - 1)) * UNIT),
                    random.nextInt(2) == 0 ? Defect.Edge.NEAR : Defect.Edge.FAR,
                    Length.mm((1 + random.nextInt(2)) * UNIT)));
        }
        return defects;
    }

    /** All ways to lay parts on boards on the grid, a kerf between any two, no cuts asked for. */
    private static final class EveryLay {
        private final int kerf;
        private final List<Stock> boards;
        private final List<int[]> parts;
        private final List<int[]> laid = new ArrayList<>();
        private long least = Long.MAX_VALUE;

        EveryLay(int kerf, List<Stock> boards, List<int[]> parts) {
            this.kerf = kerf;
            this.boards = boards;
            this.parts = parts;
        }

        long least() {
            lay(0);
            return least;
        }

        private long cost() {
            return laid.stream()
                    .map(one -> one[0])
                    .distinct()
                    .mapToLong(b -> boards.get(b).cost())
                    .sum();
        }

        private void lay(int part) {
            if (cost() >= least) {
                return;
            }
            if (part == parts.size()) {
                least = cost();
                return;
            }
            int[] size = parts.get(part);
            for (int b = 0; b < boards.size(); b++) {
                for (int x = 0; x + size[0] <= LONG; x++) {
                    for (int y = 0; y + size[1] <= WIDE; y++) {
                        int[] here = {b, x, y, x + size[0], y + size[1]};
                        if (isClear(here) && laid.stream().noneMatch(other -> meet(here, other))) {
                            laid.add(here);
                            lay(part + 1);
                            laid.remove(laid.size() - 1);
                        }
                    }
                }
            }
        }

        private boolean meet(int[] a, int[] b) {
            return a[0] == b[0] && a[1] < b[3] + kerf && b[1] < a[3] + kerf && a[2] < b[4] + kerf && b[2] < a[4] + kerf;
        }

        private boolean isClear(int[] here) {
            return boards.get(here[0]).defects().stream().noneMatch(defect -> {
                double deep = defect.deep().toMillimetres() / UNIT;
                double low = defect.edge() == Defect.Edge.FAR ? WIDE - deep : 0;
                double high = defect.edge() == Defect.Edge.NEAR ? deep : WIDE;
                return here[1] * UNIT < defect.to().toMillimetres()
                        && here[3] * UNIT > defect.from().toMillimetres()
                        && here[2] < high
                        && here[4] > low;
            });
        }
    }
}
