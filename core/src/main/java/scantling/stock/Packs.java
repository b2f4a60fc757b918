package scantling.stock;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** The sizes something is sold in: tins, bags, boxes. */
public final class Packs {
    private static final double SLACK = 1e-9;

    private final TreeSet<Double> sizes;

    private Packs(TreeSet<Double> sizes) {
        this.sizes = sizes;
    }

    /**
     * Packs of these sizes.
     *
     * @throws IllegalArgumentException if there is none, or one holds nothing
     */
    public static Packs of(Collection<Double> sizes) {
        TreeSet<Double> sorted = new TreeSet<>(sizes);
        if (sorted.isEmpty() || !(sorted.first() > 0)) {
            throw new IllegalArgumentException("Packs of (%s) hold nothing.".formatted(sizes));
        }
        return new Packs(sorted);
    }

    /** What to buy for so much: the largest packs first, and the smallest one that holds the rest. */
    public List<Double> filled(double amount) {
        List<Double> packs = new ArrayList<>();
        double rest = amount;
        while (rest > sizes.last() + SLACK) {
            packs.add(sizes.last());
            rest -= sizes.last();
        }
        Double pack = sizes.ceiling(rest - SLACK);
        if (rest > SLACK && pack != null) {
            packs.add(pack);
        }
        return packs;
    }
}
