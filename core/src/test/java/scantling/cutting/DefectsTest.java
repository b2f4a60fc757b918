package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import scantling.measure.Length;
import scantling.stock.Defect;

/** Boards with defects: figures worked by hand, random boards judged by JTS and by the saw that only cuts edge to edge. */
class DefectsTest {
    private static final Saw SAW = Saw.of(Length.mm(3));
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private static Length mm(long length) {
        return Length.mm(length);
    }

    private static Stock board(long length, long width, Defect... defects) {
        return new Stock.BoardStock("b", mm(length), mm(width), OptionalInt.of(1), 0, true, List.of(defects));
    }

    private static Defect edge(long from, long to, Defect.Edge edge, long deep) {
        return new Defect(mm(from), mm(to), edge, mm(deep));
    }

    private static CutPlan plan(Stock board, CutPart... parts) {
        CutJob job = Jobs.job(SAW, List.of(board), parts);
        CutPlan plan = Jobs.plan(job);
        assertEquals(List.of(), SawCheck.problems(job, plan));
        return plan;
    }

    /** 1000 long, a knot from 480 to 520: 480 on one side, 480 on the other less nothing, for the kerf lies in the knot. */
    @Test
    void aKnotOverTheWholeWidthIsCutOutOnBothSides() {
        Stock board = board(1000, 150, Defect.across(mm(480), mm(520)));
        assertEquals(List.of(), plan(board, Jobs.part("a", 480, 150, 2)).leftOut());
        assertEquals(
                1, plan(board, Jobs.part("a", 481, 150, 2)).leftOut().get(0).count() - 1);
    }

    @Test
    void aBadEdgeIsRippedOffTheFirst() {
        Stock board = board(1000, 150, edge(0, 1000, Defect.Edge.NEAR, 30));
        CutPlan plan = plan(board, Jobs.part("a", 1000, 120, 1));
        assertEquals(List.of(), plan.leftOut());
        assertEquals(mm(30), plan.used().get(0).parts().get(0).y());
        CutStep first = plan.used().get(0).steps().get(0);
        assertEquals(CutDirection.ALONG, first.direction());
        assertEquals(mm(27), first.fence());
        assertEquals("waste", first.first());
    }

    /** A long narrow part runs past the defect, two short wide ones lie on either side of it: not all three at once. */
    @Test
    void whatIsCutBesideADefectAtAnEdgeDependsOnTheParts() {
        Stock board = board(2000, 150, edge(950, 1050, Defect.Edge.FAR, 60));
        assertEquals(List.of(), plan(board, Jobs.part("long", 2000, 90, 1)).leftOut());
        assertEquals(List.of(), plan(board, Jobs.part("wide", 940, 150, 2)).leftOut());
        assertEquals(
                List.of(),
                plan(board, Jobs.part("long", 1300, 90, 1), Jobs.part("wide", 690, 150, 1))
                        .leftOut());
        assertEquals(
                1,
                plan(board, Jobs.part("long", 2000, 90, 1), Jobs.part("wide", 940, 150, 1))
                        .leftOut()
                        .size());
    }

    /** The part comes out of the shorter stretch; what is cut off before it is kept, the end of it in the knot. */
    @Test
    void whatIsLeftOverKeepsItsDefects() {
        Stock board = board(2000, 150, Defect.across(mm(1500), mm(1520)));
        CutPlan plan = plan(board, Jobs.part("a", 400, 150, 1));
        CutTree.Offcut left = plan.used().get(0).offcuts().get(0);
        assertEquals(mm(1517), left.length());
        CutJob job = Jobs.job(SAW, List.of(board), Jobs.part("a", 400, 150, 1));
        Rest rest = Rest.of(job, plan, new Rest.Progress(Map.of(1, 2), Map.of("a", 1)))
                .rest()
                .orElseThrow();
        assertEquals(
                List.of(Defect.across(mm(1500), mm(1517))),
                rest.job().stock().get(0).defects());
    }

