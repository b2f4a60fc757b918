package scantling.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.construct.Part;
import scantling.construct.Starters;
import scantling.cutting.SawCheck;
import scantling.measure.Dim;
import scantling.measure.Explain;
import scantling.measure.LengthFormat;
import scantling.measure.Making;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;

/** Every starter, from its text to its plan. */
class StartersTest {
    private static final Shop SHOP = Started.shop(50);

    static Stream<String> starters() {
        return Starters.NAMES.stream();
    }

    private static Piece piece(String starter) {
        ReadResult result = PieceReader.read(Started.text(starter), Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), result.problems(), starter);
        return result.piece().orElseThrow();
    }

    private static Plan plan(String starter) {
        return Planner.plan(piece(starter), BenchLog.EMPTY, SHOP).plan();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void canBeBuiltAsWrittenAndNothingSaysStop(String starter) {
        Plan plan = plan(starter);
        assertEquals(List.of(), plan.problems());
        assertEquals(
                List.of(),
                plan.findings().stream()
                        .filter(finding -> finding.severity() == Finding.Severity.STOP)
                        .map(finding -> finding.subject() + ": " + finding.sentence())
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyNumberGoesBackToWhatWasTypedOrATable(String starter) {
        Plan plan = plan(starter);
        Explain explain = new Explain(LengthFormat.MM);
        plan.assembly().names().values().forEach(dim -> {
            assertRooted(dim);
            assertFalse(explain.tree(dim).isBlank());
        });
        plan.blanks().forEach(blank -> {
            assertRooted(blank.rough().length());
            assertRooted(blank.rough().width());
            assertRooted(blank.rough().thickness());
        });
    }

    private static void assertRooted(Dim dim) {
        Deque<Dim> open = new ArrayDeque<>(List.of(dim));
        while (!open.isEmpty()) {
            Dim next = open.pop();
            Making making = next.making();
            boolean rooted = making instanceof Making.Given given
                            && !given.text().isBlank()
                    || making instanceof Making.LookedUp row && !row.source().isBlank()
                    || making instanceof Making.Measured
                    || next.value().isZero()
                    || !making.inputs().isEmpty();
            assertTrue(rooted, () -> dim + " rests on a bare number");
            making.inputs().forEach(input -> open.push(input.dim()));
        }
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everySizeIsPositiveAndEveryPartIsOnSomeSawPlan(String starter) {
        Plan plan = plan(starter);
        for (Part part : plan.assembly().parts()) {
            assertTrue(part.length().value().isPositive(), part::path);
            assertTrue(part.width().value().isPositive(), part::path);
            assertTrue(part.thickness().value().isPositive(), part::path);
        }
        List<String> cut = plan.cuts().stream()
                .flatMap(group -> group.plan().used().stream())
                .flatMap(used -> used.parts().stream())
                .map(placed -> placed.part().name())
                .distinct()
                .sorted()
                .toList();
        List<String> wanted =
                plan.assembly().parts().stream().map(Part::path).sorted().toList();
        assertEquals(wanted, cut);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everySawPlanStandsBeforeItsJudge(String starter) {
        plan(starter).cuts().forEach(group -> assertEquals(List.of(), SawCheck.problems(group.job(), group.plan())));
    }

    @ParameterizedTest
    @MethodSource("starters")
    void theSameTextGivesTheSamePlan(String starter) {
        Plan first = plan(starter);
        Plan second = plan(starter);
        assertEquals(first.assembly().names(), second.assembly().names());
        assertEquals(
                first.cuts().stream().map(CutGroup::plan).toList(),
                second.cuts().stream().map(CutGroup::plan).toList());
    }

    /** Common practice: the last of a bank of drawers gathers what all others are off by, and is fitted to what is there. */
    @ParameterizedTest
    @CsvSource({
        "bedside-chest, drawers / drawer 3 / opening, drawers / drawer 3 / front",
        "sideboard, right / drawers / drawer 4 / opening, right / drawers / drawer 4 / front"
    })
    void theOpeningThatGathersAllErrorsIsMeasuredBeforeItsFrontIsCut(String starter, String opening, String front) {
        List<Finding> first = plan(starter).findings().stream()
                .filter(finding -> finding.rule().equals("measure first"))
                .toList();
        assertTrue(first.size() <= 2, "only what matters: " + first);
        assertTrue(
                first.stream()
                        .anyMatch(finding -> finding.subject().equals(opening)
                                && finding.remedy().startsWith("Measure it before cutting " + front + ": ")),
                first::toString);
    }
}
