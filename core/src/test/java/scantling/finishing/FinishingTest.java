package scantling.finishing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.construct.Finding;
import scantling.space.Side;

/** Finishes as said, against what finishers publish; sources beside the checks. */
class FinishingTest {
    private static List<String> titles(FinishGroup group) {
        return group.coatings().stream().map(Coating::title).toList();
    }

    @Test
    void anOldTextFinishesTheWholePieceAndSaysWhatIsBetterDoneFirst() {
        FinishPlan plan = Finished.of("white oak", "seal: dewaxed shellac\ntop: waterborne lacquer x 2");
        assertEquals(
                List.of("the piece before: true", "the piece before: false"),
                plan.groups().stream()
                        .map(group -> group.name() + " before: " + group.beforeAssembly())
                        .toList());
        assertTrue(plan.groups().get(0).parts().contains("back"));
        assertTrue(plan.groups().get(0).parts().stream().anyMatch(part -> part.contains("box")));
        assertEquals(
                List.of("dewaxed shellac", "waterborne lacquer, coat 1 of 2", "waterborne lacquer, coat 2 of 2"),
                titles(plan.groups().get(1)));
    }

    @Test
    void aGroupMayBeAsSmallAsOneEdge() {
        FinishPlan plan = Finished.of(
                "white oak",
                "top: waterborne lacquer\n"
                        + "groups:\n"
                        + "  edges:\n"
                        + "    on: drawer / box / left side\n"
                        + "    faces: top edges\n"
                        + "    oil: oil x 2");
        FinishGroup edge = plan.groups().stream()
                .filter(group -> group.name().equals("edges"))
                .findFirst()
                .orElseThrow();
        assertEquals(1, edge.faces().size());
        assertEquals(Side.TOP, edge.faces().get(0).side());
        assertEquals(edge.areas().whole(), edge.areas().edges(), 1e-12);
        boolean shared = plan.groups().stream()
                .filter(group -> !group.name().equals("edges"))
                .flatMap(group -> group.faces().stream())
                .anyMatch(face -> face == edge.faces().get(0));
        assertFalse(shared);
    }

    @Test
    void noFaceIsInTwoGroupsAndNoOpenFaceIsForgotten() {
        FinishPlan plan =
                Finished.of("white oak", "top: oil x 2\ngroups:\n  in: {faces: inside, wax: wax}\n  backs: {on: back}");
        List<Face> all =
                plan.groups().stream().flatMap(group -> group.faces().stream()).toList();
        assertEquals(
                all.size(),
                all.stream().map(System::identityHashCode).distinct().count());
        double coated = plan.groups().stream()
                .mapToDouble(group -> group.areas().show() + group.areas().inside())
                .sum();
        double bare = plan.faces().stream()
                .filter(face -> face.part().path().endsWith("back"))
                .mapToDouble(face -> face.show() + face.inside())
                .sum();
        double open = plan.faces().stream()
                .mapToDouble(face -> face.show() + face.inside())
                .sum();
        assertEquals(open, coated + bare, 1e-9);
    }

    @Test
    void sheetsBoughtPrefinishedNeedOnlyWhatIsCut() {
        String text = Finished.text("white oak", "top: oil x 2")
                .replace("ply: {sheet: birch plywood,", "ply: {sheet: birch plywood, prefinished: yes,");
        FinishPlan plan = Finishing.plan(Finished.assembly(text));
        List<Face> ply = plan.groups().stream()
                .flatMap(group -> group.faces().stream())
                .filter(face -> face.part().material().name().equals("ply"))
                .toList();
        assertFalse(ply.isEmpty());
        assertTrue(ply.stream().allMatch(face -> face.isEdge() || face.isEnd()));
    }

