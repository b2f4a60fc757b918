package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Patterns for sheets that hold no part more often than it is wanted: the set worth most is looked for among all sets that
 * can be cut edge to edge, part by part, those worth most for their area first, and left off where the area still free could
 * not bring enough. Meant for sheets that hold few parts each.
 */
final class SetPatterns implements PatternSource {
    private static final double TINY = 1e-7;
    /** A look for any set worth more than its sheet, before all are looked at. */
    private static final long SHORT_LOOK = 20_000;
    /** How much of the measure of a look comes from prices, the rest from areas. */
    private static final double WEIGHT = 0.3;

    private static final long LONG_LOOK = 10_000_000;
    private static final int MOST_KNOWN = 600_000;
    /** Of the sets found in one look, so many are remembered. */
    private static final int MOST_OTHERS = 60;
    /** Of all sets that a plan may have, more are not looked for. */
    private static final int MOST_WITHIN = 6_000;
    /** Nor are any where a plan may cost more above the bound than this share of a sheet. */
    private static final double MOST_ROOM = 0.5;

    private static final double ROUNDING = 1e-6;

    private final Problem problem;
    private final int[] types;
    private final int[] sample;
    private final int[] wanted;
    private final double[] cost;
    private final double[] area;
    private final PartSets sets;
    private final BooleanSupplier stop;
    private final List<Demand> demands = new ArrayList<>();
    private final List<SetLook> looks = new ArrayList<>();
    /** Sets met, each with the kind of stock it comes out of. */
    private final Set<Found> met = new LinkedHashSet<>();

    private final Map<Pattern, Found> setOf = new HashMap<>();
    /** Prices at which no set is worth more than its stock. */
    private final double[] trusted;

    private double proven;
    private long workLeft;

    private record Found(long set, int type) {}

    private SetPatterns(Problem problem, int[] items, int[] types, long work, BooleanSupplier stop) {
        this.problem = problem;
        this.types = types;
        this.stop = stop;
        this.workLeft = work;
        PartKinds kinds = new PartKinds(problem, items);
        this.sample = kinds.samples();
        this.wanted = kinds.wanted();
        this.cost = IntStream.of(types).mapToDouble(t -> problem.stockCost[t]).toArray();
        this.area = IntStream.of(sample).mapToDouble(i -> problem.area[i]).toArray();
        this.trusted = fair();
        this.sets = new PartSets(
                problem,
                sample,
                IntStream.of(types).mapToLong(t -> problem.stockLength[t]).max().orElse(0),
                IntStream.of(types).mapToLong(t -> problem.stockWidth[t]).max().orElse(0));
    }

    /** Empty when the job has too many kinds of part, or stock that is free or has defects. */
    static Optional<SetPatterns> of(Problem problem, int[] items, int[] types, long work, BooleanSupplier stop) {
        boolean usual = IntStream.of(types).allMatch(t -> problem.stockCost[t] > 0 && !problem.isFlawed(t));
        if (!usual || types.length == 0 || problem.sticks) {
            return Optional.empty();
        }
        SetPatterns patterns = new SetPatterns(problem, items, types, work, stop);
        return patterns.sample.length <= PartSets.MOST_KINDS ? Optional.of(patterns) : Optional.empty();
    }

    int[] wanted() {
        return wanted.clone();
    }

    /** What has been proven so far. */
    List<Demand> demands() {
        return List.copyOf(demands);
    }

    /** Whether there is no work left to be done, so that what is found may not be all. */
    boolean isSpent() {
        return workLeft <= 0 || sets.known() > MOST_KNOWN || stop.getAsBoolean();
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
        Arrays.fill(fair, Double.MAX_VALUE);
        for (int k = 0; k < fair.length; k++) {
            for (int t = 0; t < types.length; t++) {
                fair[k] = Math.min(fair[k], cost[t] * area[k] / problem.stockArea(types[t]));
            }
        }
        return fair;
    }

    @Override
    public Pattern alone(int kind, int most) {
        int type = IntStream.range(0, types.length)
                .filter(t -> problem.fits(sample[kind], types[t]))
                .boxed()
                .min(Comparator.comparingDouble(t -> cost[t]))
                .orElseThrow();
        int[] counts = new int[sample.length];
        counts[kind] = 1;
        return new Pattern(type, cost[type], counts);
    }

