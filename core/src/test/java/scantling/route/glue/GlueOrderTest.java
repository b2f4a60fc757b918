package scantling.route.glue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static scantling.checks.HandBuilt.box;
import static scantling.checks.HandBuilt.lying;
import static scantling.checks.HandBuilt.upright;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import scantling.checks.HandBuilt;
import scantling.construct.Assembly;
import scantling.construct.Construction;
import scantling.construct.Finding;
import scantling.construct.Joint;
import scantling.construct.Starters;
import scantling.joinery.Joinery;
import scantling.joinery.JointRules;
import scantling.piece.BenchLog;
import scantling.piece.PieceReader;
import scantling.plan.Planner;
import scantling.plan.Shop;
import scantling.plan.StandardWoods;

class GlueOrderTest {
    static Assembly starter(String name) {
        try (InputStream in = Starters.open(name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Joinery.settled(
                    Planner.assemble(
                            PieceReader.read(text, Construction.language(), StandardWoods.standard())
                                    .piece()
                                    .orElseThrow(),
                            BenchLog.EMPTY,
                            Shop.usual()),
                    JointRules.standard());
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    static List<String> starters() {
        return Starters.NAMES;
    }

    private static List<String> names(List<Session> sessions) {
        return sessions.stream().filter(Session::isGlueUp).map(Session::name).toList();
    }

    /** Two sides and a shelf between them, in dadoes. */
    private static HandBuilt shelfBetween() {
        return new HandBuilt(500, 200, 300)
                .with(
                        upright("left", box(0, 20, 0, 200, 0, 300)),
                        upright("right", box(480, 500, 0, 200, 0, 300)),
                        lying("shelf", box(14, 486, 0, 200, 100, 120)))
                .joined(Joint.Kind.DADO, "shelf", "left", box(14, 20, 0, 200, 100, 120))
                .joined(Joint.Kind.DADO, "shelf", "right", box(480, 486, 0, 200, 100, 120));
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyStarterCanBePutTogetherAndTheReplayMeetsNoWood(String name) {
        Assembly assembly = starter(name);
        GlueOrder order = GlueOrder.of(assembly, Glue.usual());
        assertEquals(List.of(), Replay.problems(assembly, order));
        assertEquals(
                List.of(),
                order.findings().stream()
                        .filter(finding -> finding.severity() == Finding.Severity.STOP)
                        .toList());
    }

    /**
     * Worked by hand for the framed chest: each end is a frame (stiles onto its rails, clamped from front to back); its panel
     * lies in a rabbet open to the inside and is put in from there, so it needs no glue-up. The four rails and the back, which
     * stands in grooves of rails and stiles, go between the ends from left to right. Box fronts and backs go between drawer
     * sides, the floor in its grooves. The front lipping is glued to the top's core before the two that are mitred against it,
     * or after them; either is right.
     */
    @Test
    void theFramedChestIsGluedAsWorkedByHand() {
        GlueOrder order = GlueOrder.of(starter("bedside-chest"), Glue.usual());
        List<String> names = new ArrayList<>(names(order.sessions()));
        assertEquals(
                List.of("top", "top, step 2"),
                names.stream().filter(name -> name.startsWith("top")).toList());
        assertTrue(names.indexOf("left end") < names.indexOf("body"), names::toString);
        assertTrue(names.indexOf("right end") < names.indexOf("body"), names::toString);
        for (int drawer = 1; drawer <= 3; drawer++) {
            assertTrue(names.contains("drawers / drawer %d / box".formatted(drawer)), names::toString);
        }
        Session end = session(order, "left end");
        assertEquals(4, end.glued().size());
        assertEquals(2, end.clamps());
        Session body = session(order, "body");
        assertTrue(body.parts().contains("back"), "the back is captured");
        assertTrue(
                body.glued().stream().noneMatch(joint -> joint.startsWith("back to")),
                "the back is left loose in its grooves");
    }

    private static Session session(GlueOrder order, String name) {
        return order.sessions().stream()
                .filter(session -> session.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aShelfBetweenTwoSidesIsOneGlueUpFromTheLeft() {
        Assembly assembly = shelfBetween().assembly();
        GlueOrder order = GlueOrder.of(assembly, Glue.usual());
        assertEquals(1, order.sessions().size());
        Session session = order.sessions().get(0);
        assertEquals(
                List.of(List.of("shelf"), List.of("right")),
                session.closings().stream().map(Closing::parts).toList());
        assertEquals(1, session.clamps());
        assertEquals(List.of(), Replay.problems(assembly, order));
    }

    /** A post and two rails, each pinned to the others in its own direction: whichever comes last has two ways to close at once. */
    private static HandBuilt corner() {
        return new HandBuilt(400, 400, 500)
                .with(
                        upright("post", box(0, 40, 0, 40, 0, 500)),
                        lying("front rail", box(40, 400, 0, 60, 400, 440)),
                        lying("side rail", box(0, 60, 40, 400, 440, 480)))
                .joined(Joint.Kind.DOWEL, "front rail", "post")
                .joined(Joint.Kind.DOWEL, "side rail", "post");
    }

    @Test
    void twoRailsIntoAPostCloseOneAfterTheOther() {
        Assembly assembly = corner().assembly();
        GlueOrder order = GlueOrder.of(assembly, Glue.usual());
        assertEquals(List.of(), order.findings());
        assertEquals(2, order.sessions().size());
        assertEquals(List.of(), Replay.problems(assembly, order));
    }

    @Test
    void aRailThatWouldHaveToCloseTwoWaysAtOnceIsNamedAsTrapped() {
        Assembly assembly =
                corner().joined(Joint.Kind.DOWEL, "side rail", "front rail").assembly();
        List<Finding> findings = GlueOrder.of(assembly, Glue.usual()).findings();
        assertEquals(1, findings.size(), findings::toString);
        assertEquals(Finding.Severity.STOP, findings.get(0).severity());
        assertTrue(findings.get(0).sentence().contains("is trapped"), findings::toString);
        assertTrue(findings.get(0).sentence().contains("comes off toward the"), findings::toString);
    }

    @Test
    void theReplaySeesAPartPushedThroughWood() {
        Assembly assembly = shelfBetween().assembly();
        Session wrong = new Session(
                "wrong",
                java.util.Set.of("left", "right", "shelf"),
                List.of(
                        new Closing(List.of("right"), List.of("left"), scantling.space.Side.LEFT, List.of()),
                        new Closing(
                                List.of("shelf"), List.of("left", "right"), scantling.space.Side.BOTTOM, List.of())),
                scantling.space.Axis.ACROSS,
                List.of(),
                1,
                1,
                scantling.measure.Length.mm(500),
                false,
                0);
        List<String> said = Replay.problems(assembly, new GlueOrder(List.of(wrong), List.of(), List.of()));
        assertTrue(said.stream().anyMatch(line -> line.contains("shelf meets left")), said::toString);
    }

    @Test
    void moreJointsThanTheGlueAllowsAreGluedInTwoGoes() {
        HandBuilt tall = shelfBetween();
        for (int k = 0; k < 12; k++) {
            long low = 130 + 12 * k;
            tall.with(lying("shelf " + k, box(14, 486, 0, 200, low, low + 10)))
                    .joined(Joint.Kind.DADO, "shelf " + k, "left", box(14, 20, 0, 200, low, low + 10))
                    .joined(Joint.Kind.DADO, "shelf " + k, "right", box(480, 486, 0, 200, low, low + 10));
        }
        GlueOrder order = GlueOrder.of(tall.assembly(), Glue.usual());
        assertTrue(
                names(order.sessions()).size() > 1,
                () -> names(order.sessions()).toString());
        assertEquals(List.of(), Replay.problems(tall.assembly(), order));
    }
}
