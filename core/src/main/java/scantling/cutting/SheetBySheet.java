package scantling.cutting;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
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

    private final Problem problem;
    private final SheetFiller filler;
    private final double[] share;
    private final double[] worth;
    private final BooleanSupplier stop;

    private final BitSet gone = new BitSet();

    private SheetBySheet(Problem problem, BooleanSupplier stop) {
        this.problem = problem;
        this.stop = stop;
        this.filler = new SheetFiller(problem);
        double largest = Arrays.stream(problem.area).max().orElse(1);
        this.share = IntStream.of(filler.kinds().samples())
                .mapToDouble(i -> Math.pow(problem.area[i] / largest, POWER))
                .toArray();
        this.worth = share.clone();
    }

    /** Only for many parts from stock that is bought, as much as is wanted, by a saw of three stages or more. */
    static Optional<SheetBySheet> of(Problem problem, BooleanSupplier stop) {
        return SheetFiller.isFor(problem) && problem.items >= LEAST_PARTS
                ? Optional.of(new SheetBySheet(problem, stop))
                : Optional.empty();
    }

    /** About how many steps of the search a plan takes. */
    long steps() {
        double area = filler.bySize().stream().mapToDouble(i -> problem.area[i]).sum();
        return (long) Math.ceil(area / problem.largestStock()) * STEPS_A_SHEET;
    }

    /** A plan; the next one profits from what was learnt. Empty when it was stopped. */
    Optional<Layout> next(long step) {
        gone.clear();
        Layout layout = new Layout(problem, List.of());
        while (filler.bySize().size() - gone.cardinality() > LAST_PARTS) {
            if (stop.getAsBoolean()) {
                return Optional.empty();
            }
            Bin bin = sheet(step);
            layout.take(bin);
            bin.parts.forEach(node -> gone.set(node.kind));
            correct(bin);
        }
        filler.finish(layout, gone, step);
        return Optional.of(layout);
    }

    private Bin sheet(long step) {
        double[] trial = worth.clone();
        Bin best = new Bin(0, problem, step);
        double most = -1;
        for (int i = 0; i < TRIES; i++) {
            boolean whole = true;
            for (StripBuilder builder : filler.builders()) {
                builder.solve(trial, gone);
                for (int type = 0; type < problem.stockCost.length; type++) {
                    Bin bin = filler.fill(builder, type, gone, step);
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

    private double value(Bin bin) {
        return bin.parts.stream()
                .mapToDouble(node -> worth[filler.kindOf(node.kind)])
                .sum();
    }

    private void correct(Bin bin) {
        double used =
                bin.parts.stream().mapToDouble(node -> problem.area[node.kind]).sum();
        double factor = bin.area() / used;
        bin.parts.stream()
                .mapToInt(node -> filler.kindOf(node.kind))
                .distinct()
                .forEach(k -> worth[k] = (worth[k] + share[k] * factor) / 2);
    }
}
