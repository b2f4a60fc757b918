package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.measure.Ledger;
import scantling.measure.Tolerance;
import scantling.piece.Piece;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;

/** A loose part is joined by its own word, whether it is written before or after what it touches. */
class LooseJointTest {
    private static List<String> joints(String... steps) {
        String text = """
            piece: Try-out
            unit: mm
            size: 600 wide, 400 deep, 500 high
            materials:
              ply: {sheet: birch plywood, thickness: 18}
              oak: {solid: white oak, thickness: 20}
            build:
            """ + String.join("", steps).indent(2);
        ReadResult read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), read.problems());
        Piece piece = read.piece().orElseThrow();
        Assembly assembly = Construction.assemble(
                piece, new Ledger(java.util.Map.of(), piece.sizes(), Tolerance.NONE), Tolerances.standard());
        assertEquals(List.of(), assembly.problems());
        return assembly.joints().stream()
                .filter(joint ->
                        joint.entering().equals("rib") || joint.receiving().equals("rib"))
                .map(joint ->
                        "%s %s %s".formatted(joint.entering(), joint.kind().words(), joint.receiving()))
                .sorted()
                .toList();
    }

    private static String rib(int from, int length, String joint) {
        return "- loose: {name: rib, of: oak 60, length: %d, at: {across: %d, deep: 100, up: 200}, joint: %s}\n"
                .formatted(length, from, joint);
    }

    private static final String CASE = "- case: {of: ply}\n";

    /** Between the sides of the case, 18 in from either end: 564 long. */
    @Test
    void writtenBeforeTheCaseItIsDowelledToBothSides() {
        assertEquals(List.of("rib dowel left side", "rib dowel right side"), joints(rib(18, 564, "dowel"), CASE));
    }

    @Test
    void writtenAfterTheCaseItIsTheSame() {
        assertEquals(joints(rib(18, 564, "dowel"), CASE), joints(CASE, rib(0, 564, "dowel")));
    }

    /** 6 into either side. */
    @Test
    void letIntoSidesThatAreBuiltLaterItHasItsDados() {
        assertEquals(List.of("rib dado left side", "rib dado right side"), joints(rib(12, 576, "dado"), CASE));
    }
}
