package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Plans for many parts: one sheet after the other gets the pattern worth most of the parts still to be had, and what lies on a
 * sheet with waste is worth more the next time (sequential value correction: Mukhacheva and others 2000; Belov and Scheithauer
 * 2007). The last parts go where they fit.
 */
final class SheetBySheet {
    /** Fewer parts leave too little choice for a sheet. */
    static final int LEAST_PARTS = 150;
    /** What one sheet takes, in steps of the search. */
    static final long STEPS_A_SHEET = 400;
    /** Larger parts are worth a little more than their share: tried from 1.01 to 1.08. */
    private static final double POWER = 1.03;

    private static final int TRIES = 3;
    private static final double CHEAPER = 0.9;
    private static final int LAST_PARTS = 30;
    /** Of each kind, no more are tried in the leftovers of one sheet. */
    private static final int MOST_OF_A_KIND = 3;

    private final Problem problem;
    private final PartKinds kinds;
    private final int[] kindOf;
    private final List<Integer> bySize;
    private final double[] share;
    private final double[] worth;
    private final List<StripBuilder> builders = new ArrayList<>();
    private final Recreate recreate;
    private final BooleanSupplier stop;

    private final BitSet gone = new BitSet();

    private SheetBySheet(Problem problem, BooleanSupplier stop) {
        this.problem = problem;
        this.stop = stop;
        int[] items =
                IntStream.range(0, problem.items).filter(problem::fitsSomewhere).toArray();
        this.kinds = new PartKinds(problem, items);
        this.kindOf = new int[problem.items];
        for (int k = 0; k < kinds.count(); k++) {
            for (int item : kinds.items(k)) {
                kindOf[item] = k;
            }
        }
        this.bySize = IntStream.of(items)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -problem.area[i]))
                .toList();
        double largest = Arrays.stream(problem.area).max().orElse(1);
        this.share = IntStream.of(kinds.samples())
                .mapToDouble(i -> Math.pow(problem.area[i] / largest, POWER))
                .toArray();
        this.worth = share.clone();
        this.recreate = new Recreate(problem, new SplittableRandom(1), 0);
        boolean trims = problem.stages > 3;
        for (int axis : new int[] {Node.X, Node.Y}) {
            if (problem.firstCut.allows(axis == Node.X ? CutDirection.ACROSS : CutDirection.ALONG)) {
                builders.add(new StripBuilder(problem, kinds, axis, trims));
            }
        }
    }

    /** Only for many parts from stock that is bought, as much as is wanted, by a saw of three stages or more. */
    static Optional<SheetBySheet> of(Problem problem, BooleanSupplier stop) {
        boolean usual = IntStream.range(0, problem.stockCost.length)
                .allMatch(t ->
                        problem.stockCost[t] > 0 && problem.stockCount[t] == Integer.MAX_VALUE && !problem.isFlawed(t));
        return usual && !problem.sticks && problem.stages >= 3 && problem.items >= LEAST_PARTS
                ? Optional.of(new SheetBySheet(problem, stop))
                : Optional.empty();
    }

    /** About how many steps of the search a plan takes. */
    long steps() {
        double area = bySize.stream().mapToDouble(i -> problem.area[i]).sum();
        double sheet = IntStream.range(0, problem.stockCost.length)
                .mapToDouble(problem::stockArea)
                .max()
                .orElse(1);
        return (long) Math.ceil(area / sheet) * STEPS_A_SHEET;
    }

    /** A plan; the next one profits from what was learnt. Empty when it was stopped. */
    Optional<Layout> next(long step) {
        gone.clear();
        Layout layout = new Layout(problem, List.of());
        while (bySize.size() - gone.cardinality() > LAST_PARTS) {
            if (stop.getAsBoolean()) {
                return Optional.empty();
            }
            Bin bin = sheet(step);
            layout.take(bin);
            bin.parts.forEach(node -> gone.set(node.kind));
            correct(bin);
        }
        List<Integer> last = left(gone, Integer.MAX_VALUE);
        layout.out.addAll(last);
        recreate.fill(layout, last, Long.MAX_VALUE, step);
        return Optional.of(layout);
    }

    /** What is still to be had, no more of a kind than so much, largest first. */
    private List<Integer> left(BitSet without, int mostOfAKind) {
        int[] many = new int[kinds.count()];
        List<Integer> left = new ArrayList<>();
        for (int item : bySize) {
            if (!without.get(item) && many[kindOf[item]]++ < mostOfAKind) {
                left.add(item);
            }
        }
        return left;
    }

    private Bin sheet(long step) {
        double[] trial = worth.clone();
        Bin best = new Bin(0, problem, step);
        double most = -1;
        for (int i = 0; i < TRIES; i++) {
            boolean whole = true;
            for (StripBuilder builder : builders) {
                builder.solve(trial, gone);
                for (int type = 0; type < problem.stockCost.length; type++) {
                    Bin bin = filled(builder.build(type, gone, step), step);
                    double value = value(bin) / problem.stockCost[type];
                    if (value > most) {
                        most = value;
                        best = bin;
                        whole = builder.missed().isEmpty();
                    }
                    builder.missed().forEach(kind -> trial[kind] *= CHEAPER);
                }
            }
            if (whole) {
                break;
            }
        }
        return best;
    }

    /** With what still fits into its leftovers. */
    private Bin filled(Bin bin, long step) {
        Layout alone = new Layout(problem, List.of());
        alone.take(bin);
        BitSet without = (BitSet) gone.clone();
        bin.parts.forEach(node -> without.set(node.kind));
        recreate.fill(alone, left(without, MOST_OF_A_KIND), alone.cost, step);
        return bin;
    }

    private double value(Bin bin) {
        return bin.parts.stream().mapToDouble(node -> worth[kindOf[node.kind]]).sum();
    }

    private void correct(Bin bin) {
        double used =
                bin.parts.stream().mapToDouble(node -> problem.area[node.kind]).sum();
        double factor = bin.area() / used;
        bin.parts.stream()
                .mapToInt(node -> kindOf[node.kind])
                .distinct()
                .forEach(k -> worth[k] = (worth[k] + share[k] * factor) / 2);
    }
}