    /** A short look at each kind of stock; a whole one where that finds nothing. */
    @Override
    public double[] values(double[] price, int[] most) {
        looks.clear();
        for (int t = 0; t < types.length; t++) {
            SetLook look = look(price, most, t, SHORT_LOOK);
            looks.add(look.isWhole() || look.best() > cost[t] + TINY ? look : look(price, most, t, LONG_LOOK));
        }
        double[] values = new double[types.length];
        Arrays.setAll(values, t -> looks.get(t).isWhole() ? looks.get(t).highest() : Double.POSITIVE_INFINITY);
        if (looks.stream().allMatch(SetLook::isWhole)) {
            learn(new Demand(need(price), values.clone()), price);
        }
        return values;
    }

    /** What no set holds more of than its stock is worth says how much sets can hold of anything else, too. */
    private void learn(Demand demand, double[] price) {
        demands.add(demand);
        double share = Double.MAX_VALUE;
        for (int t = 0; t < types.length; t++) {
            share = Math.min(share, cost[t] / demand.value()[t]);
        }
        if (share * demand.need() > proven) {
            proven = share * demand.need();
            for (int k = 0; k < price.length; k++) {
                trusted[k] = share * Math.max(0, price[k]);
            }
        }
    }

    private double[] measure(int type, double weight) {
        double[] measure = new double[sample.length];
        Arrays.setAll(
                measure,
                k -> weight * trusted[k] / cost[type] + (1 - weight) * area[k] / problem.stockArea(types[type]));
        return measure;
    }

    private double need(double[] price) {
        double need = 0;
        for (int k = 0; k < price.length; k++) {
            need += Math.max(0, price[k]) * wanted[k];
        }
        return need;
    }

    private SetLook look(double[] price, int[] most, int type, long work) {
        SetLook look = new SetLook(sets, measure(type, WEIGHT), price, most, problem, types[type], MOST_OTHERS);
        workLeft -= look.run(cost[type], Math.min(work, workLeft), stop);
        return look;
    }

    @Override
    public Pattern best(double[] price, int[] most, int type) {
        return met(looks.get(type).bestSet(), type);
    }

    @Override
    public List<Pattern> others() {
        List<Pattern> others = new ArrayList<>();
        for (int t = 0; t < looks.size(); t++) {
            for (long set : looks.get(t).others()) {
                others.add(met(set, t));
            }
        }
        return others;
    }

    /**
     * All sets that a plan within a price can have, as far as their parts have a price of their own: at the best prices found, none
     * may be worth less than its sheet by more than the plan may cost above what they prove. Empty when there are too many.
     */
    List<Pattern> within(long limit) {
        double room = limit - proven;
        double cheapest = Arrays.stream(cost).min().orElse(0);
        List<Pattern> all = new ArrayList<>();
        for (int t = 0; t < types.length && room <= MOST_ROOM * cheapest; t++) {
            SetLook look = new SetLook(sets, measure(t, WEIGHT), trusted, wanted, problem, types[t], MOST_WITHIN);
            look.every(cost[t] - room - ROUNDING * cost[t], LONG_LOOK, stop);
            if (!look.isWhole()) {
                return List.of();
            }
            for (long set : look.others()) {
                all.add(pattern(set, t));
            }
        }
        return all;
    }

    /** What the best prices found prove that a plan costs at least. */
    double proven() {
        return proven;
    }

    /** How many are wanted of each kind that has a price of its own; 0 of others. */
    int[] wantedWithPrice() {
        return IntStream.range(0, wanted.length)
                .map(k -> SetLook.isPriced(trusted[k]) ? wanted[k] : 0)
                .toArray();
    }

    /** Which stock of the problem a pattern's is. */
    int stock(int type) {
        return types[type];
    }

    /** The area of each kind. */
    double[] areas() {
        return area.clone();
    }

    /** A sheet of each set met while prices were looked for. */
    List<Bin> sheets() {
        return met.stream().map(this::sheet).toList();
    }

    /** A sheet with what a pattern of {@link #within} has. */
    Bin sheet(Pattern pattern) {
        return sheet(Objects.requireNonNull(setOf.get(pattern)));
    }

    private Bin sheet(Found found) {
        return new SetSheets(problem, sets, sample).sheet(found.set(), types[found.type()]);
    }

    private Pattern met(long set, int type) {
        if (set != 0) {
            met.add(new Found(set, type));
        }
        return pattern(set, type);
    }

    private Pattern pattern(long set, int type) {
        int[] counts = new int[sample.length];
        for (int i = 0, n = PartSets.size(set); i < n; i++) {
            counts[PartSets.kind(set, i)]++;
        }
        Pattern pattern = new Pattern(type, cost[type], counts);
        setOf.put(pattern, new Found(set, type));
        return pattern;
    }
}
