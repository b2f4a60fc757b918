package scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * What parts demand of boards with defects at their edges: each part is worth its length times its width rounded by a dual
 * feasible function, and a slice of a board holds, for every bit of its length, no more than the rounded width that is open
 * there. (The roundings are those of {@link Rounding}; that they may be taken slice by slice follows as for the area: the
 * widths of parts side by side in a slice add up to its open width at most.)
 */
final class ClearSlices {
    private final Problem problem;
    private final int[] items;
    private final List<List<ClearBoard.Slice>> boards;

    /** @param heads one kind of stock for each board */
    ClearSlices(Problem problem, int[] items, int[] heads) {
        this.problem = problem;
        this.items = items;
        this.boards = IntStream.of(heads).mapToObj(this::slices).toList();
    }

    private List<ClearBoard.Slice> slices(int type) {
        return problem.isFlawed(type)
                ? new ClearBoard(problem, type).slices()
                : List.of(new ClearBoard.Slice(problem.stockLength[type], problem.stockWidth[type]));
    }

    /** A demand for every rounding of widths. @param most how many roundings of a family */
    List<Demand> demands(int most) {
        TreeSet<Long> sizes = new TreeSet<>();
        long whole = boards.stream()
                .flatMap(List::stream)
                .mapToLong(ClearBoard.Slice::open)
                .max()
                .orElse(1);
        for (int item : items) {
            sizes.add(problem.width[item]);
            whole = Math.max(whole, problem.width[item]);
        }
        List<Demand> all = new ArrayList<>();
        for (Rounding rounding : Rounding.all(whole, sizes, most)) {
            all.add(new Demand(need(rounding), held(rounding)));
        }
        return all;
    }

    private double need(Rounding rounding) {
        double[] straight =
                rounding.of(IntStream.of(items).mapToLong(i -> problem.width[i]).toArray());
        double[] across = rounding.of(
                IntStream.of(items).mapToLong(i -> problem.length[i]).toArray());
        double sum = 0;
        for (int k = 0; k < items.length; k++) {
            double lying = problem.length[items[k]] * straight[k];
            sum += problem.turn[items[k]] ? Math.min(lying, problem.width[items[k]] * across[k]) : lying;
        }
        return sum;
    }

    private double[] held(Rounding rounding) {
        double[] held = new double[boards.size()];
        for (int b = 0; b < held.length; b++) {
            List<ClearBoard.Slice> slices = boards.get(b);
            double[] open = rounding.of(
                    slices.stream().mapToLong(ClearBoard.Slice::open).toArray());
            for (int s = 0; s < open.length; s++) {
                held[b] += slices.get(s).length() * open[s];
            }
        }
        return held;
    }
}
