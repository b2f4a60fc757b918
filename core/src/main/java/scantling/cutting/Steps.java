package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import scantling.measure.Length;

/**
 * The cuts of one tree in the order a person makes them: first the trimming, then level by level, and within a level
 * cuts of one fence setting after each other as far as their pieces are there. A setting waits while another cut that wants
 * it has no piece yet; of those that need not wait the widest comes first.
 */
final class Steps {
    private static final String WASTE = "waste";
    private static final String OFFCUT = "offcut to keep";
    private static final String DUST = "nothing";

    private record Waiting(CutTree.Cut cut, String label) {}

    private final List<CutStep> steps = new ArrayList<>();

    private Steps() {}

    static List<CutStep> of(CutJob job, Stock stock, CutTree tree) {
        Steps made = new Steps();
        if (job.saw().trimOf(stock).isPositive()) {
            made.trim(job.saw(), stock, tree);
        }
        if (tree instanceof CutTree.Cut cut) {
            made.levels(cut);
        }
        return made.steps;
    }

    /** The far end and the far edge are only trimmed where a part lies against them; else they stay on what is left over. */
    private void trim(Saw saw, Stock stock, CutTree tree) {
        Length once = saw.trim();
        trim(CutDirection.ACROSS, stock.length(), once, reaches(tree, CutDirection.ACROSS, stock.length(), once));
        if (!stock.width().isZero()) {
            trim(CutDirection.ALONG, stock.width(), once, reaches(tree, CutDirection.ALONG, stock.width(), once));
        }
    }

    private void trim(CutDirection direction, Length whole, Length once, boolean far) {
        if (far) {
            add("1", direction, whole.minus(once), "1", WASTE);
        }
        add("1", direction, whole.minus(far ? once.times(2) : once), "1", WASTE);
    }

    /** Whether a part ends where the trimming of the far side would. */
    private static boolean reaches(CutTree tree, CutDirection direction, Length whole, Length trim) {
        if (tree instanceof CutTree.Cut cut) {
            return reaches(cut.first(), direction, whole, trim) || reaches(cut.second(), direction, whole, trim);
        }
        if (!(tree instanceof CutTree.Part part)) {
            return false;
        }
        PlacedPart placed = part.placed();
        Length end = direction == CutDirection.ACROSS
                ? placed.x().plus(placed.length())
                : placed.y().plus(placed.width());
        return end.equals(whole.minus(trim));
    }

    private void levels(CutTree.Cut top) {
        List<Waiting> level = List.of(new Waiting(top, "1"));
        while (!level.isEmpty()) {
            level = level(level);
        }
    }

    /** Makes all cuts of a level, each as soon as its piece is there. @return what turns the other way and waits */
    private List<Waiting> level(List<Waiting> pieces) {
        List<Waiting> ready = new ArrayList<>(pieces);
        List<Waiting> below = new ArrayList<>();
        while (!ready.isEmpty()) {
            Waiting next =
                    ready.stream().filter(each -> isSet(each.cut())).findFirst().orElseGet(() -> next(ready));
            ready.remove(next);
            make(next);
            follow(next, ready, below);
        }
        return below;
    }

    /** The cut whose setting the fewest cuts still to come want again; the widest of these. */
    private static Waiting next(List<Waiting> ready) {
        Map<Length, Integer> later = new HashMap<>();
        ready.forEach(waiting -> later(waiting.cut(), later));
        return ready.stream()
                .min(Comparator.<Waiting>comparingInt(
                                waiting -> later.getOrDefault(waiting.cut().position(), 0))
                        .thenComparing(waiting -> waiting.cut().position(), Comparator.reverseOrder()))
                .orElseThrow();
    }

    /** Counts the settings of the cuts that go on the same way once a cut is made. */
    private static void later(CutTree.Cut done, Map<Length, Integer> counts) {
        for (CutTree tree : List.of(done.first(), done.second())) {
            if (tree instanceof CutTree.Cut cut && cut.direction() == done.direction()) {
                counts.merge(cut.position(), 1, Integer::sum);
                later(cut, counts);
            }
        }
    }

    private void make(Waiting waiting) {
        CutTree.Cut cut = waiting.cut();
        String first = name(cut.first(), waiting.label() + ".1");
        String second = name(cut.second(), waiting.label() + ".2");
        add(waiting.label(), cut.direction(), cut.position(), first, second);
    }

    /** What the cut set free: what is cut on the same way can be cut at once, the rest waits its turn. */
    private static void follow(Waiting done, List<Waiting> ready, List<Waiting> below) {
        if (done.cut().first() instanceof CutTree.Cut inner) {
            (inner.direction() == done.cut().direction() ? ready : below).add(new Waiting(inner, done.label() + ".1"));
        }
        if (done.cut().second() instanceof CutTree.Cut next) {
            Waiting onward = new Waiting(next, done.label() + ".2");
            (next.direction() == done.cut().direction() ? ready : below).add(onward);
        }
    }

    /** Whether the fence stands where this cut wants it. */
    private boolean isSet(CutTree.Cut cut) {
        return !steps.isEmpty()
                && steps.get(steps.size() - 1).direction() == cut.direction()
                && steps.get(steps.size() - 1).fence().equals(cut.position());
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
