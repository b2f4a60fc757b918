package scantling.route.schedule;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Constraint solvers that look side by side, each in a way of its own; the first that has its proof stops the others. One
 * alone is the same every time.
 */
final class Attempts {
    private static final double MOST_UNITS = 1e6;
    private static final int PROBING = 3;

    private final Network network;
    private final Timetable first;
    private final Effort effort;
    private final List<CpSolver> solvers = new ArrayList<>();
    private volatile boolean done;

    private Attempts(Network network, Timetable first, Effort effort) {
        this.network = network;
        this.first = first;
        this.effort = effort;
        for (int number = 0; number < effort.threads(); number++) {
            solvers.add(solver(number));
        }
    }

    /** What one solver came to. */
    record Attempt(ConstraintModel model, CpSolver solver, CpSolverStatus status) {
        boolean isBest() {
            return status == CpSolverStatus.OPTIMAL;
        }

        boolean isFound() {
            return isBest() || status == CpSolverStatus.FEASIBLE;
        }

        int[] starts() {
            return model.starts(solver);
        }

        /** What it has proven that no timetable can better. @param best the best that is known */
        Score bound(Score best) {
            return model.split((long) Math.ceil(solver.bestObjectiveBound() - 1e-6), best);
        }
    }

    /** One attempt for each thread of the effort. */
    static List<Attempt> of(Network network, Timetable first, Effort effort) {
        Attempts attempts = new Attempts(network, first, effort);
        return effort.threads() == 1 ? List.of(attempts.run(0)) : attempts.sideBySide();
    }

    private List<Attempt> sideBySide() {
        ExecutorService threads = Executors.newFixedThreadPool(solvers.size());
        try {
            List<Future<Attempt>> running = new ArrayList<>();
            for (int number = 0; number < solvers.size(); number++) {
                int mine = number;
                running.add(threads.submit(() -> run(mine)));
            }
            List<Attempt> all = new ArrayList<>();
            for (Future<Attempt> one : running) {
                all.add(one.get());
            }
            return all;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            solvers.forEach(CpSolver::stopSearch);
            throw new IllegalStateException("The search was stopped.", stopped);
        } catch (ExecutionException failed) {
            throw new IllegalStateException("A search failed.", failed.getCause());
        } finally {
            threads.shutdown();
        }
    }

    private Attempt run(int number) {
        ConstraintModel model = new ConstraintModel(network, first);
        CpSolver solver = solvers.get(number);
        CpSolverStatus status = done ? CpSolverStatus.UNKNOWN : solver.solve(model.model());
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE) {
            done = true;
            solvers.stream().filter(other -> other != solver).forEach(CpSolver::stopSearch);
        }
        return new Attempt(model, solver, status);
    }

    /**
     * Timetables are all order and no slope: linear relaxations, symmetry and hard precedences cost more than they prune
     * here, and longer probing before the search pays (docs/benchmarks.md). Every second solver does without pairs that
     * cannot overlap, which is quicker where capacities are wide.
     */
    private CpSolver solver(int number) {
        CpSolver solver = new CpSolver();
        var parameters = solver.getParameters();
        parameters.setRandomSeed((int) effort.seed() + number / 2);
        parameters.setNumWorkers(1);
        parameters.setMaxTimeInSeconds(effort.seconds());
        parameters.setMaxDeterministicTime(Math.min(MOST_UNITS, effort.solver()));
        parameters.setLinearizationLevel(0);
        parameters.setSymmetryLevel(0);
        parameters.setCpModelProbingLevel(PROBING);
        parameters.setUseDisjunctiveConstraintInCumulative(number % 2 == 0);
        return solver;
    }
}
