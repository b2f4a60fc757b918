package scantling.checks.frame;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ojalgo.matrix.decomposition.LU;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;

/** Crooked frames of bars, links and sheets in all directions: moved as a whole, and solved by another library. */
class ScatteredFramesTest extends BuiltFrame {
    /** Patch test: unequal stretches of a bar under one pull stretch evenly; whole movements strain nothing. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void moveAllTogetherAndNothingIsStrained(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Frame frame = scattered(random);
        Vector shift = vector(random, 10);
        Vector turn = vector(random, 1e-3);
        double[] moved = new double[frame.freedoms()];
        for (int n = 0; n < frame.nodes().size(); n++) {
            Vector at = shift.plus(turn.cross(frame.nodes().get(n)));
            double[] six = {at.across(), at.deep(), at.up(), turn.across(), turn.deep(), turn.up()};
            System.arraycopy(six, 0, moved, 6 * n, 6);
        }
        for (Member member : frame.members()) {
            for (double force : member.forces(Solver.of(moved, member))) {
                assertEquals(0, force, 1e-3);
            }
        }
    }

    /** The same stiffness solved densely by LU of ojAlgo. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void anotherLibrarySolvesTheSameFrameToTheSameMovements(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Frame frame = scattered(random);
        double[] load = random.doubles(frame.freedoms(), -100, 100).toArray();

        Solver.Answer answer = Solver.solve(frame, List.of(load));
        double[] ours =
                assertInstanceOf(Solver.Answer.Moved.class, answer).each().get(0);

        R064Store body = R064Store.FACTORY.rows(Solver.dense(frame));
        LU<Double> lu = LU.R064.make(body);
        lu.decompose(body);
        MatrixStore<Double> theirs = lu.getSolution(R064Store.FACTORY.column(Solver.inOrder(frame, load)));
        double[] inOrder = Solver.inOrder(frame, ours);
        double[] other = new double[inOrder.length];
        for (int i = 0; i < other.length; i++) {
            other[i] = theirs.doubleValue(i, 0);
        }
        double most = 0;
        for (double each : other) {
            most = Math.max(most, Math.abs(each));
        }
        assertArrayEquals(other, inOrder, 1e-8 * most);
    }

    /** A crooked tree of bars with links and a sheet between them, held at its first node. */
    private Frame scattered(SplittableRandom random) {
        for (int i = 0; i < 12; i++) {
            node(random.nextDouble(1000), random.nextDouble(500), random.nextDouble(900));
        }
        clamp(0);
        for (int i = 1; i < 12; i++) {
            int other = random.nextInt(i);
            if (i % 4 == 3) {
                members.add(new Link(
                        "joint " + i,
                        i,
                        other,
                        nodes.get(other).minus(nodes.get(i)).times(0.25),
                        nodes.get(other).minus(nodes.get(i)).times(-0.75),
                        new Vector(1e4, 2e4, 3e4),
                        new Vector(1e7, 2e7, 3e7)));
            } else {
                Vector along = nodes.get(i).minus(nodes.get(other));
                Vector width = along.cross(vector(random, 1));
                members.add(new Bar(
                        "bar " + i,
                        other,
                        i,
                        nodes.get(other),
                        nodes.get(i),
                        width,
                        Profile.rectangle(11000, 690, 20 + 60 * random.nextDouble(), 20)));
            }
        }
        return new Frame(nodes, members, held);
    }

    private static Vector vector(SplittableRandom random, double size) {
        return new Vector(
                size * (random.nextDouble() - 0.5),
                size * (random.nextDouble() - 0.5),
                size * (random.nextDouble() - 0.5));
    }
}
