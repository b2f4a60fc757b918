package scantling.cutting;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;

/**
 * Whether patterns of a list cover all parts within a price, each pattern a whole number of times: a set-covering program
 * that asks for no more than a price, which is sooner answered than what the least price is. Solved by branch and cut (HiGHS).
 */
final class PatternCover {
    /** What came of it: patterns, each as often as it is used; none when there are none, or when it was given up. */
    record Answer(List<Pattern> chosen, boolean isImpossible) {}

    /**
     * When it is given up.
     *
     * @param seconds by the clock
     * @param nodes of the tree of branches
     * @param guessing the share of the work that goes into guessing plans
     */
    record Patience(double seconds, int nodes, double guessing) {}

    /** Tried on the published sets: with less guessing, or a tenth of the nodes, half as many plans are found. */
    static final Patience USUAL = new Patience(20, 300, 0.3);

    private static final Answer GIVEN_UP = new Answer(List.of(), false);

    private PatternCover() {}

    /**
     * Looks for one.
     *
     * @param stop asked many times a second; when it says true it is given up at once
     */
    static Answer within(List<Pattern> patterns, int[] wanted, double limit, Patience patience, BooleanSupplier stop) {
        return within(patterns, wanted, limit, new Leftover(new double[patterns.size()], 0), patience, stop);
    }

    /**
     * What the stock of a plan leaves over.
     *
     * @param of each pattern
     * @param needed in all: parts that are in none of the patterns have to go somewhere
     */
    record Leftover(double[] of, double needed) {}

    /** The same where the patterns have to leave something over for other parts. */
    static Answer within(
            List<Pattern> patterns,
            int[] wanted,
            double limit,
            Leftover leftover,
            Patience patience,
            BooleanSupplier stop) {
        return Aside.call(() -> solved(patterns, wanted, limit, leftover, patience), stop)
                .orElse(GIVEN_UP);
    }

    /** Begins to look for one, beside whatever goes on here. */
    static Aside<Answer> begin(List<Pattern> patterns, int[] wanted, double limit, Patience patience) {
        Leftover none = new Leftover(new double[patterns.size()], 0);
        return Aside.begin(() -> solved(patterns, wanted, limit, none, patience));
    }

    private static Answer solved(
            List<Pattern> patterns, int[] wanted, double limit, Leftover leftover, Patience patience) {
        if (patterns.isEmpty()) {
            return new Answer(List.of(), true);
        }
        MPSolver solver = Natives.LOADED ? MPSolver.createSolver("HIGHS") : null;
        if (solver == null) {
            return GIVEN_UP;
        }
        try {
            MPVariable[] use = model(solver, patterns, wanted, limit);
            leave(solver, use, leftover);
            solver.setSolverSpecificParametersAsString(String.format(
                    Locale.ROOT,
                    "output_flag=false,parallel=off,mip_heuristic_effort=%s,mip_max_nodes=%d",
                    patience.guessing(),
                    patience.nodes()));
            solver.setTimeLimit((long) (1000 * patience.seconds()));
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

    private static void leave(MPSolver solver, MPVariable[] use, Leftover leftover) {
        if (leftover.needed() > 0) {
            MPConstraint left = solver.makeConstraint(leftover.needed(), MPSolver.infinity(), "left");
            for (int p = 0; p < use.length; p++) {
                left.setCoefficient(use[p], leftover.of()[p]);
            }
        }
    }

    private static List<Pattern> chosen(List<Pattern> patterns, MPVariable[] use) {
        List<Pattern> chosen = new ArrayList<>();
        for (int p = 0; p < use.length; p++) {
            chosen.addAll(Collections.nCopies((int) Math.round(use[p].solutionValue()), patterns.get(p)));
        }
        return chosen;
    }
}
