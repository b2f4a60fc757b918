package scantling.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.cutting.Jobs.job;
import static scantling.cutting.Jobs.part;
import static scantling.cutting.Jobs.plan;
import static scantling.cutting.Jobs.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import scantling.measure.Length;

/** Fronts cut side by side, so that the figure goes on across the grain from one to the next; figures worked by hand. */
class SideBySideTest {
    private static final Saw SAW = new Saw(Length.mm(3), Length.ZERO, 0, FirstCut.ANY);

    private static CutPart front(String name, long length, long width) {
        return part(name, length, width, 1).lyingBeside("bank");
    }

    /** Where the parts of a plan lie. */
    private record Lie(Map<String, PlacedPart> parts) {
        PlacedPart get(String name) {
            return Optional.ofNullable(parts.get(name)).orElseThrow();
        }
    }

    private static Lie byName(CutPlan plan) {
        return new Lie(plan.used().stream()
                .flatMap(piece -> piece.parts().stream())
                .collect(Collectors.toMap(placed -> placed.part().name(), placed -> placed, (a, b) -> a)));
    }

    private static Length gapAcross(PlacedPart first, PlacedPart second) {
        return second.y().minus(first.y().plus(first.width()));
    }

    private static Length gapAlong(PlacedPart first, PlacedPart second) {
        return second.x().minus(first.x().plus(first.length()));
    }

    /** 140 + 3 + 180 + 3 + 220 = 546 wide, whatever else is on the sheet. */
    @Test
    void frontsOfABankLieBesideEachOtherInTheirOrderWithOneKerfBetween() {
        CutPlan plan = plan(job(
                SAW,
                List.of(sheet(2440, 1220, 1)),
                part("side", 700, 560, 3),
                front("top", 600, 140),
                front("middle", 600, 180),
                front("bottom", 600, 220)));
        Lie at = byName(plan);

        assertEquals(Length.mm(3), gapAcross(at.get("top"), at.get("middle")));
        assertEquals(Length.mm(3), gapAcross(at.get("middle"), at.get("bottom")));
        assertEquals(at.get("top").x(), at.get("bottom").x());
    }

    @Test
    void aShorterFrontIsCutToItsLengthFromTheSameSet() {
        CutPlan plan = plan(job(SAW, List.of(sheet(1000, 400, 1)), front("a", 900, 150), front("b", 600, 150)));
        Lie at = byName(plan);

        assertEquals(Length.mm(3), gapAcross(at.get("a"), at.get("b")));
        assertEquals(at.get("a").x(), at.get("b").x());
    }

    /** Two columns of two: each row end to end, the lower beside the upper, which is 150 wide at its widest. */
    @Test
    void rowsMayLieSideBySide() {
        CutPlan plan = plan(job(
                SAW,
                List.of(sheet(1000, 400, 1)),
                front("upper left", 400, 140).inRow("upper"),
                front("upper right", 500, 150).inRow("upper"),
                front("lower left", 400, 200).inRow("lower"),
                front("lower right", 500, 200).inRow("lower")));
        Lie at = byName(plan);

        assertEquals(Length.mm(3), gapAlong(at.get("upper left"), at.get("upper right")));
        assertEquals(Length.mm(3), gapAlong(at.get("lower left"), at.get("lower right")));
        assertEquals(Length.mm(3), gapAcross(at.get("upper right"), at.get("lower right")));
        assertEquals(at.get("upper left").x(), at.get("lower left").x());
        assertEquals(at.get("upper left").y(), at.get("upper right").y());
    }

    /** Sound as a plan of loose parts: the check itself must tell that the set is not in its order. */
    @Test
    void theCheckFindsASetThatIsOutOfOrder() {
        CutPart a = part("a", 900, 150, 1);
        CutPart b = part("b", 900, 190, 1);
        CutPlan loose = plan(job(SAW, List.of(sheet(1000, 400, 1)), a, b));
        boolean wideFirst = byName(loose).get("b").y().isZero();
        CutPart first = (wideFirst ? b : a).lyingBeside("bank");
        CutPart second = (wideFirst ? a : b).lyingBeside("bank");

        assertEquals(List.of(), SawCheck.problems(job(SAW, List.of(sheet(1000, 400, 1)), first, second), asSet(loose)));
        List<String> wrong = SawCheck.problems(job(SAW, List.of(sheet(1000, 400, 1)), second, first), asSet(loose));
        assertEquals(1, wrong.size(), wrong::toString);
        assertTrue(wrong.get(0).contains("does not lie beside"), wrong::toString);
    }

    private static CutPlan asSet(CutPlan plan) {
        CutPiece piece = plan.used().get(0);
        List<PlacedPart> parts =
                piece.parts().stream().map(SideBySideTest::asSet).toList();
        return new CutPlan(
                plan.status(),
                plan.cost(),
                plan.lowerBound(),
                List.of(new CutPiece(piece.stock(), 1, asSet(piece.tree()), parts, piece.steps(), piece.offcuts())),
                List.of());
    }

