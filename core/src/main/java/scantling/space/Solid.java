package scantling.space;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The wood of one part in space, as convex prisms: its box, cut to its outline where it has one, turned where it is
 * turned. For numerical judgement in double millimetres; two plain boxes are compared exactly by their planes instead.
 * An outline that crosses itself counts as the whole rectangle.
 */
public final class Solid {
    /** Closer than this is touching, deeper than this is sharing; millimetres, a tenth of what a bench can make. */
    public static final double TOLERANCE = 0.01;

    private final List<Convex> prisms;
    private final Extent extent;

    private Solid(List<Convex> prisms) {
        this.prisms = prisms;
        List<Point> ends = new ArrayList<>();
        for (Convex prism : prisms) {
            Extent e = prism.extent();
            ends.add(new Point(e.left(), e.front(), e.bottom()));
            ends.add(new Point(e.right(), e.back(), e.top()));
        }
        this.extent = Extent.of(ends);
    }

    /**
     * The solid of a part.
     *
     * @param box not empty
     * @param lie which way its outline is seen
     */
    public static Solid of(Box box, Lie lie, Optional<Outline> outline, Optional<Turn> turn) {
        if (box.isEmpty()) {
            throw new IllegalArgumentException("A box that holds nothing is no solid.");
        }
        List<Convex> prisms = polygons(box, lie, outline).stream()
                .map(polygon -> prism(polygon, box, lie, turn))
                .toList();
        return new Solid(prisms);
    }

    /** How far it reaches, turned as it is. */
    public Extent extent() {
        return extent;
    }

    /** Its volume in cubic millimetres. */
    public double volume() {
        return prisms.stream().mapToDouble(Convex::volume).sum();
    }

    /**
     * How deep the two are in each other, in millimetres: how far one would have to move for its deepest prism to come
     * clear. Zero when they only touch, negative (and no more than the true gap) when they are apart.
     */
    public double depthIn(Solid other) {
        double deepest = Double.NEGATIVE_INFINITY;
        for (Convex mine : prisms) {
            for (Convex its : other.prisms) {
                deepest = Math.max(deepest, mine.depth(its));
            }
        }
        return deepest;
    }

    /** Whether the two meet: they share space, or no gap beyond the tolerance lies between them. */
    public boolean touches(Solid other) {
        return !extent.isClearOf(other.extent, TOLERANCE) && depthIn(other) >= -TOLERANCE;
    }

    /** Around the space that both hold, when that is more than touching. */
    public Optional<Extent> findShared(Solid other) {
        if (extent.isClearOf(other.extent, 0)) {
            return Optional.empty();
        }
        List<Point> corners = new ArrayList<>();
        for (Convex mine : prisms) {
            for (Convex its : other.prisms) {
                if (!mine.extent().isClearOf(its.extent(), 0) && mine.depth(its) > TOLERANCE) {
                    corners.addAll(mine.shared(its));
                }
            }
        }
        return corners.isEmpty() ? Optional.empty() : Optional.of(Extent.of(corners));
    }

    private static List<List<Corners.Corner>> polygons(Box box, Lie lie, Optional<Outline> outline) {
        double length = box.extent(lie.length()).value().toMillimetres();
        double width = box.extent(lie.width()).value().toMillimetres();
        List<Corners.Corner> rectangle = List.of(
                new Corners.Corner(0, 0),
                new Corners.Corner(length, 0),
                new Corners.Corner(length, width),
                new Corners.Corner(0, width));
        return outline.map(Corners::of)
                .filter(Corners::isSimple)
                .map(Corners::triangles)
                .orElse(List.of(rectangle));
    }

    private static Convex prism(List<Corners.Corner> polygon, Box box, Lie lie, Optional<Turn> turn) {
        List<Point> near = new ArrayList<>();
        List<Point> far = new ArrayList<>();
        for (Corners.Corner corner : polygon) {
            Point flat = new Point(0, 0, 0)
                    .with(lie.length(), inward(box, lie.nearEnd(), corner.x()))
                    .with(lie.width(), inward(box, lie.faceEdge(), corner.y()));
            near.add(turned(flat.with(lie.thickness(), inward(box, lie.faceSide(), 0)), turn));
            far.add(turned(flat.with(lie.thickness(), inward(box, lie.faceSide().opposite(), 0)), turn));
        }
        return new Convex(near, far);
    }

    private static double inward(Box box, Side from, double distance) {
        double plane = box.plane(from).value().toMillimetres();
        return from.isFar() ? plane - distance : plane + distance;
    }

    private static Point turned(Point point, Optional<Turn> turn) {
        return turn.map(t -> turned(point, t)).orElse(point);
    }

    private static Point turned(Point point, Turn turn) {
        Axis first = Axis.values()[(turn.about().ordinal() + 1) % 3];
        Axis second = Axis.values()[(turn.about().ordinal() + 2) % 3];
        double x = point.of(first) - turn.first().value().toMillimetres();
        double y = point.of(second) - turn.second().value().toMillimetres();
        double angle = Math.toRadians(turn.degrees());
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return point.with(first, turn.first().value().toMillimetres() + x * cos - y * sin)
                .with(second, turn.second().value().toMillimetres() + x * sin + y * cos);
    }
}
