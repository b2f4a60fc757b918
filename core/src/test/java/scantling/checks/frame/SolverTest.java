package scantling.checks.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import scantling.space.Axis;

/** The frame solver against closed forms and patch tests. */
class SolverTest extends BuiltFrame {
    private static final double BENDING = 2e9;
    private static final double LOAD = 300;

    /** Closed form P L^3/(3 E I) + P L/(G A'): Wood Handbook (GTR-282) Eq. 9-1, cantilever with load at its end. */
    @Test
    void aCantileverBendsAndShearsAsTheHandbookSays() {
        int root = node(0, 0, 0);
        int tip = node(500, 0, 0);
        clamp(root);
        double shear = 4e5;
        bar(root, tip, new Profile(STIFF, BENDING, BENDING, BENDING, shear));

        double sinks = -solve(load(tip, 2, -LOAD))[6 * tip + 2];

        assertEquals(LOAD * 500 * 500 * 500 / (3 * BENDING) + LOAD * 500 / shear, sinks, 1e-6);
    }

    /**
     * Sway of a portal frame with clamped feet under a load at its beam, k = (Ib/L)/(Ic/h): P h^3 (2 + 3 k)/(12 E Ic (1 +
     * 6 k)), by slope-deflection (any textbook of structures; Kleinlogel, Rigid Frame Formulas, frame 3).
     */
    @ParameterizedTest
    @CsvSource({"1, 700, 1800", "3, 700, 700", "0.2, 420, 900"})
    void aPortalWithClampedFeetSwaysByTheClosedForm(double beamToPost, double height, double span) {
        int[] portal = portal(beamToPost, height, span);
        clamp(portal[0]);
        clamp(portal[3]);

        double sway = solve(load(portal[1], 0, LOAD))[6 * portal[2]];

        double k = beamToPost / span * height;
        double closed = LOAD * Math.pow(height, 3) * (2 + 3 * k) / (12 * BENDING * (1 + 6 * k));
        assertEquals(closed, sway, closed * 1e-4);
    }

    /** With pinned feet: P h^3 (2 k + 1)/(12 E Ic k); same sources. */
    @ParameterizedTest
    @CsvSource({"1, 700, 1800", "3, 700, 700", "0.2, 420, 900"})
    void aPortalOnPinsSwaysByTheClosedForm(double beamToPost, double height, double span) {
        int[] portal = portal(beamToPost, height, span);
        pin(portal[0]);
        pin(portal[3]);

        double sway = solve(load(portal[1], 0, LOAD))[6 * portal[2]];

        double k = beamToPost / span * height;
        double closed = LOAD * Math.pow(height, 3) * (2 * k + 1) / (12 * BENDING * k);
        assertEquals(closed, sway, closed * 1e-4);
    }

    private int[] portal(double beamToPost, double height, double span) {
        int[] portal = {node(0, 0, 0), node(0, 0, height), node(span, 0, height), node(span, 0, 0)};
        bar(portal[0], portal[1], BENDING);
        bar(portal[1], portal[2], beamToPost * BENDING);
        bar(portal[2], portal[3], BENDING);
        return portal;
    }

    /** P L^3/(3 E I) + P L^2/k: a spring at the root turns by P L/k (hand statics). */
    @Test
    void aJointThatGivesTurnsTheBarBehindIt() {
        int wall = node(0, 0, 0);
        int root = node(0, 0, 0);
        int tip = node(400, 0, 0);
        clamp(wall);
        bar(root, tip, BENDING);
        double spring = 5e6;
        members.add(new Link(
                "joint",
                root,
                wall,
                Vector.ZERO,
                Vector.ZERO,
                new Vector(STIFF, STIFF, STIFF),
                new Vector(STIFF, spring, STIFF)));

        double[] moved = solve(load(tip, 2, -LOAD));

        double closed = LOAD * Math.pow(400, 3) / (3 * BENDING) + LOAD * 400 * 400 / spring;
        assertEquals(closed, -moved[6 * tip + 2], closed * 1e-6);
        Link joint = (Link) members.get(1);
        double moment = joint.passing(Solver.of(moved, joint)).moment().deep();
        assertEquals(LOAD * 400, Math.abs(moment), LOAD * 400 * 1e-6);
    }

