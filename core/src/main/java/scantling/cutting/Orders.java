package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/** In which order items are put onto stock. */
final class Orders {
    private Orders() {}

    /** Those tried for the first layouts. */
    static List<Comparator<Integer>> first(Problem problem) {
        Comparator<Integer> area = Comparator.comparingDouble(i -> -problem.area[i]);
        Comparator<Integer> longer = Comparator.comparingLong(i -> -Math.max(problem.length[i], problem.width[i]));
        Comparator<Integer> around = Comparator.comparingLong(i -> -(problem.length[i] + problem.width[i]));
        Comparator<Integer> length = Comparator.comparingLong(i -> -problem.length[i]);
        Comparator<Integer> width = Comparator.comparingLong(i -> -problem.width[i]);
        return List.of(area, longer.thenComparing(area), around, length.thenComparing(area), width.thenComparing(area));
    }

    /** Items in a random kind of order, mostly the large ones first. */
    static List<Integer> shuffled(Problem problem, SplittableRandom random, List<Integer> items) {
        List<Integer> order = new ArrayList<>(items);
        double[] key = new double[problem.items];
        int kind = random.nextInt(8);
        for (int item : items) {
            key[item] = key(problem, random, item, kind);
        }
        order.sort(Comparator.comparingDouble(i -> -key[i]));
        return order;
    }

    private static double key(Problem problem, SplittableRandom random, int item, int kind) {
        double l = problem.length[item];
        double w = problem.width[item];
        return switch (kind) {
            case 0 -> random.nextDouble();
            case 1 -> Math.max(l, w);
            case 2 -> l;
            case 3 -> w;
            default -> l * w * (1 + 0.2 * random.nextDouble());
        };
    }
}
