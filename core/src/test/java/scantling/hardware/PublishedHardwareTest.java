package scantling.hardware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.feature.WoodScrew;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Span;
import scantling.piece.Material;
import scantling.stock.CupHinge;
import scantling.stock.HardwareProfiles;
import scantling.stock.HingeCount;

/** Published sizes of hardware, and of the wood around it. */
class PublishedHardwareTest {
    private static final HardwareProfiles STANDARD = HardwareProfiles.standard();

    private static Dim mm(String millimetres) {
        return Dim.given(Length.mm(millimetres), millimetres, millimetres, new Span(1, 1, 0, 1));
    }

    /**
     * Drawer suppliers' measuring pages: outside width for concealed undermount slides by opening and side, and a table
     * that lets the deduction grow by 1/32 in ("3/8 to 13/32", "5/8 to 21/32").
     */
    @ParameterizedTest
    @CsvSource({"15, 5/8, 14.625", "15, 1/2, 14.375", "15.75, 5/8, 15.375"})
    void drawersOnConcealedSlidesAreAsWideAsSuppliersPrint(String opening, String side, double printed) {
        Made made = Made.of("""
            piece: test
            unit: in
            size: %s + 1 wide, 24 deep, 8 high
            materials:
              ply: {sheet: birch plywood, thickness: 1/2}
              box: {sheet: birch plywood, thickness: %s}
              thin: {sheet: birch plywood, thickness: 1/4}
            build:
              - case: {of: ply}
              - drawers: {rows: [rest], fronts: {of: ply}, box: {of: box, floor: thin, runs on: concealed undermount}}
            """.formatted(opening, side));
        double left =
                Made.mm(made.part("drawers / drawer 1 / box / left side").box().left());
        double right =
                Made.mm(made.part("drawers / drawer 1 / box / right side").box().right());
        assertEquals((printed - 1.0 / 64) * 25.4, right - left, 25.4 / 64);
    }

    /** Hinge maker's chart: cup centre from the door's edge is B + 17.5 mm. */
    @ParameterizedTest
    @CsvSource({"3, 20.5", "4, 21.5", "5, 22.5", "6, 23.5", "7, 24.5"})
    void cupsAreBoredWhereTheChartSays(String boring, String cup) {
        HardwareProfiles one = STANDARD.with(HardwareProfiles.CUP_HINGE, "plate", List.of(mm("0")));
        CupHinge hinge = CupHinge.solve(mm("13").plus(mm(boring)), one).orElseThrow();
        assertEquals(mm(boring), hinge.boring());
        assertEquals(mm(cup), hinge.cup());
    }

    /** Hinge maker's table: overlay 24 at B = 7 with a plate of -2, that is a fixed distance of 15. */
    @Test
    void overlayTwentyFourComesOfTheTablesOwnHinge() {
        HardwareProfiles own = STANDARD.with(HardwareProfiles.CUP_HINGE, "fixed distance", List.of(mm("15")))
                .with(HardwareProfiles.CUP_HINGE, "plate", List.of(mm("-2")));
        CupHinge hinge = CupHinge.solve(mm("24"), own).orElseThrow();
        assertEquals(CupHinge.Arm.STRAIGHT, hinge.arm());
        assertEquals(mm("7"), hinge.boring());
    }

    /** Same table: K9.5 and K19 arms overlay so much less than straight ones. */
    @Test
    void crankedArmsOverlayLess() {
        assertEquals(
                CupHinge.Arm.HALF,
                CupHinge.solve(mm("8"), STANDARD).orElseThrow().arm());
        assertEquals(
                CupHinge.Arm.FULL,
                CupHinge.solve(mm("-2"), STANDARD).orElseThrow().arm());
        assertEquals(Optional.empty(), CupHinge.solve(mm("40"), STANDARD));
    }

    /** Hinge maker's chart: 2, 3, 4, 5 hinges to 40, 60, 80, 100 in and to 15, 30, 45, 60 lb. */
    @ParameterizedTest
    @CsvSource({"1000, 5, 2", "1100, 5, 3", "1000, 7, 3", "1000, 14, 4", "1600, 5, 4", "2100, 5, 5", "900, 25, 5"})
    void doorsGetTheHingesTheChartSays(String height, double kilograms, int hinges) {
        assertEquals(hinges, HingeCount.of(mm(height), kilograms));
    }

    /** Frameless shop's published heights: 605 mm with a start of 46.5 mm; 16 whole pitches between is arithmetic. */
    @Test
    void aSideOf605IsBalancedWithTheUsualStart() {
        Grid grid = grid("605");
        assertEquals(mm("46.5"), grid.start());
        assertEquals(16, grid.pitches());
    }

    /** Arithmetic on the same system: 1056 = 2 x 48 + 30 x 32. */
    @Test
    void aSideOf1056IsBalancedWithAStartOf48() {
        Grid grid = grid("1056");
        assertEquals(mm("48"), grid.start());
        assertEquals(30, grid.pitches());
    }

    private static Grid grid(String height) {
        Made made = Made.of("600 wide, 500 deep, %s high".formatted(height), "- case: {of: ply}");
        return Grid.of(made.part("left side"), STANDARD);
    }

    /** Lead holes are 90 % of the root in hardwood and 70 % in softwood: association rule on a published pilot table. */
    @ParameterizedTest
    @CsvSource({"6, 0.094", "8, 0.112", "10, 0.130", "12, 0.148", "14, 0.165", "16, 0.184", "18, 0.204"})
    void pilotHolesAreNearTheRuleOfTheRoot(int gauge, double root) {
        double hard = WoodScrew.of(gauge).pilot(wood("white oak")).value().toInches();
        double soft =
                WoodScrew.of(gauge).pilot(wood("eastern white pine")).value().toInches();
        assertEquals(0.9 * root, hard, 0.035);
        assertEquals(0.7 * root, soft, 0.015);
        assertTrue(soft < hard && hard < WoodScrew.of(gauge).clearance().value().toInches());
    }

    /** Screw gauge rule, printed with the same table: diameter = 0.060 + 0.013 n inches. */
    @ParameterizedTest
    @CsvSource({"6", "7", "8", "9", "10", "11", "12", "14", "16", "18"})
    void shanksFollowTheGaugeRule(int gauge) {
        assertEquals(0.060 + 0.013 * gauge, WoodScrew.of(gauge).shank().value().toInches(), 0.001);
    }

    private static Material wood(String name) {
        return new Material(
                name,
                Material.Kind.SOLID,
                name,
                mm("20"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true,
                Optional.empty());
    }
}
