package scantling.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import scantling.construct.Assembly;
import scantling.construct.Part;
import scantling.route.glue.Session;
import scantling.space.Extent;

/**
 * How much room wet parts take: a loose part lies on its largest face, what is glued together stands on the floor as it will
 * stand, and round each there is room for a hand.
 */
final class DryingRoom {
    private static final double MARGIN = Times.figure("round a wet part");
    private static final double MM = 1000;
    private static final double SQUARE_METRE = MM * MM;

    private final Map<String, Part> parts = new HashMap<>();
    private final List<Set<String>> bodies;

    private DryingRoom(Assembly assembly, List<Set<String>> bodies) {
        assembly.parts().forEach(part -> parts.put(part.path(), part));
        this.bodies = bodies;
    }

    /** Where these sessions have been glued; none where everything is still loose. */
    static DryingRoom of(Assembly assembly, Collection<Session> glued) {
        List<Set<String>> bodies = new ArrayList<>();
        for (Session session : glued) {
            boolean known = bodies.stream().anyMatch(body -> body.containsAll(session.parts()));
            if (!known) {
                bodies.removeIf(session.parts()::containsAll);
                bodies.add(session.parts());
            }
        }
        return new DryingRoom(assembly, bodies);
    }

    /** Square metres for these parts. @param paths of the parts that are wet */
    double of(Collection<String> paths) {
        Set<String> left = new HashSet<>(paths);
        double sum = 0;
        for (Set<String> body : bodies) {
            if (left.removeAll(body)) {
                sum += standing(body);
            }
        }
        return sum + left.stream().mapToDouble(this::lying).sum();
    }

    private double standing(Set<String> body) {
        List<Extent> boxes = body.stream()
                .flatMap(path -> part(path).stream())
                .map(part -> Extent.of(part.box()))
                .toList();
        double across = span(boxes, Extent::left, Extent::right);
        double deep = span(boxes, Extent::front, Extent::back);
        return room(across, deep);
    }

    private static double span(List<Extent> boxes, ToDoubleFunction<Extent> from, ToDoubleFunction<Extent> to) {
        return boxes.stream().mapToDouble(to).max().orElse(0)
                - boxes.stream().mapToDouble(from).min().orElse(0);
    }

    private double lying(String path) {
        return part(path).stream()
                .mapToDouble(part -> {
                    double[] sizes = {
                        part.length().value().toMetres(),
                        part.width().value().toMetres(),
                        part.thickness().value().toMetres()
                    };
                    Arrays.sort(sizes);
                    return room(sizes[1] * MM, sizes[2] * MM);
                })
                .sum();
    }

    private List<Part> part(String path) {
        Part part = parts.get(path);
        return part == null ? List.of() : List.of(part);
    }

    private static double room(double one, double other) {
        return (one + MARGIN) * (other + MARGIN) / SQUARE_METRE;
    }
}
