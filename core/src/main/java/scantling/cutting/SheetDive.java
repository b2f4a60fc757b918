package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Plans of sheets for parts of which there are many alike: the cheapest mixture of patterns, fractions allowed (column
 * generation: Gilmore and Gomory 1965), made whole pattern by pattern. Those used at least once are taken; where there are none,
 * the sheet that is worth most for its cost at the mixture's prices, of parts still wanted; then the program is solved again
 * for what is left.
 */
final class SheetDive {
    /** So many dives are made. */
    static final int TIMES = 6;
    /** What a dive counts as, in steps of the search. */
    static final long STEPS = 2_000;
    /** So long the search goes on from what a dive has found. */
    static final long STEPS_AFTER = 2_000;

    private static final long LEAST_STEPS = 8_000;
    /** Dives take 26,000 steps themselves; of fewer none would be left to make the plan easier to cut. */
    private static final long LEAST_STEPS_FOR_EASE = 80_000;

    /** So many parts of a kind there must be, one with the other. */
    private static final double LEAST_ALIKE = 1.5;
    /** The mixture of more kinds takes too long, and so do larger tables. */
    private static final int MOST_KINDS = 80;

    private static final long MOST_WORK = 20_000_000;
    /** The mixture need not be nearer to the cheapest than this share. */
    private static final double NEAR = 0.002;
    /** How much chance may add to the worth of a sheet, so that dives differ. */
    private static final double CHANCE = 0.01;

    private static final double TINY = 1e-6;

    private final FilledSheets sheets;
    private final long work;
    private final SheetColumns columns;
    private final PatternProgram program;
    private final SplittableRandom random;
    private final int[] wanted;

    private SheetDive(Problem problem, long seed, BooleanSupplier stop) {
        SheetFiller filler = new SheetFiller(problem);
        PartKinds kinds = filler.kinds();
        this.work = filler.builders().stream().mapToLong(StripBuilder::work).sum();
        this.wanted = kinds.wanted();
        this.sheets = new FilledSheets(
                problem,
                IntStream.range(0, kinds.count()).mapToObj(kinds::items).toList());
        this.columns = new SheetColumns(problem, filler, sheets);
        this.program = new PatternProgram(columns, stop);
        this.random = new SplittableRandom(seed);
    }

    /** Only for stock that is bought, as much as is wanted, by a saw of three stages or more, and parts many of which are alike. */
    static Optional<SheetDive> of(Problem problem, long seed, BooleanSupplier stop) {
        if (!SheetFiller.isFor(problem)) {
            return Optional.empty();
        }
        SheetDive dive = new SheetDive(problem, seed, stop);
        int parts = Arrays.stream(dive.wanted).sum();
        boolean usual = parts > 0 && dive.wanted.length <= MOST_KINDS && dive.work <= MOST_WORK;
        return usual && parts >= LEAST_ALIKE * dive.wanted.length ? Optional.of(dive) : Optional.empty();
    }

    /** Whether there are steps enough for dives. @param easy whether some of them are to make the plan easier to cut */
    static boolean pays(long steps, boolean easy) {
        return steps >= (easy ? LEAST_STEPS_FOR_EASE : LEAST_STEPS);
    }

    /** Takes in the sheets of a plan, to begin with. */
    void offer(Layout plan) {
        plan.bins.forEach(bin -> program.offer(sheets.add(bin)));
    }

    /** A plan; empty when it was stopped. */
    Optional<Layout> next() {
        int[] left = wanted.clone();
        List<Pattern> chosen = new ArrayList<>();
        while (Arrays.stream(left).anyMatch(d -> d > 0)) {
            if (!program.solve(left, NEAR)) {
                return Optional.empty();
            }
            int before = chosen.size();
            program.whole().forEach(pattern -> take(pattern, left, chosen));
            if (chosen.size() == before) {
                take(fullest(left), left, chosen);
            }
        }
        return Optional.of(sheets.layout(chosen));
    }

    /** Takes a pattern if anything on it is still wanted. */
    private static void take(Pattern pattern, int[] left, List<Pattern> chosen) {
        boolean some = false;
        for (int i : pattern.held()) {
            int taken = Math.min(pattern.counts()[i], left[i]);
            left[i] -= taken;
            some |= taken > 0;
        }
        if (some) {
            chosen.add(pattern);
        }
    }

    private Pattern fullest(int[] left) {
        double[] price = program.price();
        columns.values(price, left);
        columns.others();
        Pattern best = new Pattern(0, 0, new int[0]);
        double most = -1;
        for (Pattern pattern : sheets.patterns()) {
            double worth = worth(pattern, left, price) / pattern.cost() * (1 + CHANCE * random.nextDouble());
            if (worth > most) {
                most = worth;
                best = pattern;
            }
        }
        return best;
    }

    private static double worth(Pattern pattern, int[] left, double[] price) {
        double worth = 0;
        for (int i : pattern.held()) {
            worth += Math.min(pattern.counts()[i], left[i]) * Math.max(TINY, price[i]);
        }
        return worth;
    }

    /** All sheets filled on the way to the mixture, and in dives. */
    FilledSheets sheets() {
        program.solve(wanted, NEAR);
        return sheets;
    }
}