    @Test
    void whatIsFinishedFirstIsMaskedWhereGlueGoes() {
        FinishPlan plan = Finished.of(
                "white oak", "top: oil x 2\ngroups:\n  early: {on: left side, before assembly: yes, oil: oil}");
        FinishGroup early = plan.groups().stream()
                .filter(group -> group.name().equals("early"))
                .findFirst()
                .orElseThrow();
        assertTrue(early.beforeAssembly());
        assertTrue(early.masks().stream().anyMatch(mask -> mask.part().equals("left side")));
        early.masks()
                .forEach(mask ->
                        assertTrue(mask.patch().alongFrom() <= mask.patch().alongTo()));
    }

    /** By hand: litres = area x 1.25 on open pores / (1000 x .315 x .65 / 25) x 1.15 for the likely first coat. */
    @Test
    void litresAreAreaOverSpreadWithWaste() {
        FinishPlan plan = Finished.of("white oak", "top: waterborne lacquer x 2, hvlp");
        FinishGroup group = plan.groups().get(plan.groups().size() - 1);
        double spread = 1000 * 0.315 * 0.65 / 25;
        assertEquals(
                group.areas().whole() * 1.25 / spread * 1.15,
                group.coatings().get(0).litres().likely(),
                1e-9);
        assertEquals(
                group.areas().whole() / spread * 1.15,
                group.coatings().get(1).litres().likely(),
                1e-9);
        double bought = plan.buy().get(0).litres().likely();
        assertEquals(
                plan.groups().stream()
                        .flatMap(one -> one.coatings().stream())
                        .mapToDouble(coating -> coating.litres().likely())
                        .sum(),
                bought,
                1e-9);
    }

    @Test
    void aCoatOfTwoPartsIsSplitByItsRatio() {
        FinishPlan plan = Finished.of(
                "white oak", "coats:\n  hard: {like: conversion varnish, parts to one of hardener: 9}\ntop: hard x 2");
        FinishPlan.Buy buy = plan.buy().get(0);
        assertEquals(buy.litres().likely() / 10, buy.hardener().orElseThrow().likely(), 1e-9);
        assertTrue(buy.mixing().contains("9 parts to 1 of hardener"));
    }

    @Test
    void aWindowThatClosesIsSaidBesideTheCoat() {
        FinishPlan plan = Finished.of("white oak", "top: conversion varnish x 2");
        assertTrue(plan.groups().get(0).coatings().get(0).notes().stream()
                .anyMatch(note -> note.startsWith("Next coat within 24 h")));
    }

    /** NFPA and OSHA 29 CFR 1910.107(g)(3) on oily rags; ACGIH on oak dust; cautions stand at the step they belong to. */
    @Test
    void cautionsStandBesideTheirStepWithTheirSource() {
        FinishPlan plan = Finished.of("white oak", "use: food\ntop: oil x 2");
        List<Coating> coats = plan.groups().get(plan.groups().size() - 1).coatings();
        String first = words(coats.get(0));
        assertTrue(first.contains("heat up by themselves") && first.contains("1910.107(g)(3)"));
        assertTrue(first.contains("A1"));
        assertFalse(words(coats.get(1)).contains("A1"));
        assertTrue(words(coats.get(1)).contains("food touches it"));
        assertTrue(Finished.tells(plan, "not before that for food"));
    }

    private static String words(Coating coating) {
        return coating.cautions().stream()
                .map(one -> one.says() + " (" + one.source() + ")")
                .collect(Collectors.joining("\n"));
    }

    @Test
    void sprayingSolventsAsksForABoothAndAMask() {
        String sprayed = words(Finished.of("white oak", "top: nitrocellulose lacquer, hvlp")
                .groups()
                .get(0)
                .coatings()
                .get(0));
        assertTrue(sprayed.contains("booth") && sprayed.contains("respirator"));
        String brushed = words(Finished.of("white oak", "top: nitrocellulose lacquer, brush")
                .groups()
                .get(0)
                .coatings()
                .get(0));
        assertFalse(brushed.contains("booth"));
    }

