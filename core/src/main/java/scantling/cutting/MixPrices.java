package scantling.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * Prices of parts that say of one mixture of stock that it does not hold them all: the cheapest mixture of patterns is worked
 * out for other costs of the stock, those of which the mixture has too few raised and the others lowered, until its worth is
 * more than the mixture's. (The dual of asking whether patterns for just that stock can hold the parts; the costs are steered
 * as by a subgradient: Held, Wolfe and Crowder 1974.)
 */
final class MixPrices {
    private static final int ROUNDS = 14;
    private static final double FIRST_STEP = 0.15;
    private static final double SLOWING = 0.5;

    private final SheetPatterns patterns;
    private final double[] cost;
    private List<Pattern> met;
    private double[] use;
    private boolean whole;

    /** @param met patterns to begin with */
    MixPrices(SheetPatterns patterns, List<Pattern> met) {
        this.met = met;
        this.patterns = patterns;
        this.cost = patterns.cost();
        this.use = new double[cost.length];
    }

    /** Works out the cheapest mixture of patterns at the stock's own costs. */
    void solve() {
        solve(cost);
    }

    /** Looks for prices that a mixture does not meet; whether some were found. */
    boolean against(int[] mix) {
        double[] costs = cost.clone();
        for (int round = 0; round < ROUNDS && !patterns.isSpent(); round++) {
            solve(costs);
            if (patterns.demands().stream().anyMatch(demand -> !StockMix.meets(mix, demand))) {
                return true;
            }
            if (!whole) {
                return false;
            }
            steer(costs, mix, FIRST_STEP / (1 + SLOWING * round));
        }
        return false;
    }

    private void steer(double[] costs, int[] mix, double step) {
        for (int t = 0; t < costs.length; t++) {
            costs[t] *= Math.exp(step * Math.max(-1, Math.min(1, use[t] - mix[t])));
        }
    }

    private void solve(double[] costs) {
        patterns.price(costs);
        PatternProgram program = new PatternProgram(patterns, patterns::isSpent);
        met.forEach(pattern -> program.offer(new Pattern(pattern.type(), costs[pattern.type()], pattern.counts())));
        whole = program.solve(patterns.wanted());
        met = program.met(patterns.wanted(), program.price(), Double.MAX_VALUE);
        use = new double[costs.length];
        for (int r = 0; r < program.basis().length; r++) {
            Pattern pattern = program.basis()[r];
            use[pattern.type()] +=
                    Arrays.stream(pattern.held()).allMatch(k -> pattern.counts()[k] > 0) ? program.amounts()[r] : 0;
        }
    }
}
