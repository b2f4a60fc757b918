package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Patterns for sheets, every size as often as one likes, measured in cells as fine as there is time for: exactly where sums of
 * sizes are few. Every valuing of the parts that it is asked about is kept as a {@link Demand}.
 */
final class SheetPatterns implements PatternSource {
    /** Operations that one table may take: a few hundredths of a second. */
    private static final long MOST_WORK = 40_000_000;
    /** Where there are many kinds, many prices have to be tried; fewer where {@link SheetDive} gives patterns to begin with. */
    private static final long MOST_WORK_OF_SOME = 20_000_000;

    private static final long MOST_WORK_OF_MANY = 8_000_000;
    private static final int SOME_KINDS = 40;
    private static final int MANY_KINDS = 80;
    private static final int MOST_TABLES = 3_000;
    private static final long MOST_OPERATIONS = 1_200_000_000L;
    /** Cells along the longest stock, where its units are more than may be counted one by one. */
    private static final int MOST_UNITS = 20_000;

    private static final int[] FINENESS = {
        MOST_UNITS, 6000, 4000, 3000, 2400, 2000, 1600, 1200, 1000, 800, 600, 500, 400, 320, 250, 200, 120, 60
    };

    private final Problem problem;
    private final int[] types;
    private final PartKinds kinds;
    private final int[] sample;
    private final int[] wanted;
    private final BooleanSupplier stop;
    private final List<Demand> demands = new ArrayList<>();

    private double[] cost;
    private CellSize along = CellSize.UNIT;
    private CellSize across = CellSize.UNIT;
    private final SheetKnapsack knapsack;
    private long tablesLeft;
    private double[] lastPrice = {};

    SheetPatterns(Problem problem, int[] items, int[] types, BooleanSupplier stop) {
        this.problem = problem;
        this.types = types;
        this.stop = stop;
        this.kinds = new PartKinds(problem, items);
        this.sample = kinds.samples();
        this.wanted = kinds.wanted();
        this.cost = IntStream.of(types)
                .mapToDouble(t -> Math.max(1, problem.stockCost[t]))
                .toArray();
        this.knapsack = finest();
        this.tablesLeft = Math.min(MOST_TABLES, MOST_OPERATIONS / Math.max(1, knapsack.work()));
    }

    private SheetKnapsack finest() {
        long most = sample.length > MANY_KINDS
                ? MOST_WORK_OF_MANY
                : sample.length > SOME_KINDS ? MOST_WORK_OF_SOME : MOST_WORK;
        SheetKnapsack made = table(FINENESS[0]);
        for (int i = 1; i < FINENESS.length && made.work() > most; i++) {
            made = table(FINENESS[i]);
        }
        return made;
    }

    private SheetKnapsack table(int cells) {
        long longest = largest(problem.stockLength);
        long widest = largest(problem.stockWidth);
        long whole = Math.max(longest, widest);
        along = CellSize.best(problem, kinds, types, share(cells, longest, whole), true);
        across = CellSize.best(problem, kinds, types, share(cells, widest, whole), false);
        List<SheetKnapsack.Size> sizes =
                IntStream.of(sample).mapToObj(this::size).toList();
        return new SheetKnapsack(sizes, along.of(longest), across.of(widest));
    }

    private static int share(int cells, long size, long whole) {
        return (int) Math.max(1, cells * size / whole);
    }

    private long largest(long[] stock) {
        return IntStream.of(types).mapToLong(t -> stock[t]).max().orElse(1);
    }

    private SheetKnapsack.Size size(int item) {
        long l = problem.length[item];
        long w = problem.width[item];
        return problem.turn[item]
                ? new SheetKnapsack.Size(along.of(l), across.of(w), along.of(w), across.of(l))
                : new SheetKnapsack.Size(along.of(l), across.of(w), 0, 0);
    }

    /** What stock is to cost from now on; whatever it is, what is learnt of values holds. */
    void price(double[] costs) {
        this.cost = costs.clone();
    }

    /** Whether no more tables may be worked out, so that what is found may not be all. */
    boolean isSpent() {
        return tablesLeft <= 0 || stop.getAsBoolean();
    }

    int[] wanted() {
        return wanted.clone();
    }

    /** Takes in what is known already. */
    void learn(List<Demand> known) {
        demands.addAll(known);
    }

    /** What has been learnt so far. */
    List<Demand> demands() {
        return List.copyOf(demands);
    }

    @Override
    public int kinds() {
        return sample.length;
    }

    @Override
    public double[] cost() {
        return cost.clone();
    }

    @Override
    public double[] fair() {
        double[] fair = new double[sample.length];
        for (int k = 0; k < fair.length; k++) {
            fair[k] = Double.MAX_VALUE;
            for (int t = 0; t < types.length; t++) {
                fair[k] = Math.min(fair[k], cost[t] * problem.area[sample[k]] / problem.stockArea(types[t]));
            }
        }
        return fair;
    }

    @Override
    public Pattern alone(int kind, int most) {
        int best = -1;
        double least = 0;
        int many = 0;
        for (int t = 0; t < types.length; t++) {
            int here = Math.min(most, rows(sample[kind], types[t]));
            if (here > 0 && (best < 0 || cost[t] / here < least)) {
                best = t;
                least = cost[t] / here;
                many = here;
            }
        }
        int[] counts = new int[sample.length];
        counts[kind] = many;
        return new Pattern(best, cost[best], counts);
    }

    private int rows(int item, int type) {
        long straight =
                (problem.stockLength[type] / problem.length[item]) * (problem.stockWidth[type] / problem.width[item]);
        long across = problem.turn[item]
                ? (problem.stockLength[type] / problem.width[item]) * (problem.stockWidth[type] / problem.length[item])
                : 0;
        return (int) Math.max(straight, across);
    }

    @Override
    public double[] values(double[] price, int[] most) {
        double[] usable = usable(price);
        tablesLeft--;
        lastPrice = usable;
        knapsack.solve(usable);
        double[] values = new double[types.length];
        Arrays.setAll(values, t -> knapsack.value(length(t), width(t)));
        double need = 0;
        for (int k = 0; k < usable.length; k++) {
            need += usable[k] * wanted[k];
        }
        demands.add(new Demand(need, values));
        return values;
    }

    /** A part less than a cell long or wide would have no room to take in the table: it is left out, on both sides of a demand. */
    private double[] usable(double[] price) {
        return IntStream.range(0, price.length)
                .mapToDouble(k -> isCounted(sample[k]) ? Math.max(0, price[k]) : 0)
                .toArray();
    }

    private boolean isCounted(int item) {
        long l = problem.length[item];
        long w = problem.width[item];
        boolean straight = along.of(l) > 0 && across.of(w) > 0;
        return straight && (!problem.turn[item] || along.of(w) > 0 && across.of(l) > 0);
    }

    private int length(int type) {
        return along.of(problem.stockLength[types[type]]);
    }

    private int width(int type) {
        return across.of(problem.stockWidth[types[type]]);
    }

    @Override
    public Pattern best(double[] price, int[] most, int type) {
        return new Pattern(type, cost[type], knapsack.counts(lastPrice, length(type), width(type)));
    }

    /** Also one that holds more than is wanted: every part may come as often as one likes. */
    @Override
    public boolean isUsable(Pattern pattern, int[] most) {
        return true;
    }

    /** The best of every other kind of stock. */
    @Override
    public List<Pattern> others() {
        return types.length == 1
                ? List.of()
                : IntStream.range(0, types.length)
                        .mapToObj(t -> best(lastPrice, wanted, t))
                        .toList();
    }
}
