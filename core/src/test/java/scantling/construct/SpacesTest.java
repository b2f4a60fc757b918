package scantling.construct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.checks.AssemblyCheck;
import scantling.measure.Ledger;
import scantling.piece.PieceReader;
import scantling.piece.ReadResult;
import scantling.plan.StandardWoods;
import scantling.space.Axis;
import scantling.space.Extent;
import scantling.space.Side;

/** Spaces one behind the other, spaces that look another way, boards that lean: pieces that no starter shows. */
class SpacesTest {
    private static Assembly build(String text) {
        ReadResult read = PieceReader.read(text, Construction.language(), StandardWoods.standard());
        assertEquals(List.of(), read.problems());
        Tolerances tolerances = Tolerances.standard();
        Ledger ledger = new Ledger(Map.of(), Map.of(), tolerances.of("measured at the bench"));
        Assembly assembly = Construction.assemble(read.piece().orElseThrow(), ledger, tolerances);
        assertEquals(List.of(), assembly.problems());
        return assembly;
    }

    private static Assembly piece(String name) {
        try (InputStream in = SpacesTest.class.getResourceAsStream("/scantling/pieces/" + name + ".yaml")) {
            return build(new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static Part part(Assembly assembly, String end) {
        return assembly.parts().stream()
                .filter(part -> part.path().endsWith(end))
                .findFirst()
                .orElseThrow(() -> new AssertionError(Said.list(assembly).toString()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tall-cabinet", "bed-frame", "bench", "corner-run", "splayed-stool"})
    void theJudgeFindsNothingAgainstIt(String name) {
        assertEquals(
                List.of(),
                AssemblyCheck.check(piece(name)).stream()
                        .map(finding -> finding.subject() + ": " + finding.sentence())
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"right", "left", "back"})
    void aCaseThatLooksAnotherWayHasTheSamePartsAsOneThatLooksForward(String to) {
        String materials =
                "materials: {ply: {sheet: birch plywood, thickness: 18}, thin: {sheet: birch plywood, thickness: 6},"
                        + " ash: {solid: white ash, thickness: 20}}\n";
        String steps = "case: {of: ply, set back: 20, back: {of: thin, in: rabbet}}";
        String doors = "doors: {of: ash, set: overlay, overlay: 14, count: 2}";
        boolean across = to.equals("back");
        Assembly forward = build("piece: a\nunit: mm\nsize: 700 wide, 400 deep, 600 high\n" + materials + "build:\n  - "
                + steps + "\n  - " + doors + "\n");
        Assembly turned = build("piece: a\nunit: mm\nsize: " + (across ? "700 wide, 400 deep" : "400 wide, 700 deep")
                + ", 600 high\n" + materials + "build:\n  - facing:\n      to: " + to + "\n      build:\n        - "
                + steps
                + "\n        - " + doors + "\n");
        assertEquals(Said.list(forward), Said.list(turned));
        assertEquals(
                forward.joints().stream()
                        .map(joint -> joint.path() + joint.sizes())
                        .toList(),
                turned.joints().stream()
                        .map(joint -> joint.path() + joint.sizes())
                        .toList());
        assertEquals(List.of(), AssemblyCheck.check(turned));
        // Its doors hang before the side it looks to, its left side is on the left of one who stands there.
        Side side = Side.valueOf(to.toUpperCase(Locale.ROOT));
        Extent door = Extent.of(part(turned, "left door / board").box());
        Extent whole = Extent.of(part(turned, "left side").box());
        assertTrue(door.past(whole, side) > 19, door::toString);
        Side left = Map.of("right", Side.FRONT, "left", Side.BACK, "back", Side.RIGHT)
                .getOrDefault(to, Side.LEFT);
        Extent bottom = Extent.of(part(turned, "bottom").box());
        assertTrue(whole.past(bottom, left) > 0, whole::toString);
    }

    @Test
    void aSplayedLegInASpaceThatLooksAnotherWayStillStands() {
        Assembly turned = build("""
            piece: a
            unit: mm
            size: 320 wide, 400 deep, 450 high
            materials: {ash: {solid: white ash, thickness: 20}, leg: {solid: white ash, thickness: 40}}
            build:
              - facing:
                  to: right
                  build:
                    - board: {name: seat, of: ash, on: top, inset: {ends: 40, front: 25, back: 25}, joint: glued edge}
                    - legs and rails: {legs: leg, rails: ash 60, splay: {ends: 60, front: 40, back: 40}}
            """);
        assertEquals(List.of(), AssemblyCheck.check(turned));
    }

    @Test
    void spacesOneBehindTheOtherShareTheDepth() {
        Assembly assembly = build("""
            piece: a
            unit: mm
            size: 500 wide, 400 deep, 600 high
            materials: {ply: {sheet: birch plywood, thickness: 18}}
            build:
              - case: ply
              - depths: {sizes: [150, rest], divider: ply}
            """);
        // 500 - 2 x 18 wide between the sides and 6 let into each; 600 - 2 x 18 high.
        Part divider = part(assembly, "divider");
        assertEquals(
                "476",
                divider.box()
                        .extent(Axis.ACROSS)
                        .value()
                        .millimetres()
                        .stripTrailingZeros()
                        .toPlainString());
        assertEquals(150, divider.box().front().value().toMillimetres(), 0);
        assertEquals(List.of(), AssemblyCheck.check(assembly));
    }

    @Test
    void aBoardLeansAboutItsLowerOuterEdge() {
        Extent rest = part(piece("bench"), "back rest").solid().extent();
        // 400 at 10 degrees: 400 x sin 10 = 69.46 back, 400 x cos 10 = 393.92 up and 24 x sin 10 = 4.17 more inside.
        assertEquals(470 + 69.459, rest.back(), 0.01);
        assertEquals(430 + 393.923 + 4.168, rest.top(), 0.01);
        assertEquals(430, rest.bottom(), 0.01);
    }
}
