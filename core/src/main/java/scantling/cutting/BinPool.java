package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The pieces of stock that a search has filled, each set of parts once, and the cheaper plan that may be put together from
 * them: a set-covering program over what a heuristic has met (Monaci and Toth 2006).
 */
final class BinPool {
    /** So many parts on all of them together: some 15 MB, whether few large parts come from a sheet or many small ones. */
    private static final int MOST_PARTS = 60_000;

    private static final int FEW_OFFERED = 800;
    private static final int MANY_OFFERED = 1_600;
    private static final double TINY = 1e-6;
    private static final double LEAST_FILL = 0.5;

    private final Problem problem;
    private final Map<Long, Bin> bins = new LinkedHashMap<>();
    /** Of each item, the number of its kind: same size, and whether it turns. */
    private final int[] kind;

    private final List<List<Integer>> items = new ArrayList<>();
    private final long[] code;
    private final boolean usable;
    private int parts;
    private int questions;

    BinPool(Problem problem) {
        this.problem = problem;
        this.kind = new int[problem.items];
        Map<Integer, Integer> numbers = new HashMap<>();
        for (int i = 0; i < kind.length; i++) {
            int key = 2 * problem.kind(i) + (problem.turn[i] ? 1 : 0);
            kind[i] = numbers.computeIfAbsent(key, k -> numbers.size());
            if (kind[i] == items.size()) {
                items.add(new ArrayList<>());
            }
            items.get(kind[i]).add(i);
        }
        this.usable = isFor(problem);
        SplittableRandom random = new SplittableRandom(1);
        this.code = random.longs(items.size() + (long) problem.stockCost.length).toArray();
    }

    /** Only of stock that is bought, as much as is wanted: of such, pieces may be put together as they come. */
    private static boolean isFor(Problem problem) {
        return !problem.sticks
                && Arrays.stream(problem.stockCost).allMatch(c -> c > 0)
                && Arrays.stream(problem.stockCount).allMatch(c -> c == Integer.MAX_VALUE)
                && IntStream.range(0, problem.items).allMatch(problem::fitsSomewhere);
    }

    /** Remembers what a step has filled. */
    void note(Layout layout, long step) {
        for (Bin bin : layout.bins) {
            if (usable && bin.owner == step && parts < MOST_PARTS && fill(bin) >= LEAST_FILL) {
                parts += bins.putIfAbsent(code(bin), bin) == null ? bin.parts.size() : 0;
            }
        }
    }

    private double fill(Bin bin) {
        double fill = 0;
        for (Node node : bin.parts) {
            fill += problem.area[node.kind];
        }
        return fill / bin.area();
    }

    private long code(Bin bin) {
        long sum = code[items.size() + bin.type];
        for (Node node : bin.parts) {
            sum += code[kind[node.kind]];
        }
        return sum;
    }

    /** Remembers pieces filled elsewhere. */
    void add(Collection<Bin> filled) {
        filled.forEach(bin -> bins.putIfAbsent(code(bin), bin));
    }

    /** All sets of parts met, each as a pattern. */
    List<Pattern> patterns() {
        return List.copyOf(filled().patterns());
    }

    /** A question that is being answered: whether pieces met so far make a plan within a price. */
    record Question(FilledSheets filled, Aside<PatternCover.Answer> cover) {
        /** The plan, waited for; empty when none was found, or it was stopped before. */
        Optional<Layout> plan(BooleanSupplier stop) {
            return cover.answer(stop)
                    .map(PatternCover.Answer::chosen)
                    .filter(chosen -> !chosen.isEmpty())
                    .map(filled::layout);
        }
    }

    /** Asks for a plan of pieces met so far within a price; empty when there can be none. */
    Optional<Question> ask(Layout best, long limit, BooleanSupplier stop) {
        if (!usable) {
            return Optional.empty();
        }
        best.bins.forEach(bin -> bins.put(code(bin), bin));
        int[] wanted = items.stream().mapToInt(List::size).toArray();
        FilledSheets filled = filled();
        List<Pattern> plan = best.bins.stream().map(filled::add).toList();
        PatternProgram program = new PatternProgram(new PooledPatterns(problem, items, plan), stop);
        filled.patterns().forEach(program::offer);
        double room = program.solve(wanted) ? limit - worth(program.price(), wanted) : -1;
        if (room < -TINY) {
            return Optional.empty();
        }
        List<Pattern> offered = offered(filled.patterns(), program.price(), room);
        return Optional.of(new Question(filled, PatternCover.begin(offered, wanted, limit, PatternCover.USUAL)));
    }

    private static double worth(double[] price, int[] wanted) {
        double worth = 0;
        for (int k = 0; k < price.length; k++) {
            worth += price[k] * wanted[k];
        }
        return worth;
    }

    /** A pattern. @param above what it costs above its parts */
    private record Priced(Pattern pattern, double above) {}

    /**
     * Those that cost least above their parts, and not more than may be wasted: by turns few, which are soon looked through, and
     * many.
     */
    private List<Pattern> offered(Set<Pattern> patterns, double[] price, double room) {
        int most = questions++ % 2 == 0 ? FEW_OFFERED : MANY_OFFERED;
        return patterns.stream()
                .map(pattern -> new Priced(pattern, pattern.cost() - pattern.worth(price)))
                .filter(priced -> priced.above() <= room + TINY)
                .sorted(Comparator.comparingDouble(Priced::above))
                .limit(most)
                .map(Priced::pattern)
                .toList();
    }

    private FilledSheets filled() {
        FilledSheets filled = new FilledSheets(problem, items);
        bins.values().forEach(filled::add);
        return filled;
    }
}
