package scantling.cutting;

import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.LongStream;

/**
 * Whole sticks out of the fractional program: patterns used at least once are taken, then one more is rounded up, and the
 * program is solved again for what is left, until nothing is. Each dive rounds other patterns first.
 */
final class StickDive {
    /** So many dives are made, at most. */
    static final int TIMES = 60;
    /** What a dive counts as, in steps of the search. */
    static final long STEPS = 200;

    static final long STEPS_A_PROOF = 10_000;
    /** The search goes first for so long. */
    static final long STEPS_BEFORE = 1_500;

    private static final int FIRST = 6;
    /** Of so many parts another dive finds the plan more often than a list of all patterns does: by trial on published sets. */
    private static final int MANY_PARTS = 400;

    private static final int FIRST_OF_MANY = 40;

    /** A longer table than this costs more than it brings. */
    private static final int LONGEST_TABLE = 200_000;

    /** From this share of a stick on several patterns are rounded up at once. */
    private static final double ENOUGH = 0.6;

    private static final int HALF_DIVES = 25;
    /** Of more patterns a dive half way finds a plan sooner. */
    private static final int FEW_PATTERNS = 1_500;

    private final Problem problem;
    private final PatternProgram program;
    private final SplittableRandom random;
    private final TreeMap<Long, List<Integer>> itemsBySize = new TreeMap<>();
    private final int[] demand;
    private final long unit;
    private final StickProof proof;
    private final BooleanSupplier stop;
    /** Of all parts, at which no pattern is worth more than it costs. */
    private double[] price = {};

    private StickDive(Problem problem, long seed, BooleanSupplier stop) {
        this.problem = problem;
        this.random = new SplittableRandom(seed);
        for (int item = 0; item < problem.items; item++) {
            if (problem.fitsSomewhere(item)) {
                itemsBySize
                        .computeIfAbsent(-problem.length[item], k -> new ArrayList<>())
                        .add(item);
            }
        }
        long[] size = itemsBySize.keySet().stream().mapToLong(k -> -k).toArray();
        this.demand = itemsBySize.values().stream().mapToInt(List::size).toArray();
        this.unit = LongStream.of(problem.stockCost)
                .mapToObj(BigInteger::valueOf)
                .reduce(BigInteger.ZERO, BigInteger::gcd)
                .longValueExact();
        this.program = new PatternProgram(new StickPatterns(problem, size), stop);
        this.proof = new StickProof(problem, size, demand, program, stop);
        this.stop = stop;
    }

    /** For stick problems of usual size with paid stock and no limits of count; else empty. */
    static Optional<StickDive> of(Problem problem, long seed, BooleanSupplier stop) {
        boolean usual = problem.sticks
                && problem.stockCost.length > 0
                && Arrays.stream(problem.stockLength).allMatch(l -> l > 0 && l <= LONGEST_TABLE)
                && Arrays.stream(problem.stockCost).allMatch(c -> c > 0)
                && Arrays.stream(problem.stockCount).allMatch(c -> c == Integer.MAX_VALUE);
        if (!usual) {
            return Optional.empty();
        }
        StickDive dive = new StickDive(problem, seed, stop);
        return dive.demand.length == 0 ? Optional.empty() : Optional.of(dive);
    }

    /** How many dives are made before a proof is tried. */
    static int timesFirst(Problem problem) {
        return problem.items < MANY_PARTS ? FIRST : FIRST_OF_MANY;
    }

    /** No plan costs less; 0 when there was no time to tell. */
    long bound() {
        program.solve(demand);
        double bound = program.bound();
        price = program.trusted();
        return unit * (long) Math.ceil((bound - 1e-6 * Math.max(1, bound * 1e-2)) / unit);
    }

    /** The price of a plan is a whole number of these. */
    long unit() {
        return unit;
    }

    /** What came of looking for a plan within a price. */
    record Answer(Optional<Layout> plan, boolean isImpossible) {}

    /** A plan within a price, or the proof that there is none; neither when it could not be told. */
    Answer within(long limit) {
        Optional<List<Pattern>> all = proof.all(limit, price);
        if (all.isPresent() && all.get().size() <= FEW_PATTERNS) {
            return asked(all.get(), limit);
        }
        if (all.isEmpty() && proof.isImpossibleForDear(limit, price)) {
            return new Answer(Optional.empty(), true);
        }
        for (int k = 0; k < HALF_DIVES; k++) {
            Optional<Layout> half = halfDive(limit);
            if (half.isPresent()) {
                return new Answer(half, false);
            }
        }
        return all.isPresent()
                ? asked(all.get(), limit)
                : new Answer(plan(proof.fromMet(limit, price).plan()), false);
    }

