package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import scantling.measure.Length;

/**
 * The cuts of one tree in the order a person makes them: first the trimming, then level by level, and within a level all cuts
 * of one fence setting after each other, the widest setting first.
 */
final class Steps {
    private static final String WASTE = "waste";
    private static final String OFFCUT = "offcut";
    private static final String DUST = "nothing";

    private record Waiting(CutTree.Cut cut, String label) {}

    private final List<CutStep> steps = new ArrayList<>();

    private Steps() {}

    static List<CutStep> of(CutJob job, Stock stock, CutTree tree) {
        Steps made = new Steps();
        if (job.saw().trim().isPositive()) {
            made.trim(job.saw(), stock);
        }
        if (tree instanceof CutTree.Cut cut) {
            made.levels(cut);
        }
        return made.steps;
    }

    private void trim(Saw saw, Stock stock) {
        Length once = saw.trim();
        Length twice = once.times(2);
        add("1", CutDirection.ACROSS, stock.length().minus(once), "1", WASTE);
        add("1", CutDirection.ACROSS, stock.length().minus(twice), "1", WASTE);
        if (!stock.width().isZero()) {
            add("1", CutDirection.ALONG, stock.width().minus(once), "1", WASTE);
            add("1", CutDirection.ALONG, stock.width().minus(twice), "1", WASTE);
        }
    }

    private void levels(CutTree.Cut top) {
        List<Waiting> level = List.of(new Waiting(top, "1"));
        while (!level.isEmpty()) {
            List<Waiting> below = new ArrayList<>();
            List<Waiting> chain = new ArrayList<>();
            for (Waiting waiting : level) {
                unroll(waiting, chain, below);
            }
            chain.sort(Comparator.<Waiting, Length>comparing(w -> w.cut().position())
                    .reversed());
            for (Waiting each : chain) {
                CutTree.Cut cut = each.cut();
                String first = name(cut.first(), each.label() + ".1");
                add(each.label(), cut.direction(), cut.position(), first, name(cut.second(), each.label() + ".2"));
            }
            level = below;
        }
    }

    /** All cuts of one direction that follow each other on a piece; what turns the other way waits for the next level. */
    private static void unroll(Waiting waiting, List<Waiting> chain, List<Waiting> below) {
        CutTree.Cut cut = waiting.cut();
        chain.add(waiting);
        if (cut.first() instanceof CutTree.Cut inner) {
            below.add(new Waiting(inner, waiting.label() + ".1"));
        }
        if (cut.second() instanceof CutTree.Cut next) {
            Waiting onward = new Waiting(next, waiting.label() + ".2");
            if (next.direction() == cut.direction()) {
                unroll(onward, chain, below);
            } else {
                below.add(onward);
            }
        }
    }

    private static String name(CutTree tree, String label) {
        if (tree instanceof CutTree.Part part) {
            return part.placed().part().name();
        }
        if (tree instanceof CutTree.Offcut offcut) {
            return offcut.keep() ? OFFCUT : WASTE;
        }
        return tree instanceof CutTree.Nothing ? DUST : label;
    }

    private void add(String piece, CutDirection direction, Length fence, String first, String second) {
        boolean same = false;
        if (!steps.isEmpty()) {
            CutStep last = steps.get(steps.size() - 1);
            same = last.direction() == direction && last.fence().equals(fence);
        }
        steps.add(new CutStep(steps.size() + 1, piece, direction, fence, !same, first, second));
    }
}
