package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.construct.Construction;
import scantling.cutting.CutJob;
import scantling.cutting.CutPart;
import scantling.cutting.CutPiece;
import scantling.cutting.CutPlan;
import scantling.cutting.CutTree;
import scantling.cutting.Effort;
import scantling.cutting.FirstCut;
import scantling.cutting.Saw;
import scantling.cutting.SawCheck;
import scantling.cutting.SawPlans;
import scantling.cutting.Stock;
import scantling.cutting.Wishes;
import scantling.measure.Length;
import scantling.measure.LengthFormat;
import scantling.piece.BenchLog;
import scantling.piece.Material;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.stock.Rack;
import scantling.stock.RoughClass;

/** Which of several sizes are bought, and what is said of it; sums worked by hand. */
class StockChoiceTest {
    private static final ForSale SALE = new ForSale(LengthFormat.MM);

    private static Piece piece(String text) {
        return PieceReader.read(text, Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
    }

    private static Material material(String said) {
        String text = "piece: x\nunit: mm\nsize: 900 wide, 300 deep, 800 high\nmaterials: {it: %s}\nbuild: []\n";
        return Optional.ofNullable(piece(text.formatted(said)).materials().get("it"))
                .orElseThrow();
    }

    private static CutPart part(long length, long width, int count) {
        return new CutPart("p" + length, Length.mm(length), Length.mm(width), count, false);
    }

    private static CutGroup planned(Material material, List<Stock> stock, CutPart... parts) {
        CutJob job = new CutJob(
                new Saw(Length.mm(3), Length.ZERO, 0, FirstCut.ANY), CutJob.Keep.USUAL, stock, List.of(parts));
        CutPlan plan = SawPlans.plan(job, new Effort(600, 1), () -> false);
        assertEquals(List.of(), SawCheck.problems(job, plan));
        return new CutGroup("it", material, job, plan, SALE.grades(material));
    }

    /** Four of 1200 x 600 and one of 700 x 700: one large and one small sheet, 88 + 20; two large ones would be 176. */
    @Test
    void theCheapestMixOfSheetsIsBoughtAndWhatEachAloneCostsIsSaid() {
        Material ply = material("{sheet: birch plywood, thickness: 18, sheets: [{size: 2440 x 1220, price: 88.00},"
                + " {size: 750 x 750, price: 20.00, count: 1}]}");
        CutGroup group = planned(ply, SALE.sheets(ply), part(1200, 600, 4), part(700, 700, 1));
        assertEquals(10_800, group.plan().cost());
        List<String> said = CutReasons.choices(group, LengthFormat.MM);
        assertTrue(said.get(0).endsWith("108.00 in all."), said.get(0));
        assertTrue(said.get(1).contains("only it would be 176.00"), said.get(1));
        assertTrue(said.get(1).contains("750.0 x 750.0 mm alone is not enough"), said.get(1));
    }

    /** A part longer than both sheets is on neither; by hand: all else fits on one large sheet, or on one small. */
    @Test
    void whatEachSizeAloneCostsIsSaidOfThePartsThatFit() {
        CutJob job = new CutJob(
                new Saw(Length.mm(3), Length.ZERO, 0, FirstCut.ANY),
                CutJob.Keep.USUAL,
                List.of(
                        new Stock.SheetStock("large", Length.mm(2440), Length.mm(1220), OptionalInt.empty(), 70),
                        new Stock.SheetStock("small", Length.mm(1525), Length.mm(1525), OptionalInt.empty(), 52)),
                List.of(part(720, 560, 2), part(3000, 100, 1)));
        CutPlan plan = SawPlans.plan(job, new Effort(500, 1), () -> false);

        assertTrue(CutReasons.of(job, plan, LengthFormat.MM, Long::toString)
                .contains("With large only it would be 70; with small only it would be 52."));
    }

    /** 3 of 800: the longest board holds all for 2500 x 150 mm at 10.00 a board foot; two shorter ones are less wood. */
    @Test
    void theBoardsOfAYardAreChosenByWhatTheyCost() {
        Material cherry = material("{solid: black cherry, thickness: 20, price: 10.00, boards: ["
                + "{name: A, size: 3600 x 150}, {name: B, size: 1700 x 150}, {name: C, size: 900 x 150},"
                + " {name: D, size: 2440 x 150, defects: 700 to 800}]}");
        RoughClass rough = RoughClass.get("4/4");
        List<Stock> stock = SALE.boards(cherry, rough, Length.mm(25));
        assertEquals(4, stock.size());
        CutGroup group = planned(cherry, stock, part(800, 140, 3));
        assertEquals(
                List.of("board B, 1700.0 x 150.0 mm", "board C, 900.0 x 150.0 mm"),
                group.plan().used().stream().map(piece -> piece.stock().name()).toList());
        // 4/4: 2600 x 150 mm are 2600/304.8 x 150/304.8 square feet, one inch thick: 4.198 board feet (NHLA rules).
        assertEquals(4198, group.plan().cost(), 2);
    }

    /** AHEC summary of the NHLA rules (2004): FAS is 10 of 12 cutting units, 83 1/3 %; No. 1 Common 8 of 12, 66 2/3 %. */
    @Test
    void yieldStandsBesideWhatTheGradePromises() {
        Material cherry = material("{solid: black cherry, thickness: 20, price: 10.00, boards: ["
                + "{name: A, size: 1050 x 200, grade: FAS}, {name: B, size: 1050 x 100, grade: 1C}]}");
        List<Stock> stock = SALE.boards(cherry, RoughClass.get("4/4"), Length.mm(25));
        CutGroup group = planned(cherry, stock, part(1000, 150, 1), part(1000, 50, 1), part(900, 48, 1));
        List<String> said = CutReasons.choices(group, LengthFormat.MM);
        assertTrue(said.stream().anyMatch(one -> one.contains("FAS") && one.contains("83 1/3 %")), said.toString());
        assertTrue(said.stream().anyMatch(one -> one.contains("66 2/3 %")), said.toString());
        double taken = group.plan().used().stream()
                        .filter(piece -> piece.stock().name().startsWith("board A"))
                        .flatMap(piece -> piece.parts().stream())
                        .mapToDouble(one ->
                                one.length().toMillimetres() * one.width().toMillimetres())
                        .sum()
                / (1000 * 200);
        assertTrue(
                said.toString().contains("take %.0f %% of the face of the FAS".formatted(100 * taken)),
                said.toString());
    }

    @Test
    void anOffcutIsTakenWhereItSavesASheetAndThatIsSaid() {
        Material ply = material("{sheet: birch plywood, thickness: 18, price: 80.00, sheet size: 2440 x 1220}");
        List<Stock> stock = new ArrayList<>(SALE.sheets(ply));
        stock.add(new Stock.SheetStock("K2", Length.mm(800), Length.mm(500), OptionalInt.of(1), 0, true, true));
        CutGroup group = planned(ply, stock, part(2400, 600, 2), part(700, 450, 1));
        assertEquals(8000, group.plan().cost());
        assertTrue(CutReasons.choices(group, LengthFormat.MM)
                .contains("From the rack: K2; without it 80.00 more would be bought."));
        CutGroup alone = planned(ply, stock, part(2400, 600, 2), part(2430, 10, 1));
        assertTrue(alone.plan().used().stream().noneMatch(piece -> piece.stock().onHand()));
    }

    /** Strips of a panel: two boards that would hold two and one each, or one of them all three. */
    @Test
    void stripsOfAGlueUpComeFromOneBoardWhereTheyCan() {
        List<Stock> boards = List.of(
                new Stock.BoardStock("a", Length.mm(2100), Length.mm(150), OptionalInt.of(1), 0, true),
                new Stock.BoardStock("b", Length.mm(2100), Length.mm(150), OptionalInt.of(1), 0, true));
        CutPart panel = part(600, 140, 3).asStrips();
        CutPart other = new CutPart("other", Length.mm(650), Length.mm(140), 3, false).asStrips();
        CutJob job = new CutJob(Saw.of(Length.mm(3)), CutJob.Keep.USUAL, boards, List.of(panel, other));
        CutPlan plan = SawPlans.plan(job, new Effort(2000, 1), () -> false);
        for (CutPiece piece : plan.used()) {
            assertEquals(
                    1,
                    piece.parts().stream()
                            .map(one -> one.part().name())
                            .distinct()
                            .count());
        }
        CutGroup group = new CutGroup("it", material("{solid: black cherry, thickness: 20}"), job, plan, Map.of());
        assertTrue(
                CutReasons.choices(group, LengthFormat.MM).contains("The strips of each glue-up come from one board."));
    }

    private static Shop shop(String settings) {
        return ShopReader.read(settings, Rack.EMPTY).shop().orElseThrow();
    }

    private static final String SHELF = "piece: x\nunit: mm\nsize: 900 wide, 300 deep, 1200 high\n"
            + "materials: {ply: {sheet: birch plywood, thickness: 18}}\nbuild:\n  - case: {of: ply}\n"
            + "  - shelves: {of: ply, count: 4}\n";

    private static CutGroup only(String text, Shop shop) {
        return Planner.plan(piece(text), BenchLog.EMPTY, shop).plan().cuts().get(0);
    }

    @Test
    void theShopSaysWhichWayTheFirstCutsGoAndHowOftenTheyMayTurn() {
        for (FirstCut first : List.of(FirstCut.ALONG, FirstCut.ACROSS)) {
            CutGroup group = only(
                    SHELF,
                    shop("sawing: {first cut: %s, stages: 2}"
                            .formatted(first.name().toLowerCase(Locale.ROOT))));
            assertEquals(2, group.job().saw().stages());
            for (CutPiece piece : group.plan().used()) {
                assertTrue(piece.tree() instanceof CutTree.Cut cut
                        && cut.direction().name().equals(first.name()));
            }
        }
        assertEquals(
                List.of("\"sideways\" cannot be said for \"first cut\"."),
                ShopReader.read("sawing: {first cut: sideways}", Rack.EMPTY).problems().stream()
                        .map(problem -> problem.message())
                        .toList());
    }

    /** A 1525 x 1525 x 18 sheet at 680 kg/m3 (Handbook of Finnish Plywood) is 28.5 kg. */
    @Test
    void aSheetTooHeavyForOneIsBrokenDownNearItsEdge() {
        assertTrue(only(SHELF, shop("sawing: {one person lifts: 28 kg}"))
                .job()
                .wishes()
                .nearEdge());
        assertEquals(
                Wishes.USUAL,
                only(SHELF, shop("sawing: {one person lifts: 29 kg}")).job().wishes());
    }

    @Test
    void matchedPartsLieOneKerfApartAlongTheGrain() {
        String long18 = SHELF.replace("thickness: 18", "thickness: 18, sheet size: 2440 x 1220")
                .replace("count: 4", "count: 2");
        CutGroup group = only(long18 + "matched: [[top, bottom], shelf *]\n", Shop.usual());
        assertEquals(
                List.of("row 1", "row 2"),
                group.job().parts().stream()
                        .map(CutPart::row)
                        .filter(row -> !row.isEmpty())
                        .distinct()
                        .sorted()
                        .toList());
        assertEquals(List.of(), group.plan().leftOut());
        assertEquals(
                List.of("No part of this piece is called \"lid\"."),
                Planner.plan(piece(SHELF + "matched: [[top, lid]]\n"), BenchLog.EMPTY, Shop.usual())
                        .plan()
                        .problems()
                        .stream()
                        .map(problem -> problem.message())
                        .toList());
    }

    /** A part too long for its sheet is named with its size, what the sheets give, and what to do. */
    @Test
    void aPartLargerThanAnyStockIsNamedWithWhatToDo() {
        String tall = SHELF.replace("1200 high", "1700 high");
        String sentence = Planner.plan(piece(tall), BenchLog.EMPTY, Shop.usual()).plan().findings().stream()
                .filter(finding -> finding.subject().equals("left side"))
                .map(finding -> finding.sentence() + " " + finding.remedy())
                .filter(words -> words.contains("larger"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "left side, 1700.0 x 300.0 mm rough, is larger than anything it can be cut from: 1504.0 x 1504.0 mm"
                        + " once trimmed. List a larger sheet under materials / ply / sheets, or join the part from two.",
                sentence);
    }

    /** Whatever sizes and prices there are: never dearer than the cheapest size alone, never below the bound. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void aMixIsNeverDearerThanOneSizeAlone(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Stock> sizes = new ArrayList<>();
        for (int s = 0; s < 3; s++) {
            long length = random.nextLong(1200, 2800);
            long width = random.nextLong(900, 1600);
            sizes.add(new Stock.SheetStock(
                    "s" + s,
                    Length.mm(length),
                    Length.mm(width),
                    OptionalInt.empty(),
                    length * width / random.nextLong(300, 600)));
        }
        List<CutPart> parts = new ArrayList<>();
        for (int p = 0; p < 12; p++) {
            parts.add(part(random.nextLong(200, 1100), random.nextLong(100, 800), 1));
        }
        Saw saw = new Saw(Length.mm(3), Length.mm(10), 0, FirstCut.ANY);
        CutJob job = new CutJob(saw, CutJob.Keep.USUAL, sizes, parts);
        CutPlan mixed = SawPlans.plan(job, new Effort(1500, seed), () -> false);
        assertTrue(mixed.cost() >= mixed.lowerBound());
        for (Stock size : sizes) {
            CutPlan alone = SawPlans.plan(job.withStock(List.of(size)), new Effort(300, seed), () -> false);
            assertTrue(!alone.leftOut().isEmpty() || mixed.cost() <= alone.cost(), size.name());
        }
    }
}
