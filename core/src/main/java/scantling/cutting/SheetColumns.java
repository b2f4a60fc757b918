package scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Patterns for sheets that come out by the saw: of three stages, no part oftener than it is wanted, leftovers filled with
 * whatever fits. The most that a sheet could be worth is told from the same tables, where every part may come as often as one
 * likes.
 */
final class SheetColumns implements PatternSource {
    private final Problem problem;
    private final SheetFiller filler;
    private final FilledSheets sheets;
    private final double[] cost;
    private final double[] fair;
    private double[] lastPrice = {};
    private BitSet gone = new BitSet();

    SheetColumns(Problem problem, SheetFiller filler, FilledSheets sheets) {
        this.problem = problem;
        this.filler = filler;
        this.sheets = sheets;
        this.cost = Arrays.stream(problem.stockCost).mapToDouble(c -> c).toArray();
        this.fair = IntStream.of(filler.kinds().samples())
                .mapToDouble(item -> IntStream.range(0, cost.length)
                        .mapToDouble(t -> cost[t] * problem.area[item] / problem.stockArea(t))
                        .min()
                        .orElse(0))
                .toArray();
    }

    @Override
    public int kinds() {
        return filler.kinds().count();
    }

    @Override
    public double[] cost() {
        return cost.clone();
    }

    @Override
    public double[] fair() {
        return fair.clone();
    }

    /** One part by itself on the cheapest stock that it fits on. */
    @Override
    public Pattern alone(int kind, int most) {
        int item = filler.kinds().sample(kind);
        int type = IntStream.range(0, cost.length)
                .filter(t -> problem.fits(item, t))
                .boxed()
                .min(Comparator.comparingDouble(t -> cost[t]))
                .orElseThrow();
        Layout layout = new Layout(problem, List.of());
        Bin bin = layout.open(type, -1);
        boolean straight =
                problem.length[item] <= problem.stockLength[type] && problem.width[item] <= problem.stockWidth[type];
        long length = straight ? problem.length[item] : problem.width[item];
        long width = straight ? problem.width[item] : problem.length[item];
        int axis = problem.firstCut.allows(CutDirection.ACROSS) ? Node.X : Node.Y;
        bin.place(bin.lefts.get(0), axis, item, !straight, length, width);
        return sheets.add(bin);
    }

    @Override
    public double[] values(double[] price, int[] most) {
        lastPrice = price.clone();
        gone = new BitSet();
        for (int k = 0; k < most.length; k++) {
            List<Integer> items = filler.kinds().items(k);
            items.subList(most[k], items.size()).forEach(gone::set);
        }
        filler.solve(price, gone);
        return IntStream.range(0, cost.length)
                .mapToDouble(t -> filler.builders().stream()
                        .mapToDouble(builder -> builder.value(t))
                        .max()
                        .orElse(0))
                .toArray();
    }

    /** Also one that holds more than is wanted: what is too many comes off it. */
    @Override
    public boolean isUsable(Pattern pattern, int[] wanted) {
        return IntStream.of(pattern.held()).anyMatch(k -> wanted[k] > 0);
    }

    /** As the tables have it, though a part may stand in it oftener than it is wanted. */
    @Override
    public Pattern best(double[] price, int[] most, int type) {
        StripBuilder best = filler.builders().stream()
                .max(Comparator.comparingDouble(builder -> builder.value(type)))
                .orElseThrow();
        return sheets.add(best.buildOften(type, gone, -1));
    }

    /** Of every kind of stock and direction of the first cut, one in which no part stands oftener than it is wanted. */
    @Override
    public List<Pattern> others() {
        List<Pattern> others = new ArrayList<>();
        for (StripBuilder builder : filler.builders()) {
            for (int t = 0; t < cost.length; t++) {
                others.add(sheets.add(filler.fill(builder, t, gone, -1)));
            }
        }
        return others;
    }
}
