package scantling.finishing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.construct.Starters;
import scantling.joinery.Joinery;
import scantling.joinery.JointRules;
import scantling.piece.BenchLog;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

/** Pieces with a finish, said as a maker says them. */
final class Finished {
    /** A box of 600 x 300 x 400 of some wood, with a back and a drawer. */
    private static final String CASE = """
        piece: A case
        size: 600 wide, 300 deep, 400 high
        materials:
          wood: {solid: %s, thickness: 20}
          ply: {sheet: birch plywood, thickness: 12}
          thin: {sheet: birch plywood, thickness: 6}
        build:
          - case: {of: wood, back: {of: thin, in: rabbet}}
          - drawers:
              rows: 1 equal
              fronts: {of: wood}
              box: {of: ply, floor: thin, corners: dowel, runs on: side mount ball-bearing}
        finish:
        %s
        """;

    private Finished() {}

    static String text(String wood, String finish) {
        return CASE.formatted(wood, finish.indent(2));
    }

    static Piece piece(String text) {
        ReadResult result = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), result.problems());
        return result.piece().orElseThrow();
    }

    static Assembly assembly(String text) {
        return Joinery.settled(Planner.assemble(piece(text), BenchLog.EMPTY, Shop.usual()), JointRules.standard());
    }

    /** The finish of the case. */
    static FinishPlan of(String wood, String finish) {
        return Finishing.plan(assembly(text(wood, finish)));
    }

    static String starter(String name) {
        try (InputStream in = Starters.open(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    static List<String> sentences(FinishPlan plan) {
        return plan.findings().stream().map(Finding::sentence).toList();
    }

    /** Whether a finding has such words. */
    static boolean tells(FinishPlan plan, String words) {
        return sentences(plan).stream().anyMatch(sentence -> sentence.contains(words));
    }
}
