package scantling.checks.frame;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A frame that a test puts together bar by bar. */
abstract class BuiltFrame {
    static final double STIFF = 1e13;
    private static final Vector DEEP = new Vector(0, 1, 0);

    final List<Vector> nodes = new ArrayList<>();
    final List<Member> members = new ArrayList<>();
    final Set<Integer> held = new HashSet<>();

    int node(double across, double deep, double up) {
        nodes.add(new Vector(across, deep, up));
        return nodes.size() - 1;
    }

    void clamp(int node) {
        for (int i = 0; i < 6; i++) {
            held.add(6 * node + i);
        }
    }

    /** Turns only about the direction deep are free. */
    void pin(int node) {
        clamp(node);
        held.remove(6 * node + 4);
    }

    /** Bends only. Its width lies deep, so bending in the plane of the front is by its flat stiffness. */
    void bar(int from, int to, double bending) {
        bar(from, to, new Profile(STIFF, bending, bending, bending, STIFF));
    }

    void bar(int from, int to, Profile profile) {
        members.add(new Bar("bar " + members.size(), from, to, nodes.get(from), nodes.get(to), DEEP, profile));
    }

    double[] load(int node, int freedom, double force) {
        double[] load = new double[6 * nodes.size()];
        load[6 * node + freedom] = force;
        return load;
    }

    double[] solve(double[] load) {
        Solver.Answer answer = Solver.solve(new Frame(nodes, members, held), List.of(load));
        return assertInstanceOf(Solver.Answer.Moved.class, answer).each().get(0);
    }
}
