package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.construct.Finding;
import scantling.construct.Starters;
import scantling.feature.Feature;
import scantling.space.Box;
import scantling.stock.HardwareProfiles;

/** Handles, feet, bolts, butts and the rest, worked by hand; and all starters. */
class FittingsTest {
    static Stream<String> starters() {
        return Starters.NAMES.stream();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyHoleOfEveryStarterLiesInItsPartWithWoodAroundIt(String starter) {
        Made made = Made.starter(starter);
        assertEquals(List.of(), HoleCheck.check(made.assembly(), made.features(), HardwareProfiles.standard()));
        for (Feature feature : made.features().features()) {
            Box part = made.part(feature.part()).box();
            Box cut = feature.inSpace(made.part(feature.part()));
            assertTrue(
                    part.meet(cut)
                            .extent(scantling.space.Axis.ACROSS)
                            .value()
                            .equals(cut.extent(scantling.space.Axis.ACROSS).value()),
                    feature.path());
            assertTrue(
                    part.meet(cut)
                            .extent(scantling.space.Axis.DEEP)
                            .value()
                            .equals(cut.extent(scantling.space.Axis.DEEP).value()),
                    feature.path());
            assertTrue(
                    part.meet(cut)
                            .extent(scantling.space.Axis.UP)
                            .value()
                            .equals(cut.extent(scantling.space.Axis.UP).value()),
                    feature.path());
        }
        assertEquals(
                made.features().features().stream()
                        .map(Feature::path)
                        .distinct()
                        .count(),
                made.features().features().size());
        assertTrue(
                made.features().findings().stream().noneMatch(finding -> finding.severity() == Finding.Severity.STOP));
    }

    @Test
    void aHandleSitsInTheMiddleOfADrawerFront() {
        // Front 420 x 130: middles 210 -+ 64 and 65.
        assertEquals(
                List.of(
                        "hole 1: hole 5 in face side, along 146, across 65, deep 20",
                        "hole 2: hole 5 in face side, along 274, across 65, deep 20"),
                Made.starter("bedside-chest").on("drawers / drawer 1 / front", "drawers / drawer 1 / handle"));
    }

    @Test
    void aKnobTakesOneHole() {
        Made made = Made.of("500 wide, 450 deep, 200 high", """
            - case: {of: ply}
            - drawers: {rows: [rest], fronts: {of: oak, pull: knob}, box: {of: box, floor: thin}}
            """);
        assertEquals(1, made.owned("drawers / drawer 1 / handle").size());
    }

    @Test
    void aLowDoorsHandleHangsAtTheTopOfItsFreeStile() {
        // Sideboard: door 710 high, stile 60 wide: 710 - 60 = 650, and 128 lower.
        assertEquals(
                List.of(
                        "hole 1: hole 5 in face side, along 522, across 30, deep 20",
                        "hole 2: hole 5 in face side, along 650, across 30, deep 20"),
                Made.starter("sideboard")
                        .on("left / doors / left door / right stile", "left / doors / left door / handle"));
    }

    @Test
    void frontAndBoxAreDrilledForTheFixingInTheSamePlace() {
        Made chest = Made.starter("bedside-chest");
        // Box front 382 long, 113 high, 19 right of the front's end and 12 above its lower edge.
        assertEquals(
                List.of(
                        "hole 1: hole 20 in back side, along 79, across 68.5, deep 12",
                        "hole 2: hole 20 in back side, along 341, across 68.5, deep 12"),
                chest.on("drawers / drawer 1 / front", "drawers / drawer 1 / front fixings"));
        assertEquals(
                List.of(
                        "screw hole 1: hole 6 in back side, along 60, across 56.5, deep 12",
                        "screw hole 2: hole 6 in back side, along 322, across 56.5, deep 12"),
                chest.on("drawers / drawer 1 / box / front", "drawers / drawer 1 / front fixings"));
    }

    @Test
    void clipsOfTheTableSitInSlotsOfTheRailAndScrewsBesideThem() {
        Made table = Made.starter("dining-table");
        // Rail 25 thick with a tenon of 45 at each end: first clip 90 from its end, 12 under the top, 18 behind its
        // face.
        assertEquals(
                "slot 1: slot - in back side, along 90, across 98, deep 12",
                table.on("legs and rails / front rail", "legs and rails / top fastenings")
                        .get(0));
        Feature pilot = table.owned("legs and rails / top fastenings").get(1);
        Feature slot = table.owned("legs and rails / top fastenings").get(0);
        Box rail = table.part("legs and rails / front rail").box();
        Box hole = pilot.inSpace(table.part("top / panel"));
        assertEquals(Made.mm(rail.back()) + 18, (Made.mm(hole.front()) + Made.mm(hole.back())) / 2, 1e-6);
        Box cut = slot.inSpace(table.part("legs and rails / front rail"));
        assertEquals(
                (Made.mm(cut.left()) + Made.mm(cut.right())) / 2,
                (Made.mm(hole.left()) + Made.mm(hole.right())) / 2,
                1e-6);
    }

    @Test
    void bedsOfButtHingesLeaveTheGap() {
        Made made = Made.of(
                "500 wide, 350 deep, 700 high",
                "- case: {of: ply}\n- doors: {count: 1, of: oak, hung on: butt hinges}");
        List<Feature> all = made.owned("doors / door / hinges");
        // Gap 2, closed hinge 4: beds (4 - 2) / 2 = 1 deep in door and side; door 660 high, so hinges 50 long.
        List<String> beds = all.stream()
                .filter(feature -> feature.kind() == Feature.Kind.RECESS)
                .map(feature -> "%s %s x %s x %s"
                        .formatted(
                                feature.part(),
                                Made.plain(feature.along().size()),
                                Made.plain(feature.depth()),
                                feature.surface().words()))
                .toList();
        assertEquals(
                List.of(
                        "doors / door / board 50 x 1 x face edge",
                        "left side 50 x 1 x back side",
                        "doors / door / board 50 x 1 x face edge",
                        "left side 50 x 1 x back side"),
                beds);
        assertEquals(8, all.size() - beds.size(), "two screws in each leaf");
    }

    @Test
    void boltsOfABedMeetTheirNuts() {
        Made made = Made.of("""
            piece: bed
            unit: mm
            size: 1000 wide, 2000 deep, 400 high
            materials:
              leg: {solid: white oak, thickness: 60}
              rail: {solid: white oak, thickness: 25}
            build:
              - legs and rails: {legs: leg, rails: rail 140, joint: dowel, bolted: yes}
            """);
        List<Feature> bolt = made.owned("legs and rails / front rail / left bolts");
        assertEquals(8, bolt.size(), "two bolts: head, leg, rail and nut of each");
        Feature rail = bolt.get(2);
        Feature nut = bolt.get(3);
        assertTrue(Made.mm(rail.along().to()) > Made.middle(nut.along()), "the bolt reaches its nut");
        assertEquals(Made.middle(rail.across()), Made.middle(nut.across()), 1e-6);
        assertEquals(50, Made.middle(nut.along()), 1e-6);
    }

    @Test
    void aCaseThatComesApartHasItsCamsAndSocketsInLine() {
        Made made = Made.of("600 wide, 400 deep, 700 high", "- case: {of: ply, joint: dowel, comes apart: yes}");
        List<Feature> all = made.owned("bottom / knock-down fittings");
        assertEquals(12, all.size(), "two at each end: cam, bolt and socket");
        Box cam = all.get(0).inSpace(made.part("bottom"));
        Box bolt = all.get(1).inSpace(made.part("bottom"));
        Box socket = all.get(2).inSpace(made.part("left side"));
        assertEquals(18 + 34, (Made.mm(cam.left()) + Made.mm(cam.right())) / 2, 1e-6);
        assertEquals(Made.mm(bolt.left()), Made.mm(socket.right()), 1e-6);
        assertEquals(Made.mm(bolt.bottom()) + 4, Made.mm(socket.bottom()) + 2.5, 1e-6);
    }

    @Test
    void feetStandAtTheCornersOfTheBottom() {
        Made made = Made.of("600 wide, 400 deep, 700 high", "- case: {of: ply, joint: dowel, feet: 4}");
        assertEquals(4, made.owned("levelling feet").size());
    }

    @Test
    void theSheetThatCameWithTheSlideOverridesTheProfile() {
        HardwareProfiles own = HardwareProfiles.standard()
                .with(
                        HardwareProfiles.SIDE_MOUNT,
                        "line up",
                        List.of(HardwareProfiles.standard().of(HardwareProfiles.SIDE_MOUNT, "front hole")));
        Made made = Made.of("""
            piece: test
            unit: mm
            size: 500 wide, 450 deep, 300 high
            materials:
              ply: {sheet: birch plywood, thickness: 18}
              box: {sheet: birch plywood, thickness: 12}
              thin: {sheet: birch plywood, thickness: 6}
            build:
              - case: {of: ply, joint: dowel}
              - drawers: {rows: [rest], fronts: {of: ply}, box: {of: box, floor: thin, runs on: side mount ball-bearing}}
            """, own);
        // 18 + 6.35 + 37.
        assertTrue(made.on("left side", "drawers / drawer 1 / slides").get(0).contains("along 61.35,"));
    }
}
