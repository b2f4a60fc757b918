package scantling.checks.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import scantling.checks.lasting.Parts;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Side;
import scantling.space.Solid;
import scantling.space.Turn;

/** A part as a line with nodes on it, while the frame is being built. */
final class Rod {
    /** Nodes nearer to each other than this are one, mm. */
    private static final double NEAR = 25;

    private final Part part;
    private final Axis runs;
    private final TreeMap<Double, Integer> nodes = new TreeMap<>();
    private final List<Double> wanted = new ArrayList<>();

    Rod(Part part, Axis runs) {
        this.part = part;
        this.runs = runs;
        wanted.add(from());
        wanted.add(to());
    }

    Part part() {
        return part;
    }

    Axis runs() {
        return runs;
    }

    private double from() {
        return Parts.mm(part.box().plane(Side.of(runs, false)));
    }

    private double to() {
        return Parts.mm(part.box().plane(Side.of(runs, true)));
    }

    private double middle(Axis axis) {
        return (Parts.mm(part.box().plane(Side.of(axis, false)))
                        + Parts.mm(part.box().plane(Side.of(axis, true))))
                / 2;
    }

    /** Asks for a node beside a place. */
    void want(Vector place) {
        wanted.add(Math.max(from(), Math.min(to(), place.of(runs))));
    }

    void wantMiddle() {
        wanted.add((from() + to()) / 2);
    }

    /** Makes its nodes, those that would crowd each other as one. @param all nodes of the frame, added to */
    void make(List<Vector> all) {
        List<Double> sorted = wanted.stream().sorted().toList();
        double last = Double.NEGATIVE_INFINITY;
        for (double at : sorted) {
            boolean end = at == to() && last < to();
            if (at - last >= NEAR || end) {
                nodes.put(at, all.size());
                all.add(at(at));
                last = at;
            }
        }
    }

    private Vector at(double along) {
        Vector middle = new Vector(middle(Axis.ACROSS), middle(Axis.DEEP), middle(Axis.UP));
        return turned(middle.with(runs, along), part.turn());
    }

    private static Vector turned(Vector place, Optional<Turn> turn) {
        if (turn.isEmpty()) {
            return place;
        }
        Turn by = turn.get();
        Axis first = Axis.values()[(by.about().ordinal() + 1) % 3];
        Axis second = Axis.values()[(by.about().ordinal() + 2) % 3];
        double x = place.of(first) - Parts.mm(by.first());
        double y = place.of(second) - Parts.mm(by.second());
        double angle = Math.toRadians(by.degrees());
        return place.with(first, Parts.mm(by.first()) + x * Math.cos(angle) - y * Math.sin(angle))
                .with(second, Parts.mm(by.second()) + x * Math.sin(angle) + y * Math.cos(angle));
    }

    /** The node nearest to a place. */
    int nearest(Vector place) {
        double at = place.of(runs);
        return nodes.entrySet().stream()
                .min(Comparator.comparingDouble(node -> Math.abs(node.getKey() - at)))
                .orElseThrow()
                .getValue();
    }

    List<Integer> nodes() {
        return List.copyOf(nodes.values());
    }

    Axis wide() {
        return part.lie().thickness() == runs
                ? runs.third(Axis.UP)
                : runs.third(part.lie().thickness());
    }

    /** Its stretches from node to node. @param elasticity MPa along it @param rigidity shear modulus, MPa */
    List<Bar> bars(List<Vector> all, double elasticity, double rigidity) {
        Axis wide = wide();
        Axis deep = runs.third(wide);
        Solid solid = Solid.of(part.box(), part.lie(), part.outline(), part.turn());
        double full = Parts.mm(part.box().extent(runs))
                * Parts.mm(part.box().extent(wide))
                * Parts.mm(part.box().extent(deep));
        // A tapered or shaped part counts with its mean width.
        double width = Parts.mm(part.box().extent(wide)) * solid.volume() / full;
        Profile profile = Profile.rectangle(
                elasticity, rigidity, width, Parts.mm(part.box().extent(deep)));
        List<Bar> bars = new ArrayList<>();
        List<Integer> order = nodes();
        for (int i = 1; i < order.size(); i++) {
            Vector start = all.get(order.get(i - 1));
            Vector end = all.get(order.get(i));
            bars.add(new Bar(part.path(), order.get(i - 1), order.get(i), start, end, Vector.along(wide, 1), profile));
        }
        return bars;
    }
}
