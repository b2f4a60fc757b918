package scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Puts items back, each into the leftover where the least is spoilt: the sum of squared leftover areas should stay as large
 * as it can. With a small chance a leftover is overlooked ('blink'), so that the same order does not always give the same
 * plan. Best-fit insertion into guillotine trees with blinks after Gardeyn and Wauters (2022) and Christiaens and Vanden
 * Berghe (2020).
 */
final class Recreate {
    private static final int BLINK_OF = 1000;
    /** How much worse an area is that can never be used, because no stage is left, than one that is only smaller. */
    private static final double WASTE_WEIGHT = 2;

    private final Problem problem;
    private final SplittableRandom random;
    private final int blink;
    /** What one more fence setting is worth, as a share of the stock's squared area; 0 when settings do not count. */
    private double settingWeight;

    /** So many leftovers are looked at before one is overlooked. */
    private int untilBlink;

    private double bestLoss;
    private int bestBin;
    private int bestSlot;
    private int bestAxis;
    private boolean bestTurned;
    /** How much longer and wider the leftover has to become first. */
    private long bestLonger;

    private long bestWider;

    /** @param blink how many of a thousand leftovers are overlooked */
    Recreate(Problem problem, SplittableRandom random, int blink) {
        this.problem = problem;
        this.random = random;
        this.blink = blink;
        this.untilBlink = blink > 0 ? unseen() : 0;
    }

    /** From now on, how much a place that needs a new fence setting is disliked. */
    void dislikeSettings(double weight) {
        this.settingWeight = weight;
    }

    /** Places what it can of the items out, in the order given; the rest stays out. */
    void fill(Layout layout, List<Integer> order, long limit, long step) {
        List<Integer> stay = new ArrayList<>();
        for (int item : order) {
            if (!insert(layout, item, step) && !open(layout, item, limit, step)) {
                stay.add(item);
            }
        }
        layout.out.clear();
        layout.out.addAll(stay);
    }

    private boolean insert(Layout layout, int item, long step) {
        bestLoss = Double.MAX_VALUE;
        for (int b = 0; b < layout.bins.size(); b++) {
            look(layout.bins.get(b), b, item);
        }
        if (bestLoss == Double.MAX_VALUE) {
            return false;
        }
        put(layout.own(bestBin, step), item);
        return true;
    }

    private void look(Bin bin, int index, int item) {
        long l = problem.length[item];
        long w = problem.width[item];
        boolean turn = problem.turn[item];
        if (bin.isTooFull(problem.area[item])) {
            return;
        }
        List<Node> lefts = bin.lefts;
        for (int s = 0, n = lefts.size(); s < n; s++) {
            Node left = lefts.get(s);
            boolean straight = l <= left.length && w <= left.width;
            boolean across = turn && w <= left.length && l <= left.width;
            boolean wider = left.depth > 1;
            if ((straight || across || wider) && !blinks()) {
                if (straight) {
                    weigh(left, index, s, false, l, w);
                } else if (wider) {
                    stretch(left, index, s, false, l, w);
                }
                if (across) {
                    weigh(left, index, s, true, w, l);
                } else if (wider && turn) {
                    stretch(left, index, s, true, w, l);
                }
            }
        }
    }

    /** Counted down to the next one that is overlooked: a number for each leftover would cost more than looking at it. */
    private boolean blinks() {
        if (blink <= 0 || untilBlink-- > 0) {
            return false;
        }
        untilBlink = unseen();
        return true;
    }

    private int unseen() {
        return (int) (Math.log(1 - random.nextDouble()) / Math.log(1 - blink / (double) BLINK_OF));
    }

    private void weigh(Node left, int bin, int slot, boolean turned, long l, long w) {
        if (left.isRoot()) {
            boolean across = problem.firstCut.allows(CutDirection.ACROSS) && (l < left.length || mustStay(left, l, w));
            boolean along = problem.firstCut.allows(CutDirection.ALONG) && (w < left.width || mustStay(left, l, w));
            if (across) {
                consider(left, bin, slot, turned, Node.X, l, w);
            }
            if (along) {
                consider(left, bin, slot, turned, Node.Y, l, w);
            }
            return;
        }
        int axis = left.parent.axis;
        consider(left, bin, slot, turned, axis, l, w);
        int other = 1 - axis;
        boolean exact = (axis == Node.X ? l : w) == left.extent(axis);
        if ((other == Node.X ? l < left.length : w < left.width) && (left.depth < problem.stages || exact)) {
            consider(left, bin, slot, turned, other, l, w);
        }
    }

