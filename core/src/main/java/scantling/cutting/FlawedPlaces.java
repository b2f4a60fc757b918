package scantling.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import scantling.measure.Length;

/**
 * Where the stretches of a board with defects begin along it, and the strips of their sections across it. Each has a least
 * place, behind its defect; where there is room to spare it begins a little farther on, so that what is sawn off before it
 * is sawn off at a setting that is wanted anyway. Room that would be kept as an offcut is not spared.
 */
final class FlawedPlaces {
    private final Problem problem;
    private final Stock.BoardStock board;
    private final Length kerf;
    private final Length trim;
    private final List<Used> used;
    private final Way way;
    private final TreeSet<Length> crosscuts = new TreeSet<>();
    private final TreeSet<Length> rips = new TreeSet<>();
    private final List<Length> starts = new ArrayList<>();
    private final List<Boolean> chained = new ArrayList<>();
    private final Map<Node, Length> begins = new HashMap<>();

    /** How far settings are shared. Which needs the fewest depends on the order in which the cuts can be made. */
    enum Way {
        /** Everything begins at its least place. */
        LEAST,
        /** What lies before a stretch or a strip comes off at a setting that is wanted anyway. */
        SHARED,
        /** The same, and waste between stretches comes off by itself where it can share a setting. */
        CHAINED
    }

    FlawedPlaces(Problem problem, Stock.BoardStock board, List<Used> used, Way way) {
        this.way = way;
        this.problem = problem;
        this.board = board;
        this.kerf = problem.job.saw().kerf();
        this.trim = problem.job.saw().trimOf(board);
        this.used = used;
        for (Used each : used) {
            for (Node section : each.sections()) {
                crosscuts.add(problem.wood(section.length));
                strips(section).forEach(strip -> rips.add(problem.wood(strip.width)));
            }
        }
        along();
        across();
    }

    /** A clear stretch and what is cut from it. */
    record Used(Stock.Place clear, Node root) {
        /** The pieces it is crosscut to. */
        List<Node> sections() {
            return root.kind >= 0 || root.axis == Node.Y ? List.of(root) : inOrder(root);
        }
    }

    /** What a section is ripped to. */
    static List<Node> strips(Node section) {
        return section.kind >= 0 || section.axis == Node.X ? List.of(section) : inOrder(section);
    }

    private static List<Node> inOrder(Node node) {
        return node.children.stream()
                .filter(child -> !child.isSpare())
                .sorted(Comparator.comparingLong(child -> -child.extent(node.axis)))
                .toList();
    }

    /** Where a stretch begins. */
    Length start(int at) {
        return starts.get(at);
    }

    /** Whether the sections of a stretch are cut off first and what lies between it and the next then; else both at once. */
    boolean isChained(int at) {
        return chained.get(at);
    }

    /** Where the strips of a section begin. */
    Length begin(Node section) {
        return begins.getOrDefault(section, trim);
    }

    private Length farEnd() {
        return board.length().minus(trim);
    }

    private Length farEdge() {
        return board.width().minus(trim);
    }

    private void along() {
        Length first = used.get(0).clear().x();
        starts.add(first);
        if (first.compareTo(trim) > 0) {
            Length least = first.minus(kerf).minus(trim);
            starts.set(
                    0,
                    trim.plus(setting(crosscuts, least, room(0)).orElse(least)).plus(kerf));
        }
        for (int at = 0; at < used.size() - 1; at++) {
            next(at);
        }
        chained.add(false);
    }

    /** Where the stretch behind another begins, and how what lies between them comes off. */
    private void next(int at) {
        Length least = used.get(at + 1).clear().x();
        Length room = room(at + 1);
        Length behind = starts.get(at).plus(taken(used.get(at))).plus(kerf);
        Length alone = least.minus(kerf).minus(behind);
        Optional<Length> waste =
                way == Way.CHAINED && alone.isPositive() ? setting(crosscuts, alone, room) : Optional.empty();
        Length whole = least.minus(kerf).minus(starts.get(at));
        chained.add(waste.isPresent());
        starts.add(waste.map(behind::plus)
                .orElseGet(() ->
                        starts.get(at).plus(setting(crosscuts, whole, room).orElse(whole)))
                .plus(kerf));
        if (waste.isEmpty()) {
            crosscuts.add(starts.get(at + 1).minus(kerf).minus(starts.get(at)));
        }
    }

    private Length taken(Used stretch) {
        List<Node> sections = stretch.sections();
        return sections.stream()
                .map(section -> problem.wood(section.length))
                .reduce(kerf.times(sections.size() - 1), Length::plus);
    }

    /** How much farther on a stretch may begin. */
    private Length room(int at) {
        Stock.Place clear = used.get(at).clear();
        Length taken = taken(used.get(at));
        Length behind = clear.x().plus(taken).plus(kerf);
        Length end =
                at == used.size() - 1 ? farEnd() : used.get(at + 1).clear().x().minus(kerf);
        Stock.Place left =
                new Stock.Place(behind, trim, end.minus(behind), farEdge().minus(trim));
        return isKept(left) ? Length.ZERO : clear.length().minus(taken).max(Length.ZERO);
    }

    private boolean isKept(Stock.Place left) {
        return left.length().isPositive()
                && left.width().isPositive()
                && problem.job.keep().worth(left.length(), left.width());
    }

    /** A setting that is wanted anyway, of those that would do. */
    private Optional<Length> setting(TreeSet<Length> wanted, Length least, Length room) {
        return way == Way.LEAST
                ? Optional.empty()
                : Optional.ofNullable(wanted.ceiling(least)).filter(one -> one.compareTo(least.plus(room)) <= 0);
    }

    /** A section behind a bad edge. @param low where its strips can begin at the least @param high and at the most */
    private record Behind(Node section, Length low, Length high) {}

    /** Bad edges come off at the width of a strip where that will do; the others at the fewest settings that serve all. */
    private void across() {
        List<Behind> left = new ArrayList<>();
        for (Used each : used) {
            Length low = each.clear().y();
            for (Node section : each.sections()) {
                begins.put(section, low);
                if (low.compareTo(trim) > 0) {
                    Length least = low.minus(kerf).minus(trim);
                    Length room = room(section, each.clear());
                    setting(rips, least, room)
                            .ifPresentOrElse(
                                    rip -> begins.put(section, trim.plus(rip).plus(kerf)),
                                    () -> left.add(new Behind(section, low, low.plus(room))));
                }
            }
        }
        if (way != Way.LEAST) {
            settle(left);
        }
    }

    private void settle(List<Behind> left) {
        left.sort(Comparator.comparing(Behind::high));
        while (!left.isEmpty()) {
            Length high = left.get(0).high();
            List<Behind> together =
                    left.stream().filter(one -> one.low().compareTo(high) <= 0).toList();
            Length place = together.stream().map(Behind::low).reduce(Length.ZERO, Length::max);
            together.forEach(one -> begins.put(one.section(), place));
            left.removeAll(together);
        }
    }

    /** How much farther from the edge the strips of a section may begin. */
    private Length room(Node section, Stock.Place clear) {
        List<Node> strips = strips(section);
        Length taken = strips.stream()
                .map(strip -> problem.wood(strip.width))
                .reduce(kerf.times(strips.size() - 1), Length::plus);
        Length beyond = clear.y().plus(taken).plus(kerf);
        Stock.Place left = new Stock.Place(
                clear.x(), beyond, problem.wood(section.length), farEdge().minus(beyond));
        return isKept(left) ? Length.ZERO : clear.width().minus(taken).max(Length.ZERO);
    }
}
