package scantling.checks.lasting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import scantling.construct.Assembly;
import scantling.construct.Finding;
import scantling.space.Axis;
import scantling.space.Side;

class TippingTest {
    // A block of MDF (700 kg/m3, IS 12406) 400 x 300 x 800 as body and 400 x 300 x 100 as drawer, by hand:
    // body 67.2 kg at 150 behind the front, drawer 8.4 kg at 150; open by .75 x 300 = 225.
    private static Assembly block() {
        return new Made("Block")
                .part("body", Made.sheet("MDF"), Axis.UP, Side.FRONT, Made.box(0, 400, 0, 300, 0, 800))
                .part(
                        "drawer 1 / front",
                        Made.sheet("MDF"),
                        Axis.ACROSS,
                        Side.FRONT,
                        Made.box(0, 400, 0, 300, 800, 900))
                .assembly();
    }

    @Test
    void momentsAreThoseOfHandStatics() {
        Assembly assembly = block();
        Drawers drawers = new Drawers(assembly);
        Balance balance = new Balance(assembly, Woods.standard(), drawers.all());
        assertEquals(75.6, balance.mass(), 1e-6);
        assertEquals(75.6 * 150, balance.shut(), 1e-3);
        assertEquals(75.6 * 150 - 8.4 * 225, balance.open(0), 1e-3);
        assertEquals(225, balance.reach(), 1e-9);
        assertEquals((67.2 * 400 + 8.4 * 850) / 75.6, balance.centreHeight(), 1e-6);
    }

    // (75.6 x 150 - 8.4 x 225) / 225 = 42 kg on the open front tips it: more than a child of 60 lb.
    @Test
    void whatTipsItIsSaidInMass() {
        List<Finding> findings = LastingChecks.check(block());
        assertTrue(
                findings.stream().anyMatch(finding -> finding.sentence().contains("42.0 kg (93 lb)")),
                findings.toString());
    }

    private static Assembly chest(double height, double depth) {
        return new Made("Chest")
                .part("side", Made.sheet("MDF"), Axis.UP, Side.LEFT, Made.box(0, 60, 0, depth, 0, height))
                .part("drawer 1 / front", Made.sheet("MDF"), Axis.ACROSS, Side.FRONT, Made.box(60, 860, 0, 20, 0, 400))
                .part("drawer 1 / floor", Made.sheet("MDF"), Axis.ACROSS, Side.TOP, Made.box(60, 860, 20, depth, 0, 6))
                .assembly();
    }

    private static boolean isInScope(Assembly assembly) {
        return LastingChecks.check(assembly).stream()
                .anyMatch(finding -> finding.source().contains("16 CFR 1261"));
    }

    // 16 CFR 1261: only with 27 in (685.8 mm), 30 lb and 3.2 ft3 (90.6 dm3) together.
    @Test
    void theClothingRuleNeedsAllItsLimitsTogether() {
        assertTrue(isInScope(chest(686, 400)));
        assertTrue(!isInScope(chest(685, 400)));
        // 0.8 x 0.28 m x (400 - 6 - 3.175 mm) = 87.5 dm3.
        assertTrue(!isInScope(chest(686, 300)));
    }

    // 30 lb are 13.608 kg (international pound): MDF of 700 kg/m3, a board as thick as brings it to either side.
    @Test
    void aLightChestIsOutsideHoweverLargeItsDrawers() {
        assertTrue(isInScope(weighing(13.7)));
        assertTrue(!isInScope(weighing(13.5)));
    }

    private static Assembly weighing(double kg) {
        double others = (800 * 20 * 400 + 800 * 380 * 6) * 700e-9;
        double thick = (kg - others) / (400.0 * 700 * 700e-9);
        return new Made("Chest")
                .part("side", Made.sheet("MDF"), Axis.UP, Side.LEFT, Made.box(60 - thick, 60, 0, 400, 0, 700))
                .part("drawer 1 / front", Made.sheet("MDF"), Axis.ACROSS, Side.FRONT, Made.box(60, 860, 0, 20, 0, 400))
                .part("drawer 1 / floor", Made.sheet("MDF"), Axis.ACROSS, Side.TOP, Made.box(60, 860, 20, 400, 0, 6))
                .assembly();
    }

    // ANSI/KCMA A161.1: 15 lb/ft2, 73.2 kg/m2 by hand. 900 x 560 mm hold 36.9 kg: beyond 75 lb (34.0 kg), within 100
    // lb.
    @Test
    void slidesAreHeldAgainstWhatTheDrawerMayHold() {
        assertTrue(slides("concealed undermount").get(0).sentence().contains("36.9 kg"));
        assertEquals(List.of(), slides("side mount ball-bearing"));
    }

    private static List<Finding> slides(String profile) {
        Assembly desk = new Made("Desk")
                .part("drawer 1 / floor", Made.sheet("MDF"), Axis.ACROSS, Side.TOP, Made.box(0, 900, 0, 560, 100, 112))
                .slides("drawer 1", profile)
                .assembly();
        return LastingChecks.check(desk).stream()
                .filter(finding -> finding.rule().equals("slides"))
                .toList();
    }

    // Hand statics: contents of 8.5 lb/ft3 (136.16 kg/m3) in 400 x 300 x (900 - 800 - ...) stand as far forward as it
    // opens.
    @Test
    void fullDrawersTipItSoonerThanEmptyOnes() {
        Assembly chest = chest(600, 400);
        Drawers drawers = new Drawers(chest);
        Balance balance = new Balance(chest, Woods.standard(), drawers.all());
        Drawers.Drawer drawer = drawers.all().get(0);
        double contents = 0.13616 * 0.8 * 380 * (400 - 6 - 3.175) * 1e-3;
        assertEquals(
                balance.open(0) + contents * (200 - drawer.opens()),
                balance.open(0.13616),
                0.02 * Math.abs(balance.open(0)));
    }

    // Rear raised by 10.9 mm over feet 300 deep: 75.6 kg at 450 high come 75.6 x 450 x 10.9/300 forward (hand statics).
    @Test
    void aSoftFloorTakesFromTheMargin() {
        Assembly assembly = block();
        Balance balance = new Balance(assembly, Woods.standard(), new Drawers(assembly).all());
        double height = (67.2 * 400 + 8.4 * 850) / 75.6;
        assertEquals(1000 - 75.6 * height * 10.9 / 300, balance.onSoftFloor(1000), 1e-6);
    }

    @Test
    void aKitchenIsNotJudgedAsClothingStorage() {
        assertTrue(Scope.mayHoldClothes("Dresser for the guest room"));
        assertTrue(!Scope.mayHoldClothes("Base units along the north wall"));
    }
}