    /** A hinged frame braced by a sheet alone shears by P h/(G t w): definition of the shear modulus. */
    @Test
    void aSheetHoldsAHingedFrameByItsShear() {
        int[] portal = portal(1, 700, 900);
        members.clear();
        portal = hinged(700, 900);
        double sway = solve(load(portal[1], 0, LOAD))[6 * portal[1]];
        assertEquals(LOAD * 700 / (600.0 * 6 * 900), sway, 1e-6);
    }

    private int[] hinged(double height, double span) {
        nodes.clear();
        int[] portal = {node(0, 0, 0), node(span, 0, 0), node(span, 0, height), node(0, 0, height)};
        for (int i = 0; i < 4; i++) {
            for (int freedom : new int[] {1, 3, 4, 5}) {
                held.add(6 * portal[i] + freedom);
            }
        }
        held.addAll(Set.of(0, 2, 6, 8, 6 * portal[2] + 2, 6 * portal[3] + 2));
        bar(portal[2], portal[3], BENDING);
        members.add(sheet(portal, span, height));
        return new int[] {portal[0], portal[3]};
    }

    private static Sheet sheet(int[] corners, double wide, double high) {
        List<Sheet.Corner> four = new ArrayList<>();
        for (int corner : corners) {
            four.add(new Sheet.Corner(corner, Vector.ZERO));
        }
        return new Sheet("back", four, Axis.ACROSS, Axis.UP, wide, high, 600 * 6);
    }

    /** Patch test: four unequal sheets about an off-centre node take one even shear, each the same (Irons and Razzaque 1972). */
    @Test
    void unequalSheetsTakeAnEvenShearEvenly() {
        double[] across = {0, 300, 1000};
        double[] up = {0, 450, 700};
        int[][] grid = new int[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                grid[i][j] = node(across[i], 0, up[j]);
            }
        }
        double angle = 0.002;
        double[] moved = new double[6 * nodes.size()];
        for (int n = 0; n < nodes.size(); n++) {
            moved[6 * n] = angle * nodes.get(n).up();
        }
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                int[] corners = {grid[i][j], grid[i + 1][j], grid[i + 1][j + 1], grid[i][j + 1]};
                members.add(sheet(corners, across[i + 1] - across[i], up[j + 1] - up[j]));
            }
        }
        double[] sum = new double[6 * nodes.size()];
        for (Member member : members) {
            assertEquals(angle, ((Sheet) member).outOfSquare(Solver.of(moved, member)), 1e-12);
            double[] forces = member.forces(Solver.of(moved, member));
            for (int i = 0; i < forces.length; i++) {
                sum[6 * member.nodes()[i / 6] + i % 6] += forces[i];
            }
        }
        assertEquals(0, sum[6 * grid[1][1]], 1e-6);
        assertEquals(0, sum[6 * grid[1][1] + 2], 1e-6);
    }

    @Test
    void aFrameOnFourHingesIsToldToBeLooseAndWhichWay() {
        hinged(700, 900);
        members.remove(1);

        Solver.Answer answer = Solver.solve(new Frame(nodes, members, held), List.of(load(3, 0, LOAD)));

        Solver.Answer.Loose loose = assertInstanceOf(Solver.Answer.Loose.class, answer);
        assertTrue(Math.abs(loose.direction().across())
                > 10 * Math.abs(loose.direction().up()));
    }

    /** Saint-Venant's torsion constants of rectangles: 0.1406 a^4 for a square, 0.229 a b^3 at 2 : 1 (Timoshenko and Goodier, table). */
    @ParameterizedTest
    @CsvSource({"10, 10, 0.1406", "20, 10, 0.229", "30, 10, 0.263", "100, 10, 0.312"})
    void barsTwistByTheTabulatedConstants(double a, double b, double tabulated) {
        assertEquals(
                tabulated * a * b * b * b, Profile.rectangle(1, 1, a, b).twist(), 0.006 * tabulated * a * b * b * b);
    }
}