    /** Common practice: a thick waterborne lacquer atomises at about 35 psi with the trigger pulled. */
    @Test
    void gunSettingsAreRangesToBeginFrom() {
        Spray spray = Finished.of("white oak", "top: waterborne lacquer")
                .groups()
                .get(0)
                .coatings()
                .get(0)
                .spray()
                .orElseThrow();
        assertTrue(spray.air().low() < 35 && spray.air().high() >= 35);
        assertTrue(spray.words().contains("begin here"));
    }

    @Test
    void theTestBoardTriesEveryStepInOrder() {
        List<String> board =
                Finished.of("black cherry", "stain: oil stain\nseal: dewaxed shellac\ntop: varnish x 2")
                        .testBoard()
                        .stream()
                        .map(FinishPlan.Trial::what)
                        .toList();
        assertTrue(board.get(0).startsWith("Bare, sanded to 150 to 180"));
        assertTrue(board.stream().anyMatch(what -> what.startsWith("Shellac washcoat")));
        assertEquals(board.size(), board.stream().distinct().count());
    }

    @Test
    void aCoatNobodyKnowsIsNamedWithItsLineAndTheNearest() {
        FinishPlan plan = Finished.of("white oak", "top: waterbourne lacquer x 2");
        Finding finding = plan.findings().get(0);
        assertTrue(finding.sentence().contains("Line 14") && finding.sentence().contains("waterbourne lacquer"));
        assertTrue(finding.remedy().contains("waterborne lacquer"));
        assertEquals(List.of(), plan.groups());
    }

    @ParameterizedTest
    @CsvSource({
        "'coats:\n  mine: {like: varnish, solids: 0 %}\ntop: mine', is no figure",
        "'coats:\n  mine: {like: varnish, solids: 130 %}\ntop: mine', is no figure",
        "'coats:\n  mine: {like: varnish, solid: 30 %}\ntop: mine', cannot be said of a coat",
        "'coats:\n  mine: {like: varnich}\ntop: mine', No coat is called",
        "'coats:\n  mine: {like: varnish, recoat after: 30 h, recoat before: 10 h}\ntop: mine', no time is left",
        "'groups:\n  a: {on: drawr, top: oil}', No part of this piece",
        "'groups:\n  a: {of: maple, top: oil}', No part is of",
        "'groups:\n  a: {faces: outsides, top: oil}', names no faces",
        "'groups:\n  a: {before assembly: maybe, top: oil}', neither yes nor no",
        "'air: wet\ntop: oil', no air a finish can dry in",
        "'sand: 5\ntop: oil', is no grit",
        "'by: trowel\ntop: oil', no way to put on",
        "'use: garden\ntop: oil', no use that changes"
    })
    void whatCannotBeUnderstoodIsAProblemWithItsPlace(String finish, String told) {
        FinishPlan plan = Finished.of("white oak", finish);
        assertEquals(1, plan.problems().size(), () -> plan.problems().toString());
        assertTrue(
                plan.problems().get(0).message().contains(told),
                () -> plan.problems().toString());
        assertTrue(plan.problems().get(0).span().line() >= 14);
    }

    @Test
    void theMakersOwnFigureWins() {
        FinishPlan plan =
                Finished.of("white oak", "coats:\n  shop oil: {like: oil, spread: 20 to 24 m2/L}\ntop: shop oil");
        Coating coating = plan.groups().get(0).coatings().get(0);
        assertEquals(22 * 0.85, coating.spread().orElseThrow().likely(), 1e-9);
    }

    @Test
    void whereNothingIsSaidNothingGoesOn() {
        FinishPlan plan = Finishing.plan(
                Finished.assembly(Finished.text("white oak", "top: oil").replaceAll("(?s)finish:.*", "")));
        assertEquals(List.of(), plan.groups());
        assertEquals(List.of(), plan.findings());
        assertTrue(plan.glueArea() > 0);
    }
}
