package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Makes a layout easier to cut without making it dearer: parts are taken out and put back where the fence stands already, and
 * what comes out is weighed by {@link Handling}. Worse layouts are accepted late (Burke and Bykov 2017), but never one that
 * costs more or leaves more out.
 */
final class Easing {
    /** Its steps are told apart from those of the search for money by where they begin. */
    private static final long FIRST_STEP = 1L << 40;

    private static final int MEMORY = 300;
    /** After so many steps without a better layout nothing more is to be expected. */
    private static final long PATIENCE = 12_000;

    private static final double[] DISLIKES = {0, 0.003, 0.02, 0.1, 0.5};

    private final Problem problem;
    private final BooleanSupplier stop;
    private final SplittableRandom random;
    private final Ruin ruin;
    private final Recreate recreate;
    private final Handling handling;

    private long step = FIRST_STEP;
    private long lastBetter = FIRST_STEP;
    private long lastCost = Long.MAX_VALUE;

    Easing(Problem problem, Tuning tuning, long seed, BooleanSupplier stop) {
        this.problem = problem;
        this.stop = stop;
        this.random = new SplittableRandom(seed).split();
        this.ruin = new Ruin(random, tuning);
        this.recreate = new Recreate(problem, random, tuning.blink());
        this.handling = new Handling(problem);
    }

    /** How many steps it has taken in all. */
    long steps() {
        return step - FIRST_STEP;
    }

    /** Whether it has tried for long without finding anything better. */
    boolean isIdle() {
        return step - lastBetter > PATIENCE;
    }

    /** The easiest layout found in some steps from a layout, at most as dear. */
    Layout run(Layout from, long steps) {
        wake(from.cost);
        long end = step + steps;
        Layout best = from;
        Layout now = from;
        double bestValue = handling.of(from);
        double value = bestValue;
        double[] memory = new double[MEMORY];
        Arrays.fill(memory, value);
        while (step < end && !isIdle() && !stop.getAsBoolean()) {
            Layout next = changed(now);
            boolean whole = next.out.size() <= from.out.size();
            boolean cheaper = whole && next.cost < now.cost;
            double nextValue = whole ? handling.of(next) : Double.MAX_VALUE;
            int at = (int) (step % MEMORY);
            if (cheaper || nextValue <= value || nextValue <= memory[at]) {
                now = next;
                value = nextValue;
            }
            memory[at] = Math.min(memory[at], value);
            if (cheaper || value < bestValue - 1e-9) {
                best = now;
                bestValue = value;
                lastBetter = step;
            }
        }
        return best;
    }

    /** A cheaper layout deserves the same patience again. */
    private void wake(long cost) {
        if (cost < lastCost) {
            lastCost = cost;
            lastBetter = step;
        }
    }

    private Layout changed(Layout now) {
        step++;
        Layout next = now.copy();
        List<Integer> left = List.copyOf(now.out);
        ruin.apply(next, step);
        next.out.removeAll(left);
        recreate.dislikeSettings(DISLIKES[random.nextInt(DISLIKES.length)]);
        recreate.fill(next, ordered(next.out), now.cost, step);
        next.out.addAll(left);
        return next;
    }

    /** Items of the same size stay together. */
    private List<Integer> ordered(List<Integer> items) {
        int kind = random.nextInt(4);
        double noise = random.nextInt(2) * 0.3;
        double[] key = new double[problem.items];
        for (int item : items) {
            key[problem.kind(item)] = key(item, kind) * (1 + noise * random.nextDouble());
        }
        List<Integer> order = new ArrayList<>(items);
        order.sort(
                Comparator.<Integer>comparingDouble(i -> -key[problem.kind(i)]).thenComparingInt(problem::kind));
        return order;
    }

    private double key(int item, int kind) {
        double l = problem.length[item];
        double w = problem.width[item];
        return switch (kind) {
            case 0 -> l * w;
            case 1 -> l;
            case 2 -> w;
            default -> Math.max(l, w);
        };
    }
}
