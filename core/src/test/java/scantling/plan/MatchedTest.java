package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import scantling.construct.Construction;
import scantling.cutting.PlacedPart;
import scantling.measure.Length;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;

/** What a maker says under "matched", as it comes to lie on the sheet. */
class MatchedTest {
    private static final String SHELF = """
        piece: x
        unit: mm
        size: 900 wide, 300 deep, 1200 high
        materials: {ply: {sheet: birch plywood, thickness: 18, sheet size: 2440 x 1220}}
        build:
          - case: {of: ply}
          - shelves: {of: ply, count: 3}
        matched:
        """;

    private static ReadResult read(String matched) {
        return PieceReader.read(SHELF + matched, Construction.language(), StandardWoods.standard());
    }

    private static CutGroup cut(String matched) {
        Plan plan = Planner.plan(read(matched).piece().orElseThrow(), BenchLog.EMPTY, Shop.usual())
                .plan();
        assertEquals(List.of(), plan.problems());
        return plan.cuts().get(0);
    }

    private static List<PlacedPart> named(CutGroup group, List<String> names, Function<PlacedPart, Length> along) {
        return group.plan().used().stream()
                .flatMap(piece -> piece.parts().stream())
                .filter(placed -> names.contains(placed.part().name()))
                .sorted(Comparator.comparing(along))
                .toList();
    }

    private static List<String> names(List<PlacedPart> parts) {
        return parts.stream().map(placed -> placed.part().name()).toList();
    }

    @Test
    void partsSideBySideLieInTheOrderSaidWithOneKerfBetween() {
        CutGroup group = cut("  - {beside: [shelf 3, shelf 1, shelf 2]}\n");
        List<PlacedPart> shelves = named(group, List.of("shelf 1", "shelf 2", "shelf 3"), PlacedPart::y);
        Length kerf = group.job().saw().kerf();

        assertEquals(List.of("shelf 3", "shelf 1", "shelf 2"), names(shelves));
        assertEquals(
                shelves.get(0).y().plus(shelves.get(0).width()).plus(kerf),
                shelves.get(1).y());
        assertEquals(shelves.get(0).x(), shelves.get(2).x());
    }

    @Test
    void partsOfARowLieInTheOrderSaidNotInThatOfThePiece() {
        CutGroup group = cut("  - [shelf 2, shelf 1]\n");

        assertEquals(List.of("shelf 2", "shelf 1"), names(named(group, List.of("shelf 1", "shelf 2"), PlacedPart::x)));
    }

    @Test
    void rowsMayLieSideBySide() {
        CutGroup group = cut("  - {beside: [[top, bottom], [shelf 1, shelf 2]]}\n");
        List<String> all = List.of("top", "bottom", "shelf 1", "shelf 2");
        List<PlacedPart> inX = named(group, all, PlacedPart::x);
        List<PlacedPart> inY = named(group, all, PlacedPart::y);

        assertTrue(
                names(inX.subList(0, 2)).containsAll(List.of("top", "shelf 1")),
                () -> names(inX).toString());
        assertTrue(
                names(inY.subList(0, 2)).containsAll(List.of("top", "bottom")),
                () -> names(inY).toString());
    }

    @Test
    void aStarSideBySideMeansEachOfThem() {
        CutGroup group = cut("  - {beside: shelf *}\n");

        assertEquals(
                List.of("shelf 1", "shelf 2", "shelf 3"),
                names(named(group, List.of("shelf 1", "shelf 2", "shelf 3"), PlacedPart::y)));
    }

    @Test
    void aWordThatIsNotBesideIsAnsweredWithIt() {
        assertTrue(
                read("  - {besides: [top, bottom]}\n").problems().stream()
                        .anyMatch(problem -> problem.message().contains("\"besides\"")
                                && problem.remedy().contains("beside")),
                () -> read("  - {besides: [top, bottom]}\n").problems().toString());
    }

    /** Four of 600 and three kerfs are wider than a sheet of 1220: told with what to do, and the plan goes on without them. */
    @Test
    void aSetWiderThanTheSheetIsNamed() {
        String deep = SHELF.replace("300 deep", "600 deep");
        Plan plan = Planner.plan(
                        PieceReader.read(
                                        deep + "  - {beside: shelf *}\n",
                                        Construction.language(),
                                        StandardWoods.standard())
                                .piece()
                                .orElseThrow(),
                        BenchLog.EMPTY,
                        Shop.usual())
                .plan();

        assertTrue(
                plan.findings().stream()
                        .anyMatch(finding -> finding.sentence().contains("is matched with")
                                && finding.remedy().contains("Match fewer")),
                () -> plan.findings().toString());
    }
}
