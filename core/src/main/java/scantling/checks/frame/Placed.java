package scantling.checks.frame;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import scantling.checks.lasting.Parts;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.space.Axis;
import scantling.space.Extent;

/** Puts the loads of tests on the nodes of a frame. */
final class Placed {
    private final Assembly assembly;
    private final Model model;
    private final Extent extent;

    Placed(Assembly assembly, Model model) {
        this.assembly = assembly;
        this.model = model;
        this.extent = extent(model.rods());
    }

    private static Extent extent(List<Rod> rods) {
        double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
        double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Rod rod : rods) {
            Extent each = Extent.of(rod.part().box());
            double[] from = {each.left(), each.front(), each.bottom()};
            double[] to = {each.right(), each.back(), each.top()};
            for (int i = 0; i < 3; i++) {
                low[i] = Math.min(low[i], from[i]);
                high[i] = Math.max(high[i], to[i]);
            }
        }
        return new Extent(low[0], high[0], low[1], high[1], low[2], high[2]);
    }

    double height() {
        return extent.top() - extent.bottom();
    }

    /** Whether a load is one for this piece. */
    boolean applies(Load load) {
        return switch (load.on()) {
            case "drawers" -> findDrawer().isPresent();
            case "cabinet" -> isCabinet() && model.feet().size() >= 4 && height() >= Numbers.of("base cabinet height");
            default -> true;
        };
    }

    private boolean isCabinet() {
        return assembly.parts().stream().anyMatch(part -> Parts.findDrawer(part).isPresent() || Parts.isDoor(part));
    }

    /** The front of the drawer that opens highest. */
    private Optional<Part> findDrawer() {
        return assembly.parts().stream()
                .filter(part ->
                        Parts.findDrawer(part).isPresent() && !part.box().isEmpty())
                .max(Comparator.comparingDouble(part -> Parts.mm(part.box().top())));
    }

    private Vector place(Load load) {
        double middle = (extent.left() + extent.right()) / 2;
        double centre = (extent.front() + extent.back()) / 2;
        return switch (load.where()) {
            case "top side" -> new Vector(extent.left(), centre, extent.top());
            case "top front" -> new Vector(middle, extent.front(), extent.top());
            case "top corner" -> new Vector(extent.left(), extent.front(), extent.top());
            case "drawer front" -> drawn();
            default -> new Vector(middle, centre, extent.top());
        };
    }

    /** The middle of the highest drawer's front when it is pulled out by its own depth. */
    private Vector drawn() {
        Extent front = Extent.of(findDrawer().orElseThrow().box());
        double depth = extent.back() - extent.front();
        return new Vector(
                (front.left() + front.right()) / 2, extent.front() - depth * Numbers.of("drawn out"), front.top());
    }

    /** Forces and moments on all nodes. The place is held fast to the nodes that carry it there. */
    double[] on(Load load) {
        double[] all = new double[model.nodes().size() * Member.FREEDOMS];
        Vector place = place(load);
        List<Integer> carriers = load.where().equals("drawer front") ? besides(place) : List.of(nearestOnTop(place));
        for (int node : carriers) {
            Vector force = load.force().times(1.0 / carriers.size());
            Vector moment = place.with(
                            Axis.ACROSS,
                            load.where().equals("drawer front")
                                    ? model.nodes().get(node).across()
                                    : place.across())
                    .minus(model.nodes().get(node))
                    .cross(force);
            double[] six = {force.across(), force.deep(), force.up(), moment.across(), moment.deep(), moment.up()};
            for (int i = 0; i < six.length; i++) {
                all[node * Member.FREEDOMS + i] += six[i];
            }
        }
        return all;
    }

    private int nearestOnTop(Vector place) {
        return model.rods().stream()
                .filter(rod -> Parts.mm(rod.part().box().top()) >= extent.top() - 1)
                .map(rod -> rod.nearest(place))
                .min(Comparator.comparingDouble(
                        node -> model.nodes().get(node).minus(place).length()))
                .orElseThrow();
    }

    /** The uprights beside a drawer, one at each side. */
    private List<Integer> besides(Vector place) {
        List<Rod> uprights =
                model.rods().stream().filter(rod -> rod.runs() == Axis.UP).toList();
        Optional<Integer> left = nearest(uprights, place, true);
        Optional<Integer> right = nearest(uprights, place, false);
        Set<Integer> both = new HashSet<>();
        left.ifPresent(both::add);
        right.ifPresent(both::add);
        return both.isEmpty()
                ? List.of(nearestOnTop(place))
                : both.stream().sorted().toList();
    }

    private Optional<Integer> nearest(List<Rod> uprights, Vector place, boolean left) {
        return uprights.stream()
                .map(rod -> rod.nearest(place))
                .filter(node -> model.nodes().get(node).across() < place.across() == left)
                .min(Comparator.comparingDouble(
                        node -> model.nodes().get(node).minus(place).length()));
    }

    /** Movements that are free under a load though the floor would hold them: the foot under a corner without floor. */
    Frame under(Load load, Frame frame) {
        if (!load.name().equals("corner")) {
            return frame;
        }
        Vector place = place(load);
        Map<Integer, Part> feet = model.feet();
        int free = feet.keySet().stream()
                .min(Comparator.comparingDouble(node -> Math.hypot(
                        model.nodes().get(node).across() - place.across(),
                        model.nodes().get(node).deep() - place.deep())))
                .orElseThrow();
        Set<Integer> held = new HashSet<>(frame.held());
        for (int i = 0; i < Member.FREEDOMS; i++) {
            held.remove(free * Member.FREEDOMS + i);
        }
        return new Frame(frame.nodes(), frame.members(), held);
    }
}