    private static CutTree asSet(CutTree tree) {
        if (tree instanceof CutTree.Cut cut) {
            return new CutTree.Cut(cut.direction(), cut.position(), asSet(cut.first()), asSet(cut.second()));
        }
        return tree instanceof CutTree.Part part ? new CutTree.Part(asSet(part.placed())) : tree;
    }

    private static PlacedPart asSet(PlacedPart p) {
        return new PlacedPart(p.part().lyingBeside("bank"), p.copy(), p.x(), p.y(), p.length(), p.width(), p.turned());
    }

    /** c, 400 x 190, would fit into the 197 that b leaves of the row: one sheet is possible, so two must not be called best. */
    @Test
    void roomThatARowLeavesOverIsNotCountedAsProof() {
        CutPlan plan = plan(job(
                SAW,
                List.of(sheet(1000, 400, 1)),
                part("a", 400, 400, 1).inRow("row"),
                part("b", 400, 200, 1).inRow("row"),
                part("c", 400, 190, 1)));

        assertEquals(1, plan.lowerBound());
        assertEquals(plan.cost() == 1, plan.status() == CutPlan.Status.OPTIMAL);
    }

    @Test
    void aSetWiderThanAnyStockIsNamedPartByPart() {
        CutPlan plan = plan(job(SAW, List.of(sheet(1000, 400, 1)), front("a", 900, 250), front("b", 900, 250)));

        assertEquals(2, plan.leftOut().size());
        assertTrue(
                plan.leftOut().get(0).reason().startsWith("It is cut side by side with others, 503 mm wide in all."),
                plan.leftOut()::toString);
    }

    @Test
    void whatCannotBeMeantIsRefused() {
        List<Stock> stock = List.of(sheet(1000, 400, 1));
        CutJob half = job(
                SAW,
                stock,
                front("a", 400, 100).inRow("r"),
                part("b", 400, 100, 1).inRow("r"));
        CutJob twice = job(SAW, stock, front("a", 400, 100), front("a", 400, 120));

        assertThrows(IllegalArgumentException.class, () -> plan(half));
        assertThrows(IllegalArgumentException.class, () -> plan(twice));
    }

    @Test
    void aSetIsWrittenAndReadBack() {
        CutJob job = job(SAW, List.of(sheet(1000, 400, 1)), front("a", 400, 100).inRow("r"), part("b", 400, 100, 1));

        assertEquals(job, CutJson.readJob(CutJson.writeJob(job)).job().orElseThrow());
        CutPlan plan = plan(job);
        assertEquals(List.of(), CutJson.checkPlan(CutJson.writePlan(job, plan, 0)));
    }

    /** Whatever the saw and the stock, every set of every plan lies as it should; told here by edges alone. */
    @Test
    void manyJobsKeepTheirSetsTogether() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 40; round++) {
            CutJob job = random(random, round);
            CutPlan plan = SawPlans.plan(job, new Effort(300, round), () -> false);
            for (CutPiece piece : plan.used()) {
                piece.parts().stream()
                        .filter(placed -> placed.part().name().equals("f2"))
                        .forEach(second -> assertTrue(
                                piece.parts().stream()
                                        .filter(other -> other.part().name().equals("f1"))
                                        .anyMatch(first -> second.turned()
                                                ? gapAlong(first, second)
                                                        .equals(job.saw().kerf())
                                                : gapAcross(first, second)
                                                        .equals(job.saw().kerf())),
                                () -> plan.toString()));
            }
        }
    }

    private static CutJob random(SplittableRandom random, int round) {
        int copies = 1 + random.nextInt(2);
        boolean turn = random.nextBoolean();
        List<CutPart> parts = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            parts.add(new CutPart(
                            "f" + i,
                            Length.mm(random.nextInt(200, 900)),
                            Length.mm(random.nextInt(40, 120)),
                            copies,
                            turn)
                    .lyingBeside("bank"));
        }
        for (int i = 0; i < 8; i++) {
            parts.add(part("p" + i, random.nextInt(100, 900), random.nextInt(40, 380), 1 + random.nextInt(2)));
        }
        boolean boards = round % 4 == 3;
        Stock stock = boards
                ? new Stock.BoardStock("b", Length.mm(2400), Length.mm(400), OptionalInt.empty(), 3, false)
                : sheet(1220, 610, 2);
        return new CutJob(
                new Saw(Length.mm(3), Length.mm(boards ? 0 : 5), new int[] {0, 2, 3}[round % 3], FirstCut.ANY),
                CutJob.Keep.USUAL,
                List.of(stock),
                parts);
    }
}