    /** At the root a cut that would take nothing off is only worth thinking of when the other direction is not allowed first. */
    private boolean mustStay(Node root, long l, long w) {
        return problem.firstCut != FirstCut.ANY || (l == root.length && w == root.width);
    }

    private void consider(Node left, int bin, int slot, boolean turned, int axis, long l, long w) {
        boolean sibling = !left.isRoot() && left.parent.axis == axis;
        int stripDepth = sibling ? left.depth : left.depth + 1;
        double area = left.area();
        double rest =
                axis == Node.X ? (double) (left.length - l) * left.width : (double) left.length * (left.width - w);
        double tail = axis == Node.X ? (double) l * (left.width - w) : (double) (left.length - l) * w;
        double waste = 0;
        if (stripDepth >= problem.stages) {
            waste += tail;
            tail = 0;
        }
        if (!sibling && left.depth >= problem.stages) {
            waste += rest;
            rest = 0;
        }
        double loss = area * area
                - rest * rest
                - tail * tail
                + WASTE_WEIGHT * waste * area
                + newSettingsLoss(left, axis, l, w);
        if (loss < bestLoss) {
            best(loss, bin, slot, axis, turned);
            bestLonger = 0;
            bestWider = 0;
        }
    }

    private void best(double loss, int bin, int slot, int axis, boolean turned) {
        bestLoss = loss;
        bestBin = bin;
        bestSlot = slot;
        bestAxis = axis;
        bestTurned = turned;
    }

    /** A leftover too small for a part may become larger together with its strip or its column, if there is room beside those. */
    private void stretch(Node left, int bin, int slot, boolean turned, long l, long w) {
        Widening widening = new Widening(left, l, w);
        if (!widening.fits()) {
            return;
        }
        int axis = left.parent.axis;
        double loss = widening.loss(WASTE_WEIGHT) + newSettingsLoss(left, axis, l, w);
        if (loss < bestLoss) {
            best(loss, bin, slot, axis, turned);
            bestLonger = widening.longer();
            bestWider = widening.wider();
        }
    }

    private double newSettingsLoss(Node left, int axis, long l, long w) {
        if (settingWeight <= 0) {
            return 0;
        }
        double whole = left.bin.area();
        return settingWeight * whole * whole * newSettings(left, axis, l, w);
    }

    /** How many fence settings a place needs that its stock does not need already. */
    private static int newSettings(Node left, int axis, long l, long w) {
        boolean sibling = !left.isRoot() && left.parent.axis == axis;
        int depth = sibling ? left.depth : left.depth + 1;
        long strip = axis == Node.X ? l : w;
        long tail = axis == Node.X ? w : l;
        long[] known = left.bin.settings();
        boolean first = strip == left.extent(axis) || Settings.has(known, strip, depth);
        boolean second = tail == left.extent(1 - axis) || Settings.has(known, tail, depth + 1);
        return (first ? 0 : 1) + (second ? 0 : 1);
    }

    private void put(Bin bin, int item) {
        long l = bestTurned ? problem.width[item] : problem.length[item];
        long w = bestTurned ? problem.length[item] : problem.width[item];
        Node left = bin.lefts.get(bestSlot);
        if (bestLonger > 0) {
            Stretch.widen(bin, left, Node.X, bestLonger);
        }
        if (bestWider > 0) {
            Stretch.widen(bin, left, Node.Y, bestWider);
        }
        bin.place(left, bestAxis, item, bestTurned, l, w);
    }

    private boolean open(Layout layout, int item, long limit, long step) {
        int type = choose(layout, item, limit);
        if (type < 0) {
            return false;
        }
        Bin bin = layout.open(type, step);
        bestLoss = Double.MAX_VALUE;
        while (bestLoss == Double.MAX_VALUE) {
            look(bin, layout.bins.size() - 1, item);
        }
        put(bin, item);
        return true;
    }

    /** The stock to start next: mostly the cheapest by area that the item fits, now and then any. */
    private int choose(Layout layout, int item, long limit) {
        int best = -1;
        double bestPrice = 0;
        boolean wander = blink > 0 && random.nextInt(4) == 0;
        for (int type = 0; type < problem.stockCost.length; type++) {
            if (layout.canOpen(type, limit) && problem.fits(item, type)) {
                double price = wander ? random.nextDouble() : problem.stockCost[type] / problem.stockArea(type);
                if (best < 0 || price < bestPrice) {
                    best = type;
                    bestPrice = price;
                }
            }
        }
        return best;
    }
}
