package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.cutting.SawCheck;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.Problem;
import scantling.stock.Board;
import scantling.stock.Offcut;
import scantling.stock.Rack;
import scantling.stock.RoughClass;
import scantling.stock.Sheet;
import scantling.stock.Stock;

/** What the bench says against the plan: a cabinet of two drawers, 400 wide inside, with fronts 2 mm clear all round. */
class BenchRealityTest {
    private static final Span HERE = new Span(1, 1, 0, 0);
    private static final String FRONT = "drawers / drawer 1 / front";
    private static final String WIDTH = "drawers / drawer 1 / opening / width";
    private static final String TEXT = """
        piece: Two drawers
        size: 440 wide, 400 deep, 400 high
        materials:
          oak:  {solid: white oak, thickness: 20, price: 9.50}
          ply:  {sheet: birch plywood, thickness: 12, price: 60}
        build:
          - case: {of: oak}
          - drawers:
              rows: [rest, rest]
              gap: 2
              fronts: {of: oak, set: inset}
              box: {of: ply, floor: ply, corners: dowel, runs on: concealed undermount, slide length: 350}
        """;

    private static Piece piece(String text) {
        var read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        return read.piece().orElseThrow(() -> new AssertionError(read.problems()));
    }

    private static Shop shop(Stock... stock) {
        Shop usual = Shop.usual();
        return new Shop(usual.tolerances(), usual.allowances(), new Rack(List.of(stock)), usual.effort());
    }

    private static Plan plan(BenchLog bench, Stock... stock) {
        Plan plan = Planner.plan(piece(TEXT), bench, shop(stock)).plan();
        assertEquals(List.of(), plan.problems());
        return plan;
    }

