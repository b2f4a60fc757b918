package scantling.checks.frame;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/** Movements of a frame under loads: sparse Cholesky factors of its stiffness, made once for all loads. */
final class Solver {
    /** Furniture that gives this much is no structure, mm. */
    private static final double ENDLESS = 1e5;
    /** Stiffness lent to every movement to see which way a mechanism goes, of the greatest. */
    private static final double LENT = 1e-9;

    private final Frame frame;
    private final int[] rows;
    private final int size;

    private Solver(Frame frame) {
        this.frame = frame;
        this.rows = new int[frame.freedoms()];
        this.size = number();
    }

    /** What became of a frame. */
    sealed interface Answer {
        /** Movements, one array for each load. */
        record Moved(List<double[]> each) implements Answer {}

        /** It does not hold: a node moves without anything resisting. */
        record Loose(int node, Vector direction) implements Answer {}
    }

    private int number() {
        int[] places = Ordering.places(frame);
        int[] nodeAt = new int[places.length];
        for (int node = 0; node < places.length; node++) {
            nodeAt[places[node]] = node;
        }
        int next = 0;
        for (int node : nodeAt) {
            for (int i = 0; i < Member.FREEDOMS; i++) {
                int freedom = node * Member.FREEDOMS + i;
                rows[freedom] = frame.held().contains(freedom) ? -1 : next++;
            }
        }
        return next;
    }

    /** Movements under each load. @param loads forces and moments on every movement of every node */
    static Answer solve(Frame frame, List<double[]> loads) {
        return new Solver(frame).solve(loads);
    }

    private Answer solve(List<double[]> loads) {
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
        if (solver.setA(stiffness(0))) {
            List<double[]> moved =
                    loads.stream().map(load -> moved(solver, load)).toList();
            if (moved.stream().allMatch(Solver::isFinite)) {
                return new Answer.Moved(moved);
            }
        }
        return loose(loads);
    }

    private static boolean isFinite(double[] moved) {
        for (double each : moved) {
            if (!(Math.abs(each) < ENDLESS)) {
                return false;
            }
        }
        return true;
    }

    private double[] moved(LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver, double[] load) {
        DMatrixRMaj right = new DMatrixRMaj(size, 1);
        for (int i = 0; i < rows.length; i++) {
            if (rows[i] >= 0) {
                right.set(rows[i], 0, load[i]);
            }
        }
        DMatrixRMaj left = new DMatrixRMaj(size, 1);
        solver.solve(right, left);
        double[] moved = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            moved[i] = rows[i] >= 0 ? left.get(rows[i], 0) : 0;
        }
        return moved;
    }

    /** The stiffness of what can move, both halves. @param lent added to every movement, of the greatest */
    private DMatrixSparseCSC stiffness(double lent) {
        DMatrixSparseTriplet entries =
                new DMatrixSparseTriplet(size, size, frame.members().size() * 144);
        double greatest = 0;
        for (Member member : frame.members()) {
            greatest = Math.max(greatest, add(entries, member));
        }
        for (int i = 0; lent > 0 && i < size; i++) {
            entries.addItem(i, i, lent * greatest);
        }
        DMatrixSparseCSC summed = DConvertMatrixStruct.convert(entries, (DMatrixSparseCSC) null);
        summed.sortIndices(null);
        CommonOps_DSCC.duplicatesAdd(summed, null);
        return summed;
    }

    private double add(DMatrixSparseTriplet entries, Member member) {
        double[][] k = member.stiffness();
        int[] nodes = member.nodes();
        double greatest = 0;
        for (int i = 0; i < k.length; i++) {
            int row = row(nodes, i);
            for (int j = 0; row >= 0 && j < k.length; j++) {
                int column = row(nodes, j);
                if (column >= 0 && k[i][j] != 0) {
                    entries.addItem(row, column, k[i][j]);
                }
            }
            greatest = Math.max(greatest, k[i][i]);
        }
        return greatest;
    }

    private int row(int[] nodes, int local) {
        return rows[nodes[local / Member.FREEDOMS] * Member.FREEDOMS + local % Member.FREEDOMS];
    }

    private Answer loose(List<double[]> loads) {
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
        int most = 0;
        Vector way = Vector.ZERO;
        if (solver.setA(stiffness(LENT))) {
            for (double[] load : loads) {
                double[] moved = moved(solver, load);
                for (int node = 0; node < frame.nodes().size(); node++) {
                    Vector shift = shift(moved, node);
                    if (shift.length() > way.length()) {
                        way = shift;
                        most = node;
                    }
                }
            }
        }
        return new Answer.Loose(most, way);
    }

    /** How far a node shifts. */
    static Vector shift(double[] moved, int node) {
        int at = node * Member.FREEDOMS;
        return new Vector(moved[at], moved[at + 1], moved[at + 2]);
    }

    /** The movements of the nodes of one member. */
    static double[] of(double[] moved, Member member) {
        int[] nodes = member.nodes();
        double[] own = new double[nodes.length * Member.FREEDOMS];
        for (int i = 0; i < own.length; i++) {
            own[i] = moved[nodes[i / Member.FREEDOMS] * Member.FREEDOMS + i % Member.FREEDOMS];
        }
        return own;
    }

    /** The whole stiffness, held movements left out, in the order of their numbers: for whoever solves it another way. */
    static double[][] dense(Frame frame) {
        Solver solver = new Solver(frame);
        DMatrixSparseCSC sparse = solver.stiffness(0);
        double[][] dense = new double[solver.size][solver.size];
        for (int column = 0; column < solver.size; column++) {
            for (int i = sparse.col_idx[column]; i < sparse.col_idx[column + 1]; i++) {
                dense[sparse.nz_rows[i]][column] = sparse.nz_values[i];
            }
        }
        return dense;
    }

    /** Loads or movements in the order of {@link #dense}. */
    static double[] inOrder(Frame frame, double[] each) {
        Solver solver = new Solver(frame);
        List<Double> kept = new ArrayList<>(Collections.nCopies(solver.size, 0.0));
        for (int i = 0; i < each.length; i++) {
            if (solver.rows[i] >= 0) {
                kept.set(solver.rows[i], each[i]);
            }
        }
        return kept.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
