package scantling.cutting;

import java.util.List;
import java.util.SplittableRandom;

/** Takes parts out of a layout at random: single parts, whole branches of cuts, or all of one piece of stock. */
final class Ruin {
    private final SplittableRandom random;
    private final Tuning tuning;

    Ruin(SplittableRandom random, Tuning tuning) {
        this.random = random;
        this.tuning = tuning;
    }

    void apply(Layout layout, long step) {
        if (layout.bins.isEmpty()) {
            return;
        }
        int wanted = 1 + random.nextInt(tuning.removed());
        int mode = random.nextInt(100);
        if (mode < tuning.wholePercent()) {
            empty(layout, emptiest(layout, 3), step);
        } else if (mode < tuning.wholePercent() + tuning.pairPercent()) {
            pair(layout, wanted, step);
        } else {
            scattered(layout, wanted, step);
        }
        layout.closeEmpty();
    }

    private void scattered(Layout layout, int wanted, long step) {
        int goal = layout.out.size() + wanted;
        for (int tries = 0; layout.out.size() < goal && tries < 2 * wanted; tries++) {
            pick(layout, emptiest(layout, 2), step);
        }
    }

    private void pair(Layout layout, int wanted, long step) {
        int first = random.nextInt(layout.bins.size());
        int second = random.nextInt(layout.bins.size());
        int goal = layout.out.size() + wanted;
        for (int tries = 0; layout.out.size() < goal && tries < 2 * wanted; tries++) {
            pick(layout, random.nextBoolean() ? first : second, step);
        }
    }

    private void empty(Layout layout, int index, long step) {
        Bin bin = layout.own(index, step);
        bin.empty(layout.out);
    }

    private void pick(Layout layout, int index, long step) {
        if (layout.bins.get(index).isEmpty()) {
            return;
        }
        Bin bin = layout.own(index, step);
        List<Node> parts = bin.parts;
        Node node = parts.get(random.nextInt(parts.size()));
        while (!node.isRoot() && !node.parent.isRoot() && random.nextInt(100) < tuning.climbPercent()) {
            node = node.parent;
        }
        bin.free(node, layout.out);
    }

    /** Of some random pieces of stock, the one with the most left over. */
    private int emptiest(Layout layout, int among) {
        int best = random.nextInt(layout.bins.size());
        double most = spare(layout.bins.get(best));
        for (int i = 1; i < among; i++) {
            int other = random.nextInt(layout.bins.size());
            double spare = spare(layout.bins.get(other));
            if (spare > most) {
                best = other;
                most = spare;
            }
        }
        return best;
    }

    private static double spare(Bin bin) {
        return bin.concentration();
    }
}
