package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.feature.Features;

/** Every word that the language has for a joint is built, and cut on both parts so that they meet. */
class WordsTest {
    private static final String HEAD = """
        piece: Try-out
        unit: mm
        size: 600 wide, 420 deep, 700 high
        materials:
          oak: {solid: white oak, thickness: 20}
          ply: {sheet: birch plywood, thickness: 18}
          box: {sheet: birch plywood, thickness: 12}
          thin: {sheet: birch plywood, thickness: 6}
        build:
        """;

    private static Features sound(String build, String word) {
        Assembly assembly = Made.of(HEAD + build);
        Features made = Made.joined(assembly);
        assertEquals(List.of(), Mates.mismatches(assembly, made));
        assertEquals(
                List.of(),
                made.findings().stream()
                        .filter(finding -> finding.severity() == Finding.Severity.STOP)
                        .map(Finding::sentence)
                        .toList());
        assertTrue(
                assembly.joints().stream()
                        .filter(joint -> joint.kind().words().equals(word))
                        .anyMatch(joint -> made.features().stream()
                                .anyMatch(feature -> feature.owner().equals(joint.path()))),
                () -> "nothing is cut for a " + word);
        return made;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "loose tenon",
                "mortise and tenon",
                "haunched mortise and tenon",
                "dowel",
                "biscuit",
                "half-lap",
                "bridle",
                "pocket screw"
            })
    void framesAreJoinedBy(String word) {
        sound(
                "  - ends: {frame: {stiles: oak 70, top rail: oak 70, bottom rail: oak 80, joint: %s}}\n"
                        .formatted(word),
                word);
    }

    @ParameterizedTest
    @ValueSource(strings = {"dowel", "rabbet", "dovetail", "half-blind dovetail", "box joint"})
    void drawerCornersAreJoinedBy(String word) {
        sound("""
              - case: {of: ply}
              - drawers:
                  rows: [rest, 200]
                  fronts: {of: oak}
                  box: {of: box, floor: thin, corners: %s, runs on: side mount ball-bearing}
            """.formatted(word), word);
    }

    @ParameterizedTest
    @ValueSource(strings = {"dado", "stopped dado", "tongue and groove", "dowel", "biscuit", "pocket screw"})
    void casesAreJoinedBy(String word) {
        sound("  - case: {of: ply, bottom up: 60, joint: %s}\n".formatted(word), word);
    }

    @ParameterizedTest
    @ValueSource(strings = {"dowel", "biscuit", "butt and screw", "mitre with biscuit", "mitre with spline"})
    void plinthsAreJoinedBy(String word) {
        sound("  - plinth: {of: ply 100, joint: %s}\n".formatted(word), word);
    }

    /** A tail board's tails and the sockets of the front take up the same boxes; half pins stand at both ends. */
    @Test
    void aHalfBlindFrontKeepsWoodBeforeTheTails() {
        Features made = sound("""
              - case: {of: ply}
              - drawers:
                  rows: [rest, 200]
                  fronts: {of: oak}
                  box: {of: box, floor: thin, corners: half-blind dovetail, runs on: side mount ball-bearing}
            """, "half-blind dovetail");
        String tail = "drawers / drawer 2 / box / front to left side / tail 1 in front";
        assertEquals("4-12", Made.range(Made.feature(made, tail).through()));
    }

    /** 47 of slot and 5 of wood at either end (common practice) need 57; the rail has 44. */
    @Test
    void whatIsPickedSaysWhyNotTheQuickestWay() {
        Assembly assembly = Made.of(
                HEAD + "  - ends: {frame: {stiles: oak 60, top rail: oak 44, bottom rail: oak 80, joint: auto}}\n");
        Features made = Made.joined(assembly);
        assertEquals(
                "loose tenon, not biscuit: a 4.0 mm slot 47.0 long needs 57.0 of width, this left end / top rail has"
                        + " 44.0.",
                Made.choice(made, "left end / top rail to front stile"));
        assertEquals(List.of(), Mates.mismatches(assembly, made));
        Assembly settled = Joinery.settled(assembly, JointRules.standard());
        assertTrue(settled.joints().stream().noneMatch(joint -> joint.kind() == Joint.Kind.AUTO));
    }

    /** Sideways into an opening of 60 there is no room for the smallest biscuit. */
    @Test
    void insistingOnWhatDoesNotFitIsFound() {
        Features made = Made.joined(Made.of(
                HEAD + "  - ends: {frame: {stiles: oak 60, top rail: oak 44, bottom rail: oak 80, joint: biscuit}}\n"));
        Finding none = made.findings().get(0);
        assertEquals(Finding.Severity.STOP, none.severity());
        assertEquals(
                "No biscuit suits where left end / top rail and left end / front stile meet: the smallest, #0, is 47.0"
                        + " long and needs 57.0 of width and 10.0 of thickness; they meet over 44.0 by 20.0 mm.",
                none.sentence());
        assertEquals("Use a loose tenon or dowels, or make left end / top rail wider.", none.remedy());
    }
}