    @Test
    void theCheckFindsAPartOverADefect() {
        CutPart part = Jobs.part("a", 1000, 150, 1);
        CutJob clear = Jobs.job(SAW, List.of(board(1000, 150)), part);
        CutJob flawed = Jobs.job(SAW, List.of(board(1000, 150, edge(990, 1200, Defect.Edge.FAR, 1))), part);
        CutPlan plan = Jobs.plan(clear);
        CutPiece moved = plan.used().get(0);
        CutPlan wrong = new CutPlan(
                plan.status(),
                plan.cost(),
                plan.lowerBound(),
                List.of(new CutPiece(
                        flawed.stock().get(0), 1, moved.tree(), moved.parts(), moved.steps(), moved.offcuts())),
                List.of());
        assertTrue(SawCheck.problems(flawed, wrong).toString().contains("lies over the defect from (990 mm)"));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static Defect defect(SplittableRandom random, long length, long width) {
        long from = random.nextLong(-50, length);
        Length start = mm(Math.max(0, from));
        Length end = mm(Math.max(0, from) + random.nextLong(1, 200));
        return switch (random.nextInt(3)) {
            case 0 -> Defect.across(start, end);
            case 1 -> new Defect(start, end, Defect.Edge.NEAR, mm(random.nextLong(1, width)));
            default -> new Defect(start, end, Defect.Edge.FAR, mm(random.nextLong(1, width)));
        };
    }

    private static CutJob random(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Stock> boards = new ArrayList<>();
        for (int b = 0; b < 4; b++) {
            long length = random.nextLong(900, 3200);
            long width = random.nextLong(90, 260);
            List<Defect> defects = new ArrayList<>();
            for (int d = random.nextInt(5); d > 0; d--) {
                defects.add(defect(random, length, width));
            }
            boards.add(new Stock.BoardStock(
                    "b" + b, mm(length), mm(width), OptionalInt.of(1), random.nextInt(3) * 40, b == 0, defects));
        }
        boards.add(new Stock.BoardStock("new", mm(2450), mm(200), OptionalInt.empty(), 150, false));
        List<CutPart> parts = new ArrayList<>();
        for (int p = 0; p < 9; p++) {
            parts.add(Jobs.part("p" + p, random.nextLong(150, 1400), random.nextLong(30, 180), 1));
        }
        Saw saw = new Saw(mm(random.nextInt(2, 5)), mm(random.nextInt(2) * 10), 0, FirstCut.ANY);
        return new CutJob(saw, CutJob.Keep.USUAL, boards, parts);
    }

    private static Geometry rectangle(Length x, Length y, Length length, Length width) {
        return SHAPES.toGeometry(new Envelope(
                x.toMillimetres(),
                x.plus(length).toMillimetres(),
                y.toMillimetres(),
                y.plus(width).toMillimetres()));
    }

    private static Geometry shape(Defect defect, Stock board) {
        Length low = defect.edge() == Defect.Edge.FAR ? board.width().minus(defect.deep()) : Length.ZERO;
        Length high = defect.edge() == Defect.Edge.NEAR ? defect.deep() : board.width();
        return rectangle(defect.from(), low, defect.to().minus(defect.from()), high.minus(low));
    }

    /** Overlap by JTS, the cuts by the saw that can only cut one piece in two. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noPartOfAnyRandomJobHasADefect(long seed) {
        CutJob job = random(seed);
        CutPlan plan = SawPlans.plan(job, new Effort(600, seed), () -> false);
        assertEquals(List.of(), SawCheck.problems(job, plan));
        assertTrue(plan.cost() >= plan.lowerBound());
        for (CutPiece piece : plan.used()) {
            for (Defect defect : piece.stock().defects()) {
                for (PlacedPart part : piece.parts()) {
                    Geometry wood = rectangle(part.x(), part.y(), part.length(), part.width());
                    double shared =
                            wood.intersection(shape(defect, piece.stock())).getArea();
                    assertEquals(0, shared, 1e-6, part + " over " + defect);
                }
            }
        }
    }

    /** By hand: bad edges of 30 and of 40 both come off at 37, as strips of 100 leave 10 to spare: then 37 and 100 are ripped. */
    @Test
    void badEdgesComeOffAtOneSettingWhereThereIsRoom() {
        Stock board = board(2000, 150, edge(0, 900, Defect.Edge.NEAR, 30), edge(1000, 2000, Defect.Edge.NEAR, 40));
        CutPlan plan = plan(board, Jobs.part("a", 940, 100, 1), Jobs.part("b", 1040, 100, 1));
        assertEquals(List.of(), plan.leftOut());
        assertEquals(
                List.of(mm(37), mm(100)),
                plan.used().get(0).steps().stream()
                        .filter(step -> step.newSetting() && step.direction() == CutDirection.ALONG)
                        .map(CutStep::fence)
                        .sorted()
                        .toList());
    }

    /**
     * By hand: 600, then at least 394 up to the end of the knot at 1000, then two of 450 with 97 to spare. So the knot comes
     * off at 450 too, and two settings do where 600, 450 and one for the knot were three.
     */
    @Test
    void aKnotComesOffAtASettingThatIsWantedAnyway() {
        Stock board = board(2000, 150, Defect.across(mm(900), mm(1000)));
        CutPlan plan = plan(board, Jobs.part("a", 600, 150, 1), Jobs.part("b", 450, 150, 2));
        assertEquals(List.of(), plan.leftOut());
        assertEquals(2, plan.settings(), () -> plan.used().get(0).steps().toString());
    }

    /** A saw that starts anywhere: after any number of cuts the rest is planned, and no part of it has a defect either. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theRestOfABoardWithDefectsIsPlannedAroundThem(long seed) {
        CutJob job = random(seed);
        CutPlan plan = SawPlans.plan(job, new Effort(200, seed), () -> false);
        SplittableRandom random = new SplittableRandom(seed);
        Map<Integer, Integer> made = new HashMap<>();
        plan.used()
                .forEach(piece ->
                        made.put(piece.number(), random.nextInt(piece.steps().size() + 1)));
        Rest rest = Rest.of(job, plan, new Rest.Progress(made, Map.of())).rest().orElseThrow();
        CutPlan again = SawPlans.rest(rest, new Effort(200, seed), () -> false);
        assertEquals(List.of(), SawCheck.problems(rest.job(), again));
    }

    @Test
    void theSameSeedAndStepsGiveTheSamePlan() {
        assertEquals(
                SawPlans.plan(random(3), new Effort(500, 3), () -> false),
                SawPlans.plan(random(3), new Effort(500, 3), () -> false));
    }

    @Test
    void defectsAreReadFromAJobAndWrittenBack() {
        String text = "{\"boards\": [{\"name\": \"b\", \"length\": 2000, \"width\": 150, \"defects\": [\"300 to 420\","
                + " {\"from\": 900, \"to\": 1100, \"edge\": \"far\", \"deep\": 40}]}], \"parts\": []}";
        CutJob job = CutJson.readJob(text).job().orElseThrow();
        assertEquals(
                List.of(Defect.across(mm(300), mm(420)), edge(900, 1100, Defect.Edge.FAR, 40)),
                job.stock().get(0).defects());
        assertEquals(job, CutJson.readJob(CutJson.writeJob(job)).job().orElseThrow());
        assertEquals(
                List.of("line 1: boards[0].defects[0]: (\"knot\") is not a stretch such as \"300 to 420, 40 off the"
                        + " near edge\"."),
                CutJson.readJob(text.replace("300 to 420", "knot")).problems());
    }
}