    private static Part part(Plan plan, String path) {
        return plan.assembly().parts().stream()
                .filter(part -> part.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static BenchLog.Cut cut(String path, String length) {
        return new BenchLog.Cut(path, Map.of("length", Length.mm(length)), HERE);
    }

    private static BenchLog bench(String opening, BenchLog.Cut... cut) {
        return new BenchLog(
                List.of(new BenchLog.Measured(WIDTH, Length.mm(opening), HERE)), Arrays.asList(cut), List.of());
    }

    private static Finding finding(Plan plan) {
        return plan.findings().stream()
                .filter(finding -> finding.subject().equals(FRONT))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsNotCutFollowsAMeasuredOpening() {
        assertEquals(Length.mm(396), part(plan(BenchLog.EMPTY), FRONT).length().value());
        Plan plan = plan(bench("398.9"));
        assertEquals(Length.mm("394.9"), part(plan, FRONT).length().value());
        assertEquals(
                Length.mm(396),
                part(plan, "drawers / drawer 2 / front").length().value());
    }

    @Test
    void aFrontCutForAWiderOpeningLosesTheDifferenceAtItsFarEnd() {
        Finding finding = finding(plan(bench("398.9", cut(FRONT, "396"))));
        assertEquals(Finding.Severity.STOP, finding.severity());
        assertTrue(finding.remedy().contains("Cut 1.1 mm off its far end"), finding::remedy);
    }

    @Test
    void aFrontALittleShortIsPackedOutOrCutAnewFromTheOffcutThatHoldsIt() {
        Board large = Board.rough("large", "white oak", RoughClass.get("4/4"), Length.mm(300), Length.mm(2400));
        Board small = Board.rough("small", "white oak", RoughClass.get("4/4"), Length.mm(200), Length.mm(600));
        Board other = Board.rough("other", "black cherry", RoughClass.get("4/4"), Length.mm(200), Length.mm(600));
        Plan plan = plan(bench("400.7", cut(FRONT, "396")), large, new Offcut(small, "C1"), other);
        Finding finding = finding(plan);
        assertEquals(Finding.Severity.CAUTION, finding.severity());
        assertTrue(finding.remedy().contains("Pack it out by 0.7 mm"), finding::remedy);
        assertTrue(finding.remedy().contains("offcut small"), finding::remedy);
        BenchRemedies.Remedy last = BenchRemedies.of(plan, shop(large, new Offcut(small, "C1"), other)).stream()
                .filter(remedy -> remedy.kind() == BenchRemedies.Kind.CUT_NEW)
                .findFirst()
                .orElseThrow();
        assertEquals(Optional.of("small"), last.stock());
    }

    @Test
    void aFrontFarTooShortIsOnlyCutAnew() {
        Plan plan = plan(bench("406", cut(FRONT, "396")));
        assertFalse(finding(plan).remedy().contains("Pack"), finding(plan)::remedy);
        assertTrue(finding(plan).remedy().contains("nothing in the rack"), finding(plan)::remedy);
    }

    @Test
    void sheetsOnHandAreCutBeforeAnyIsBought() {
        Sheet sheet = new Sheet(
                "S7",
                "birch plywood",
                Length.mm(12),
                Optional.empty(),
                Length.mm(1400),
                Length.mm(1200),
                Sheet.Grain.ALONG);
        Plan plan = plan(BenchLog.EMPTY, sheet);
        CutGroup sheets = plan.cuts().stream()
                .filter(group -> group.material().name().equals("ply"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("S7"),
                sheets.plan().used().stream().map(piece -> piece.stock().name()).toList());
        assertEquals(0, sheets.plan().cost());
        assertEquals(List.of(), SawCheck.problems(sheets.job(), sheets.plan()));
    }

    @Test
    void aRoughPieceThatIsSawnIsNotSawnAgain() {
        BenchLog bench = new BenchLog(
                List.of(), List.of(), List.of(new BenchLog.Sawn(FRONT, Length.mm(420), Length.mm(400), 9)));
        Plan plan = plan(bench);
        assertTrue(plan.cuts().stream()
                .flatMap(group -> group.job().parts().stream())
                .noneMatch(wanted -> wanted.name().equals(FRONT)));
        assertTrue(
                plan.findings().stream().noneMatch(finding -> finding.subject().equals(FRONT)));
    }

    @Test
    void aRoughPieceThatHasBecomeTooSmallIsToldOf() {
        BenchLog bench = new BenchLog(
                List.of(), List.of(), List.of(new BenchLog.Sawn(FRONT, Length.mm(380), Length.mm(400), 9)));
        assertTrue(finding(plan(bench)).sentence().contains("is sawn 380"), finding(plan(bench))::sentence);
    }

    @Test
    void aChangeThatTouchesNothingCutCostsNoPart() {
        DesignChange.Cost cost = DesignChange.cost(
                piece(TEXT),
                piece(TEXT.replace("400 deep", "410 deep")),
                BenchLog.EMPTY,
                shop(),
                part -> Optional.of(30));
        assertTrue(cost.sparesWhatIsCut());
        assertEquals(Optional.of(0), cost.minutes());
        assertTrue(cost.money().isPresent(), "every material has a price");
    }

    @Test
    void aChangeTellsWhatBecomesOfEveryPartThatIsCut() {
        Plan plan = plan(BenchLog.EMPTY);
        BenchLog bench = new BenchLog(
                List.of(),
                plan.assembly().parts().stream()
                        .filter(part ->
                                part.path().endsWith("front") || part.path().contains("drawer 2"))
                        .map(part -> new BenchLog.Cut(
                                part.path(),
                                Map.of(
                                        "length", part.length().value(),
                                        "width", part.width().value(),
                                        "thickness", part.thickness().value()),
                                HERE))
                        .toList());
        String one = TEXT.replace("440 wide", "450 wide").replace("rows: [rest, rest]", "rows: [rest]");
        DesignChange.Cost cost = DesignChange.cost(piece(TEXT), piece(one), bench, shop(), part -> Optional.of(30));
        Map<String, DesignChange.Fate> fates = new TreeMap<>();
        cost.parts().forEach(part -> fates.put(part.part(), part.fate()));
        assertEquals(DesignChange.Fate.MAKE_ANEW, fates.get("drawers / drawer 1 / box / front"), fates::toString);
        assertTrue(fates.containsValue(DesignChange.Fate.OF_NO_USE), fates::toString);
        long again = fates.values().stream()
                .filter(fate -> fate != DesignChange.Fate.WORK_ON)
                .count();
        assertEquals(Optional.of((int) (30 * again)), cost.minutes());
        assertEquals(again * 30 / 480.0, cost.days(480).orElseThrow());
    }

    @Test
    void aSizeThatNoPieceCanHaveIsToldAndNotUsed() {
        BenchLog bench = new BenchLog(
                List.of(new BenchLog.Measured(WIDTH, Length.mm(2_626_626), HERE)),
                List.of(new BenchLog.Cut("left side", Map.of("width", Length.mm(99_999_999)), HERE)));
        Planner.Outcome outcome = Planner.plan(piece(TEXT), bench, shop());
        assertEquals(
                List.of(
                        "left side / width: 99999999 mm is absurdly long for a measured size. It is not used.",
                        WIDTH + ": 2626626 mm is absurdly long for a measured size. It is not used."),
                outcome.benchProblems().stream().map(Problem::message).toList());
        assertEquals(List.of(), outcome.plan().problems());
    }

    /** A side of 900 leaves 440 - 900 - 20 for what stands between the sides. */
    @Test
    void aMeasuredSizeThatLeavesNothingOfAnotherPartIsAProblemAndNoPlan() {
        BenchLog bench =
                new BenchLog(List.of(new BenchLog.Measured("left side / thickness", Length.mm(900), HERE)), List.of());
        Plan plan = Planner.plan(piece(TEXT), bench, shop()).plan();
        assertTrue(
                plan.problems().stream().anyMatch(problem -> problem.message().contains("Nothing is left of bottom")),
                () -> plan.problems().toString());
        assertEquals(List.of(), plan.cuts());
    }
}
