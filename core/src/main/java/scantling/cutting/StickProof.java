package scantling.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Whether there is a plan for sticks within a price: all patterns that such a plan can hold are listed, and a program of whole
 * numbers chooses among them or proves that it cannot be done.
 */
final class StickProof {
    /** More patterns than this are not all looked at. */
    private static final int MOST_PATTERNS = 12_000;
    /** For what is left of a dive: so many are mostly answered in less than a second. */
    private static final int MOST_FOR_A_REST = 300;

    /**
     * By the clock: nothing but this and the person stops the solver. Only what comes after tens of thousands of steps waits for
     * it. Without guessing it took two thirds of the time on the Hard28.
     */
    private static final PatternCover.Patience PATIENCE = new PatternCover.Patience(20, 1_000_000, 0);

    private static final PatternCover.Patience PATIENCE_FOR_A_REST = new PatternCover.Patience(1, 1_000_000, 0);
    /** A part of no price may be left out of the question whether a plan can be. */
    private static final double NO_PRICE = 1e-9;

    /** What came of looking for a plan within a price: patterns that hold all parts, none where none was found. */
    record Answer(List<Pattern> plan, boolean isImpossible) {}

    /** What came of looking for the rest of a plan. */
    record Rest(List<Pattern> plan) {}

    private final Problem problem;
    private final long[] size;
    private final int[] demand;
    private final PatternProgram program;
    private final BooleanSupplier stop;

    StickProof(Problem problem, long[] size, int[] demand, PatternProgram program, BooleanSupplier stop) {
        this.problem = problem;
        this.size = size;
        this.demand = demand;
        this.program = program;
        this.stop = stop;
    }

    /**
     * All patterns that a plan within a price can hold; nothing when there are too many of those.
     *
     * @param price of each kind, at which no pattern is worth more than its stick costs
     */
    Optional<List<Pattern>> all(long limit, double[] price) {
        return PatternPool.of(problem, size, demand, price, limit - worth(price, demand), MOST_PATTERNS);
    }

    /** A plan from some patterns, or the proof that none can be made of them. */
    Answer from(List<Pattern> some, long limit) {
        PatternCover.Answer answer = PatternCover.within(some, demand, limit, PATIENCE, stop);
        return new Answer(answer.chosen(), answer.isImpossible());
    }

    /** The same from the patterns met on the way. */
    Answer fromMet(long limit, double[] price) {
        return from(program.met(demand, price, limit - worth(price, demand)), limit);
    }

    /** Whether there is no plan even for the parts that have a price: if they alone cost too much, all do. */
    boolean isImpossibleForDear(long limit, double[] price) {
        double room = limit - worth(price, demand);
        int[] dear =
                IntStream.range(0, size.length).filter(i -> price[i] > NO_PRICE).toArray();
        if (dear.length == size.length) {
            return false;
        }
        long[] sizes = IntStream.of(dear).mapToLong(i -> size[i]).toArray();
        int[] wanted = IntStream.of(dear).map(i -> demand[i]).toArray();
        double[] prices = IntStream.of(dear).mapToDouble(i -> price[i]).toArray();
        double others = IntStream.range(0, size.length)
                .filter(i -> price[i] <= NO_PRICE)
                .mapToDouble(i -> (double) size[i] * demand[i])
                .sum();
        return PatternPool.of(problem, sizes, wanted, prices, room, MOST_PATTERNS)
                .map(all -> PatternCover.within(all, wanted, limit, leftover(all, sizes, others), PATIENCE, stop))
                .map(PatternCover.Answer::isImpossible)
                .orElse(false);
    }

    private PatternCover.Leftover leftover(List<Pattern> patterns, long[] sizes, double needed) {
        double[] left = new double[patterns.size()];
        for (int p = 0; p < left.length; p++) {
            Pattern pattern = patterns.get(p);
            left[p] = problem.stockLength[pattern.type()];
            for (int i : pattern.held()) {
                left[p] -= (double) sizes[i] * pattern.counts()[i];
            }
        }
        return new PatternCover.Leftover(left, needed);
    }

    /**
     * The rest of a plan, the program just solved for it; a rest without patterns when there is none within the price, nothing
     * when there are still too many patterns to be asked about.
     */
    Optional<Rest> rest(int[] left, long limit) {
        double[] price = program.trusted();
        double room = limit - worth(price, left);
        if (room < -NO_PRICE * limit || Arrays.stream(left).allMatch(d -> d == 0)) {
            return Optional.of(new Rest(List.of()));
        }
        return PatternPool.of(problem, size, left, price, room, MOST_FOR_A_REST)
                .map(all -> new Rest(PatternCover.within(all, left, limit, PATIENCE_FOR_A_REST, stop)
                        .chosen()));
    }

    private static double worth(double[] price, int[] wanted) {
        return IntStream.range(0, wanted.length)
                .mapToDouble(i -> price[i] * wanted[i])
                .sum();
    }
}