    private Answer asked(List<Pattern> all, long limit) {
        StickProof.Answer answer = proof.from(all, limit);
        return new Answer(plan(answer.plan()), answer.isImpossible());
    }

    /** A dive half way, the rest asked for whole; empty when nothing within the price came of it. */
    private Optional<Layout> halfDive(long limit) {
        int[] left = demand.clone();
        List<Pattern> chosen = new ArrayList<>();
        while (!stop.getAsBoolean() && program.solve(left)) {
            double spent = chosen.stream().mapToDouble(Pattern::cost).sum();
            Optional<StickProof.Rest> rest = proof.rest(left, (long) (limit - spent));
            if (rest.isPresent()) {
                rest.get().plan().forEach(pattern -> take(pattern, left, chosen));
                return plan(chosen);
            }
            further(left, chosen);
        }
        return Optional.empty();
    }

    /** One dive; empty when it was stopped. */
    Optional<Layout> dive() {
        int[] left = demand.clone();
        List<Pattern> chosen = new ArrayList<>();
        while (Arrays.stream(left).anyMatch(d -> d > 0)) {
            if (!program.solve(left)) {
                return Optional.empty();
            }
            further(left, chosen);
        }
        return Optional.of(layout(chosen));
    }

    private void further(int[] left, List<Pattern> chosen) {
        int before = chosen.size();
        program.whole().forEach(pattern -> take(pattern, left, chosen));
        if (chosen.size() == before) {
            roundUp(left, chosen);
        }
    }

    /** The plan of some patterns, where they hold all parts; they may hold more. */
    private Optional<Layout> plan(List<Pattern> some) {
        int[] left = demand.clone();
        List<Pattern> chosen = new ArrayList<>();
        some.forEach(pattern -> take(pattern, left, chosen));
        return Arrays.stream(left).allMatch(d -> d == 0) ? Optional.of(layout(chosen)) : Optional.empty();
    }

    /** The patterns used most, one at least; more than one when they are used a good deal. */
    private void roundUp(int[] left, List<Pattern> chosen) {
        Pattern[] basis = program.basis();
        double[] amount = program.amounts();
        double enough = ENOUGH + (1 - ENOUGH) * random.nextDouble();
        List<Integer> order = new ArrayList<>();
        double[] value = new double[basis.length];
        for (int r = 0; r < basis.length; r++) {
            value[r] = amount[r] + 0.25 * random.nextDouble();
            if (basis[r].cost() > 0 && amount[r] > 1e-9) {
                order.add(r);
            }
        }
        order.sort(Comparator.comparingDouble(r -> -value[r]));
        int before = chosen.size();
        for (int r : order) {
            boolean first = chosen.size() == before;
            if ((first || value[r] >= enough) && basis[r].within(left)) {
                take(basis[r], left, chosen);
            }
        }
        if (chosen.size() == before) {
            take(single(left), left, chosen);
        }
    }

    private Pattern single(int[] left) {
        int[] counts = new int[left.length];
        int at = 0;
        while (left[at] == 0) {
            at++;
        }
        counts[at] = 1;
        int item = new ArrayList<>(itemsBySize.values()).get(at).get(0);
        int type = 0;
        while (!problem.fits(item, type)) {
            type++;
        }
        return new Pattern(type, problem.stockCost[type], counts);
    }

    private static void take(Pattern pattern, int[] left, List<Pattern> chosen) {
        boolean some = false;
        int[] counts = pattern.counts().clone();
        for (int i = 0; i < left.length; i++) {
            counts[i] = Math.min(counts[i], left[i]);
            left[i] -= counts[i];
            some |= counts[i] > 0;
        }
        if (some) {
            chosen.add(new Pattern(pattern.type(), pattern.cost(), counts));
        }
    }

    private Layout layout(List<Pattern> chosen) {
        List<Deque<Integer>> items = new ArrayList<>();
        itemsBySize.values().forEach(list -> items.add(new ArrayDeque<>(list)));
        Layout layout = new Layout(problem, List.of());
        for (Pattern pattern : chosen) {
            Bin bin = layout.open(pattern.type(), -1);
            for (int i = 0; i < pattern.counts().length; i++) {
                for (int k = 0; k < pattern.counts()[i]; k++) {
                    int item = items.get(i).remove();
                    bin.place(bin.lefts.get(0), Node.X, item, false, problem.length[item], 1);
                }
            }
        }
        return layout;
    }
}
