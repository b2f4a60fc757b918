package scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * What sets of parts that come out of a sheet say of a plan: what it costs at least, sheets worth having, and whether there is one
 * within a price. For that, all sets are listed which such a plan can have (those whose reduced cost is no more than the gap:
 * Baldacci, Christofides and Mingozzi 2008, from memory), and whole numbers of them are asked for.
 */
final class SetPlans {
    /** Sets compared with sets: about a second. */
    private static final long WORK = 20_000_000;

    private static final double TINY = 1e-6;

    private final Problem problem;
    private final SetPatterns patterns;
    private final PartKinds kinds;
    private final BooleanSupplier stop;

    private SetPlans(Problem problem, SetPatterns patterns, BooleanSupplier stop) {
        this.problem = problem;
        this.patterns = patterns;
        this.kinds = new PartKinds(problem, problem.fitting());
        this.stop = stop;
    }

    /** Empty when the job has too many kinds of part, parts that fit on nothing, or stock that is free or has defects. */
    static Optional<SetPlans> of(Problem problem, int[] types, BooleanSupplier stop) {
        int[] items = problem.fitting();
        return items.length < problem.items
                ? Optional.empty()
                : SetPatterns.of(problem, items, types, WORK, stop)
                        .map(patterns -> new SetPlans(problem, patterns, stop));
    }

    /** What the cheapest mixture proves, fractions allowed. @param met patterns to begin with, if they count the same kinds */
    List<Demand> demands(List<Pattern> met) {
        PatternProgram program = new PatternProgram(patterns, patterns::isSpent);
        met.stream()
                .filter(pattern -> pattern.counts().length == patterns.kinds())
                .forEach(program::offer);
        program.solve(patterns.wanted());
        return patterns.demands();
    }

    /** Sheets met on the way; none where the saw may not cut them. */
    List<Bin> sheets() {
        return isFree() ? patterns.sheets() : List.of();
    }

    private boolean isFree() {
        return problem.stages == Integer.MAX_VALUE && problem.firstCut == FirstCut.ANY;
    }

    /** An answer. @param plan of the parts that decide; small ones, which fit in anywhere, may be out */
    record Answer(Optional<Layout> plan, boolean isImpossible) {}

    /** Whether there is a plan within a price, to be asked after {@link #demands}; neither is said when it was not found out. */
    Answer within(long limit) {
        if (patterns.proven() > limit + TINY * Math.abs(limit)) {
            return new Answer(Optional.empty(), true);
        }
        List<Pattern> all = patterns.within(limit);
        if (all.isEmpty()) {
            return new Answer(Optional.empty(), false);
        }
        PatternCover.Answer answer =
                PatternCover.within(all, patterns.wantedWithPrice(), limit, leftover(all), PatternCover.USUAL, stop);
        boolean plan = !answer.chosen().isEmpty() && isFree();
        return new Answer(plan ? Optional.of(layout(answer.chosen())) : Optional.empty(), answer.isImpossible());
    }

    private PatternCover.Leftover leftover(List<Pattern> all) {
        double[] area = patterns.areas();
        int[] wanted = patterns.wanted();
        int[] priced = patterns.wantedWithPrice();
        double needed = IntStream.range(0, wanted.length)
                .mapToDouble(k -> (wanted[k] - priced[k]) * area[k])
                .sum();
        double[] left = all.stream()
                .mapToDouble(pattern -> problem.stockArea(patterns.stock(pattern.type())) - pattern.worth(area))
                .toArray();
        return new PatternCover.Leftover(left, needed);
    }

    private Layout layout(List<Pattern> chosen) {
        List<List<Integer>> items =
                IntStream.range(0, kinds.count()).mapToObj(kinds::items).toList();
        FilledSheets filled = new FilledSheets(problem, items);
        Layout layout = filled.layout(
                chosen.stream().map(patterns::sheet).map(filled::add).toList());
        List<Integer> out =
                new ArrayList<>(IntStream.of(problem.fitting()).boxed().toList());
        layout.bins.forEach(bin -> bin.parts.forEach(node -> out.remove((Integer) node.kind)));
        layout.out.addAll(out);
        return layout;
    }
}
