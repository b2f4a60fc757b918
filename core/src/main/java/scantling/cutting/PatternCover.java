package scantling.cutting;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Whether patterns of a list cover all parts within a price, each pattern a whole number of times: a set-covering program
 * that asks for no more than a price, which is sooner answered than what the least price is. Solved by branch and cut (HiGHS).
 */
final class PatternCover {
    /** What came of it: patterns, each as often as it is used; none when there are none, or when it was given up. */
    record Answer(List<Pattern> chosen, boolean isImpossible) {}

    private static final Answer GIVEN_UP = new Answer(List.of(), false);

    private PatternCover() {}

    /**
     * Looks for one.
     *
     * @param seconds after which it is given up
     * @param nodes of the tree of branches, after which it is given up
     */
    static Answer within(List<Pattern> patterns, int[] wanted, double limit, double seconds, int nodes) {
        if (patterns.isEmpty()) {
            return new Answer(List.of(), true);
        }
        MPSolver solver = Natives.LOADED ? MPSolver.createSolver("HIGHS") : null;
        if (solver == null) {
            return GIVEN_UP;
        }
        try {
            MPVariable[] use = model(solver, patterns, wanted, limit);
            solver.setSolverSpecificParametersAsString(
                    "output_flag=false,parallel=off,mip_max_nodes=%d".formatted(nodes));
            solver.setTimeLimit((long) (1000 * seconds));
            return switch (solver.solve()) {
                case OPTIMAL, FEASIBLE -> new Answer(chosen(patterns, use), false);
                case INFEASIBLE -> new Answer(List.of(), true);
                default -> GIVEN_UP;
            };
        } catch (IllegalArgumentException noNameForIt) {
            // the library has no name for having come to a limit without an answer
            return GIVEN_UP;
        } finally {
            solver.delete();
        }
    }

    private static MPVariable[] model(MPSolver solver, List<Pattern> patterns, int[] wanted, double limit) {
        MPVariable[] use = new MPVariable[patterns.size()];
        MPConstraint cost = solver.makeConstraint(0, limit, "cost");
        MPConstraint[] rows = new MPConstraint[wanted.length];
        for (int i = 0; i < wanted.length; i++) {
            rows[i] = solver.makeConstraint(wanted[i], MPSolver.infinity(), "");
        }
        for (int p = 0; p < use.length; p++) {
            Pattern pattern = patterns.get(p);
            int often = 0;
            for (int i : pattern.held()) {
                often = Math.max(often, (wanted[i] + pattern.counts()[i] - 1) / pattern.counts()[i]);
            }
            use[p] = solver.makeIntVar(0, often, "");
            cost.setCoefficient(use[p], pattern.cost());
            for (int i : pattern.held()) {
                rows[i].setCoefficient(use[p], pattern.counts()[i]);
            }
        }
        return use;
    }

    private static List<Pattern> chosen(List<Pattern> patterns, MPVariable[] use) {
        List<Pattern> chosen = new ArrayList<>();
        for (int p = 0; p < use.length; p++) {
            chosen.addAll(Collections.nCopies((int) Math.round(use[p].solutionValue()), patterns.get(p)));
        }
        return chosen;
    }
}
