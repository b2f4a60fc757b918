package scantling.cutting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Fills one sheet at a time: the pattern of strips worth most at some prices, of the parts still to be had, and whatever
 * else fits into its leftovers.
 */
final class SheetFiller {
    /** Of each kind, no more are tried in the leftovers of one sheet. */
    private static final int MOST_OF_A_KIND = 3;

    private final Problem problem;
    private final PartKinds kinds;
    private final int[] kindOf;
    private final List<Integer> bySize;
    private final List<StripBuilder> builders = new ArrayList<>();
    private final Recreate recreate;

    SheetFiller(Problem problem) {
        this.problem = problem;
        int[] items = problem.fitting();
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
        this.recreate = new Recreate(problem, new SplittableRandom(1), 0);
        boolean trims = problem.stages > 3;
        for (int axis : new int[] {Node.X, Node.Y}) {
            if (problem.firstCut.allows(axis == Node.X ? CutDirection.ACROSS : CutDirection.ALONG)) {
                builders.add(new StripBuilder(problem, kinds, axis, trims));
            }
        }
    }

    /** Only stock that is bought, as much as is wanted, without defects, and a saw of three stages or more. */
    static boolean isFor(Problem problem) {
        return !problem.sticks
                && problem.stages >= 3
                && IntStream.range(0, problem.stockCost.length)
                        .allMatch(t -> problem.stockCost[t] > 0
                                && problem.stockCount[t] == Integer.MAX_VALUE
                                && !problem.isFlawed(t));
    }

    PartKinds kinds() {
        return kinds;
    }

    /** The number of an item's kind. */
    int kindOf(int item) {
        return kindOf[item];
    }

    /** All items that fit on some stock, largest first. */
    List<Integer> bySize() {
        return bySize;
    }

    /** One for each direction that the first cut may have. */
    List<StripBuilder> builders() {
        return builders;
    }

    /** Works out the patterns for prices of the kinds, of what is not gone. */
    void solve(double[] price, BitSet gone) {
        builders.forEach(builder -> builder.solve(price, gone));
    }

    /** The best pattern of one direction, as {@link #solve} found it, with what still fits into its leftovers. */
    Bin fill(StripBuilder builder, int type, BitSet gone, long step) {
        Bin bin = builder.build(type, gone, step);
        Layout alone = new Layout(problem, List.of());
        alone.take(bin);
        BitSet without = (BitSet) gone.clone();
        bin.parts.forEach(node -> without.set(node.kind));
        recreate.fill(alone, left(without, MOST_OF_A_KIND), alone.cost, step);
        return bin;
    }

    /** What is still to be had goes where it fits; stock is opened as it is needed. */
    void finish(Layout layout, BitSet gone, long step) {
        List<Integer> last = left(gone, Integer.MAX_VALUE);
        layout.out.addAll(last);
        recreate.fill(layout, last, Long.MAX_VALUE, step);
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
}
