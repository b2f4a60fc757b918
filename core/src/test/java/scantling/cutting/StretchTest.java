package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

/** Strips and columns. What is right follows from the sizes alone; plans are judged by the independent saw. */
class StretchTest {
    private static final Saw THREE = new Saw(Length.ZERO, Length.ZERO, 3, FirstCut.ALONG);

    private final Problem problem = new Problem(
            job(THREE, List.of(sheet(100, 100, 1)), part("tall", 60, 50, 1), part("low", 30, 20, 1)),
            3,
            FirstCut.ALONG);

    private Bin filled(Node root, Bin bin) {
        bin.place(root, Node.Y, 0, false, problem.length[0], problem.width[0]);
        Node right = largestBeside(bin);
        bin.place(right, Node.X, 1, false, problem.length[1], problem.width[1]);
        return bin;
    }

    private static Node largestBeside(Bin bin) {
        return bin.lefts.stream().filter(left -> left.depth == 2).findFirst().orElseThrow();
    }

    @Test
    void theRoomOfTheTallestPartOfAStripGoesBackToTheSheet() {
        Bin bin = new Bin(0, problem, 0);
        filled(bin.roots().get(0), bin);
        Node tall =
                bin.parts.stream().filter(part -> part.kind == 0).findFirst().orElseThrow();

        bin.free(tall, new ArrayList<>());

        Node low = bin.parts.get(0);
        Node strip = bin.roots().get(0).children.stream()
                .filter(child -> !child.isSpare())
                .findFirst()
                .orElseThrow();
        assertEquals(problem.width[1], low.width);
        assertEquals(problem.width[1], strip.width);
        assertEquals(
                bin.area() - problem.area[1],
                bin.lefts.stream().mapToDouble(Node::area).sum());
    }

    @Test
    void aStripGrowsForATallerPartBesideALowOne() {
        Bin bin = new Bin(0, problem, 0);
        bin.place(bin.roots().get(0), Node.Y, 1, false, problem.length[1], problem.width[1]);
        Node right = largestBeside(bin);

        Stretch.widen(bin, right, Node.Y, problem.width[0] - problem.width[1]);
        bin.place(right, Node.X, 0, false, problem.length[0], problem.width[0]);

        double parts = problem.area[0] + problem.area[1];
        assertEquals(
                bin.area() - parts, bin.lefts.stream().mapToDouble(Node::area).sum());
        assertEquals(problem.width[0], bin.roots().get(0).children.get(0).width);
    }

    /** Kerf, trim, few stages and any number of them, each first cut: {@code SawPlans} throws where the saw cannot cut it. */
    @Test
    void whatGrowsAndShrinksCanStillBeCut() {
        SplittableRandom random = new SplittableRandom(11);
        for (FirstCut first : FirstCut.values()) {
            for (int stages : new int[] {0, 2, 3}) {
                Saw saw = new Saw(Length.mm("3.2"), Length.mm(10), stages, first);
                List<CutPart> parts = IntStream.range(0, 40)
                        .mapToObj(i -> new CutPart(
                                "p" + i,
                                Length.mm(random.nextInt(100, 900)),
                                Length.mm(random.nextInt(60, 580)),
                                1,
                                random.nextBoolean()))
                        .toList();
                CutJob job = new CutJob(saw, CutJob.Keep.USUAL, List.of(sheet(2440, 1220, 70)), parts);

                CutPlan plan = SawPlans.sheets(job, new Effort(1_500, 1), () -> false);

                assertEquals(List.of(), plan.leftOut());
            }
        }
    }
}
