package scantling.finishing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.construct.Finding;

/** What is told of a finish that will not do, against what finishers publish; sources beside the checks. */
class FinishFaultsTest {
    /** A professional finisher's column and WOODWEB 2008: days of curing, 72 h, or a barrier of dewaxed shellac. */
    @ParameterizedTest
    @CsvSource({
        "'stain: oil stain\ntop: waterborne lacquer x 2', true",
        "'stain: oil stain\nseal: dewaxed shellac\ntop: waterborne lacquer x 2', false",
        "'stain: oil stain\ntop: \"waterborne lacquer x 2, after 72 h\"', false",
        "'stain: oil stain\ntop: \"waterborne lacquer x 2, after 24 h\"', true",
        "'stain: waterborne stain\ntop: waterborne lacquer x 2', false",
        "'top: oil\nlacquer: waterborne lacquer', true"
    })
    void waterborneOverOilWantsABarrierOrACure(String finish, boolean told) {
        assertEquals(told, Finished.tells(Finished.of("white oak", finish), "has not cured wrinkles"));
    }

    /** Common practice: shellac under a film must be dewaxed; nothing holds on wax. */
    @Test
    void waxUnderAFilmStops() {
        for (String finish : List.of("seal: shellac\ntop: waterborne lacquer", "wax: wax\ntop: polyurethane varnish")) {
            List<Finding> findings = Finished.of("white oak", finish).findings();
            assertTrue(findings.stream().anyMatch(one -> one.severity() == Finding.Severity.STOP), finish);
        }
        assertTrue(
                Finished.of("white oak", "seal: dewaxed shellac\ntop: waterborne lacquer\nwax: wax").findings().stream()
                        .noneMatch(one -> one.severity() == Finding.Severity.STOP));
    }

    /** Lumber yard guide: film not over 220; abrasive seller guide: oil to 220. */
    @Test
    void sandingTooFineIsToldByWhatGoesOver() {
        assertTrue(Finished.tells(Finished.of("white oak", "sand: 320\ntop: waterborne lacquer"), "holds less"));
        assertTrue(Finished.tells(Finished.of("white oak", "sand: 320\ntop: oil"), "burnishes"));
        assertFalse(Finished.tells(Finished.of("white oak", "sand: 180\ntop: waterborne lacquer"), "holds less"));
    }

    /** Common practice: cherry and maple blotch under pigment stains, oak does not. */
    @Test
    void blotchingWoodsWantAWashcoatOrADye() {
        assertTrue(
                Finished.tells(Finished.of("black cherry", "stain: oil stain\ntop: varnish"), "black cherry blotches"));
        assertFalse(Finished.tells(Finished.of("black cherry", "stain: gel stain\ntop: varnish"), "blotches"));
        assertFalse(
                Finished.tells(Finished.of("black cherry", "wash: shellac washcoat\nstain: oil stain"), "blotches"));
        assertFalse(Finished.tells(Finished.of("white oak", "stain: oil stain\ntop: varnish"), "blotches"));
    }

    @Test
    void aPanelBareOnOneSideIsUnbalanced() {
        FinishPlan plan = Finished.of("white oak", "groups:\n  outside: {faces: show, top: varnish x 2}");
        assertTrue(plan.findings().stream()
                .anyMatch(one -> one.sentence().contains("They are: left side")
                        && one.sentence().contains("cup")));
        assertFalse(Finished.tells(Finished.of("white oak", "top: varnish x 2"), "cups"));
    }

    /** Common practice: twice as long for every 8 to 10 C colder; so 9.5 C under 21 C about doubles it. */
    @Test
    void coldAirDriesSlowerAndTooColdIsTold() {
        double usual = wait(Finished.of("white oak", "top: varnish"));
        double cold = wait(Finished.of("white oak", "air: 11.5 C\ntop: varnish"));
        assertEquals(2, cold / usual, 0.03);
        assertTrue(Finished.tells(Finished.of("white oak", "air: 5 C, 50 %\ntop: varnish"), "At 5 C"));
        assertTrue(Finished.tells(
                Finished.of("white oak", "air: 20 C, 90 %\ntop: waterborne lacquer"), "At 90 % humidity"));
    }

    private static double wait(FinishPlan plan) {
        return plan.groups().get(0).coatings().get(0).drying().least().likely();
    }

    /** From memory in the table: five mil of conversion varnish in all; six coats of 25 um are more. */
    @Test
    void tooManyCoatsOfABrittleFilmAreTold() {
        assertTrue(Finished.tells(Finished.of("white oak", "top: conversion varnish x 6"), "cracks"));
        assertFalse(Finished.tells(Finished.of("white oak", "top: conversion varnish x 3"), "cracks"));
    }

    /** Common practice: both sides of a panel get the same coats. */
    @Test
    void panelsWithTheSameFaultAreNamedInOneFinding() {
        FinishPlan plan = Finishing.plan(Finished.assembly(Finished.starter("kitchen")));
        List<String> unbalanced = Finished.sentences(plan).stream()
                .filter(sentence -> sentence.startsWith("One side of"))
                .toList();
        assertEquals(
                unbalanced.size(),
                unbalanced.stream()
                        .map(one -> one.replaceAll("They are.*", ""))
                        .distinct()
                        .count());
        assertTrue(unbalanced.stream().anyMatch(one -> one.contains("panels get")), unbalanced::toString);
    }

    @Test
    void siliconeIsMindedAtTheFirstCoatThatBuildsAFilmAndOnlyThere() {
        FinishPlan plan =
                Finished.of("white oak", "stain: oil stain\nseal: dewaxed shellac\ntop: waterborne lacquer x 2");
        FinishGroup group = plan.groups().get(plan.groups().size() - 1);
        List<String> minded = group.coatings().stream()
                .filter(coating -> coating.notes().stream().anyMatch(note -> note.contains("Silicone")))
                .map(Coating::title)
                .toList();
        assertEquals(List.of("dewaxed shellac"), minded);
    }

    @Test
    void aSystemThatEndsWithItsStainHasAHole() {
        assertTrue(Finished.sentences(Finished.of("white oak", "stain: oil stain")).stream()
                .anyMatch(sentence -> sentence.contains("protects nothing")));
        assertTrue(Finished.sentences(Finished.of("white oak", "stain: oil stain\ntop: oil x 2")).stream()
                .noneMatch(sentence -> sentence.contains("protects nothing")));
    }

    @Test
    void whatIsTrueOfSeveralGroupsIsSaidOnce() {
        FinishPlan plan = Finished.of(
                "black cherry",
                "stain: oil stain\n"
                        + "top: oil varnish\n"
                        + "groups:\n"
                        + "  in: {faces: inside, stain: oil stain, top: oil varnish}");
        List<String> blotches = Finished.sentences(plan).stream()
                .filter(sentence -> sentence.contains("blotches"))
                .toList();
        assertEquals(1, blotches.size(), blotches::toString);
        assertTrue(blotches.get(0).contains("finish; finish / in"), blotches::toString);
    }
}
