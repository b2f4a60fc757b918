package scantling.cutting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Puts the best pattern of the tables onto stock with parts that are still to be had: where a size has run out, the next best
 * part that fits its place is taken, and strips and columns are as large as what they hold.
 */
final class StripBuilder {
    /** One way a kind of part can lie. */
    private record Way(int kind, boolean turned, long across, long along) {}

    private record Place(int item, boolean turned, long across, long along) {}

    private final Problem problem;
    private final PartKinds kinds;
    private final StripTables tables;
    private final boolean trims;
    private final List<List<Way>> byHeight = new ArrayList<>();

    private double[] worth = {};
    private BitSet taken = new BitSet();
    private boolean again;
    /** Kinds that the pattern would have had more of than there are. */
    private final Set<Integer> missed = new HashSet<>();

    StripBuilder(Problem problem, PartKinds kinds, int axis, boolean trims) {
        this.problem = problem;
        this.kinds = kinds;
        this.trims = trims;
        this.tables = new StripTables(problem, kinds.samples(), axis, trims);
        for (long height : tables.heights) {
            byHeight.add(ways(height));
        }
    }

    private List<Way> ways(long height) {
        List<Way> ways = new ArrayList<>();
        for (int k = 0; k < kinds.count(); k++) {
            int item = kinds.sample(k);
            long across = tables.axis == Node.X ? problem.length[item] : problem.width[item];
            long along = tables.axis == Node.X ? problem.width[item] : problem.length[item];
            if (across == height) {
                ways.add(new Way(k, false, across, along));
            }
            if (problem.turn[item] && along == height) {
                ways.add(new Way(k, true, along, across));
            }
        }
        return ways;
    }

    /** About how many operations {@link #solve} takes. */
    long work() {
        return tables.work();
    }

    /** Works the tables out for prices of the kinds; what is taken is not to be had. */
    void solve(double[] prices, BitSet gone) {
        worth = prices.clone();
        tables.clear();
        for (List<Way> ways : byHeight) {
            for (Way way : ways) {
                if (kinds.next(way.kind(), gone) >= 0) {
                    tables.offer(way.across(), way.along(), worth[way.kind()]);
                }
            }
        }
        tables.solve();
    }

    /** What the best pattern of a kind of stock is worth when every part may come as often as one likes. */
    double value(int type) {
        return tables.value(type);
    }

    /** The best pattern for a kind of stock, of parts still to be had. */
    Bin build(int type, BitSet gone, long step) {
        again = false;
        return built(type, gone, step);
    }

    /** The best pattern for a kind of stock as the tables have it: the same part stands in it as often as its size is taken. */
    Bin buildOften(int type, BitSet gone, long step) {
        again = true;
        return built(type, gone, step);
    }

    private Bin built(int type, BitSet gone, long step) {
        taken = (BitSet) gone.clone();
        missed.clear();
        tables.value(type);
        Bin bin = new Bin(type, problem, step);
        Node root = bin.clearRoot();
        List<List<List<Place>>> strips = new ArrayList<>();
        for (int h : tables.stripsOf(type)) {
            List<List<Place>> strip = strip(type, h);
            if (!strip.isEmpty()) {
                strips.add(strip);
            }
        }
        divide(bin, root, tables.axis, strips.stream().map(StripBuilder::height).toList(), (node, at) -> {
            List<List<Place>> strip = strips.get(at);
            divide(
                    bin,
                    node,
                    1 - tables.axis,
                    strip.stream().map(StripBuilder::length).toList(),
                    (below, c) -> stack(bin, below, strip.get(c)));
        });
        return bin;
    }

    /** Kinds that the last pattern would have had more of than there are. */
    Set<Integer> missed() {
        return missed;
    }

    private List<List<Place>> strip(int type, int h) {
        List<List<Place>> columns = new ArrayList<>();
        for (int l : tables.columnsOf(type, h)) {
            List<Place> column = new ArrayList<>();
            for (int part : tables.partsOf(h, l)) {
                place(column, part, tables.lengths[l]);
            }
            if (!column.isEmpty()) {
                columns.add(column);
            }
        }
        return columns;
    }

    /** The best part of a height still to be had; of the next smaller height when there is none. */
    private void place(List<Place> column, int height, long length) {
        for (int h = height; h >= 0; h--) {
            List<Way> fitting = byHeight.get(h).stream()
                    .filter(way -> trims ? way.along() <= length : way.along() == length)
                    .sorted(Comparator.comparingDouble(way -> -worth[way.kind()]))
                    .toList();
            for (Way way : fitting) {
                int item = kinds.next(way.kind(), taken);
                if (item >= 0) {
                    taken.set(item, !again);
                    column.add(new Place(item, way.turned(), way.across(), way.along()));
                    return;
                }
                missed.add(way.kind());
            }
        }
    }

    private static long height(List<List<Place>> strip) {
        return strip.stream()
                .mapToLong(column -> column.stream().mapToLong(Place::across).sum())
                .max()
                .orElse(0);
    }

    private static long length(List<Place> column) {
        return column.stream().mapToLong(Place::along).max().orElse(0);
    }

    private interface Filler {
        void fill(Node node, int at);
    }

    /** Cuts a rectangle into pieces along an axis; what is left of it is a leftover. */
    private void divide(Bin bin, Node node, int axis, List<Long> extents, Filler filler) {
        long left = node.extent(axis);
        if (extents.size() == 1 && extents.get(0) == left && !node.isRoot()) {
            filler.fill(node, 0);
            return;
        }
        node.kind = Node.CUT;
        node.axis = axis;
        for (int i = 0; i < extents.size(); i++) {
            left -= extents.get(i);
            filler.fill(node.child(extents.get(i)), i);
        }
        if (left > 0) {
            spare(bin, node.child(left));
        }
    }

    private void spare(Bin bin, Node node) {
        node.kind = node.parent.depth < problem.stages ? Node.LEFT : Node.WASTE;
        bin.register(node);
    }

    private void stack(Bin bin, Node column, List<Place> places) {
        int axis = tables.axis;
        divide(bin, column, axis, places.stream().map(Place::across).toList(), (node, at) -> {
            Place place = places.get(at);
            Node last = node;
            if (place.along() < node.extent(1 - axis)) {
                node.kind = Node.CUT;
                node.axis = 1 - axis;
                last = node.child(place.along());
                spare(bin, node.child(node.extent(1 - axis) - place.along()));
            }
            last.kind = place.item();
            last.turned = place.turned();
            bin.register(last);
        });
    }
}
