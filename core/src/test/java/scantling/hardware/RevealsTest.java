package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;
import scantling.space.Box;

/** Gaps about the fronts of a bank of drawers, summed with a rule. */
class RevealsTest {
    private static Made bank(String rows, String set) {
        return Made.of("500 wide, 450 deep, 500 high", """
            - case: {of: ply}
            - drawers: {rows: %s, gap: 2, fronts: {of: oak, set: %s}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """.formatted(rows, set));
    }

    private static List<Box> fronts(Made made, int count) {
        List<Box> all = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            all.add(made.part("drawers / drawer " + i + " / front").box());
        }
        return all;
    }

    private static List<Double> gaps(List<Box> fronts) {
        List<Double> gaps = new ArrayList<>();
        for (int i = 1; i < fronts.size(); i++) {
            gaps.add(Made.mm(fronts.get(i - 1).bottom()) - Made.mm(fronts.get(i).top()));
        }
        return gaps;
    }

    /** 500 less two boards of 18: 464 of opening, 16 of lap at both ends: 496; less two gaps of 2: 492, three of 164. */
    @Test
    void anOverlayBankOfEqualFrontsLeavesNoRemainder() {
        Made made = bank("3 equal", "overlay");
        List<Box> fronts = fronts(made, 3);
        fronts.forEach(front -> assertEquals(164, Made.mm(front.top()) - Made.mm(front.bottom()), 1e-9));
        assertEquals(List.of(2.0, 2.0), gaps(fronts));
        assertEquals(500 - 2, Made.mm(fronts.get(0).top()), 1e-9);
        assertEquals(2, Made.mm(fronts.get(2).bottom()), 1e-9);
    }

    /** 464 of opening less four gaps of 2: 456; 456 - 120 - 150 = 186 for the one that takes the rest. */
    @Test
    void anInsetBankHasTheSameGapAllRound() {
        Made made = bank("[120, 150, rest]", "inset");
        List<Box> fronts = fronts(made, 3);
        assertEquals(List.of(2.0, 2.0), gaps(fronts));
        assertEquals(482 - 2, Made.mm(fronts.get(0).top()), 1e-9);
        assertEquals(18 + 2, Made.mm(fronts.get(2).bottom()), 1e-9);
        assertEquals(186, Made.mm(fronts.get(2).top()) - Made.mm(fronts.get(2).bottom()), 1e-9);
        fronts.forEach(front -> {
            assertEquals(18 + 2, Made.mm(front.left()), 1e-9);
            assertEquals(500 - 18 - 2, Made.mm(front.right()), 1e-9);
        });
    }

    /** Shares that do not come out in whole tenths: none of the fronts differs from another by more than a ten-thousandth. */
    @ParameterizedTest
    @CsvSource({"7, inset", "7, overlay", "11, inset", "5, overlay"})
    void noFrontTakesWhatTheOthersLeave(int count, String set) {
        Made made = Made.of("500 wide, 450 deep, 1000 high", """
            - case: {of: ply}
            - drawers: {rows: %d equal, gap: 2.5, fronts: {of: oak, set: %s}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """.formatted(count, set));
        List<Box> fronts = fronts(made, count);
        double whole = set.equals("inset") ? 1000 - 36 - 2.5 * (count + 1) : 1000 - 36 + 32 - 2.5 * (count - 1);
        fronts.forEach(front -> assertEquals(whole / count, Made.mm(front.top()) - Made.mm(front.bottom()), 1e-4));
        gaps(fronts).forEach(gap -> assertEquals(2.5, gap, 1e-9));
    }

    /** The sideboard's doors with their opening found larger or smaller: they follow it, so all gaps stay as wide as they were. */
    @ParameterizedTest
    @CsvSource({
        "left / doors / opening / height, 713.2",
        "left / doors / opening / height, 714.7",
        "left / doors / opening / width, 943.1"
    })
    void doorsThatFollowAMeasuredOpeningKeepTheirGaps(String name, String size) {
        assertEquals(List.of(), uneven(BenchLog.EMPTY));
        BenchLog.Measured measured = new BenchLog.Measured(name, Length.mm(size), new Span(1, 1, 0, 0));
        assertEquals(List.of(), uneven(new BenchLog(List.of(measured), List.of(), List.of())));
    }

    private static List<String> uneven(BenchLog bench) {
        String text = Made.text("sideboard");
        Piece piece = PieceReader.read(text, Construction.language(), StandardWoods.standard())
                .piece()
                .orElseThrow();
        return Planner.plan(piece, bench, Shop.usual()).plan().findings().stream()
                .map(Finding::sentence)
                .filter(sentence -> sentence.startsWith("One of the gaps"))
                .toList();
    }
}
