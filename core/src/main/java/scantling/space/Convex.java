package scantling.space;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A convex body with flat faces. Whether two share space is asked with the separating axes theorem (two convex bodies
 * are apart exactly when a plane lies between them, along a face of one or an edge of each; Gottschalk 1996).
 */
final class Convex {
    /** Directions whose sine with one already there is below this are the same direction. */
    private static final double SAME_DIRECTION = 1e-9;

    /** A flat face, its corners in order, its normal of length one outward. */
    private record Face(List<Point> corners, Point normal) {
        double height() {
            return normal.dot(corners.get(0));
        }
    }

    /** Points nearer to a plane than this, in millimetres, lie in it. */
    private static final double IN_PLANE = 1e-7;

    private final List<Point> points;
    private final List<Face> faces = new ArrayList<>();
    private final List<Point> normals = new ArrayList<>();
    private final List<Point> edges = new ArrayList<>();
    private final Extent extent;

    /** The prism between two like polygons, corner above corner. */
    Convex(List<Point> base, List<Point> top) {
        this(prism(base, top));
    }

    /** The body between flat faces that close round it. */
    private Convex(List<List<Point>> polygons) {
        points = polygons.stream().flatMap(List::stream).distinct().toList();
        extent = Extent.of(points);
        polygons.forEach(this::addFace);
    }

    private static List<List<Point>> prism(List<Point> base, List<Point> top) {
        List<List<Point>> polygons = new ArrayList<>(List.of(base, top));
        for (int i = 0; i < base.size(); i++) {
            int next = (i + 1) % base.size();
            polygons.add(List.of(base.get(i), base.get(next), top.get(next), top.get(i)));
        }
        return polygons;
    }

    /** The same body elsewhere. @param move keeps lengths and angles */
    Convex moved(UnaryOperator<Point> move) {
        return new Convex(faces.stream()
                .map(face -> face.corners().stream().map(move).toList())
                .toList());
    }

    /** What is left of it behind a plane; nothing when all of it lies before it. */
    Optional<Convex> behind(Plane plane) {
        if (points.stream().allMatch(point -> above(point, plane) <= IN_PLANE)) {
            return Optional.of(this);
        }
        List<List<Point>> kept = new ArrayList<>();
        List<Point> cut = new ArrayList<>();
        for (Face face : faces) {
            List<Point> left = cutBehind(face.corners(), plane.normal(), plane.height());
            if (twiceArea(left).length() > IN_PLANE) {
                kept.add(left);
            }
            left.stream()
                    .filter(point -> Math.abs(above(point, plane)) <= IN_PLANE)
                    .forEach(cut::add);
        }
        List<Point> lid = around(cut, plane.normal());
        if (kept.size() < 3 || lid.size() < 3) {
            return Optional.empty();
        }
        kept.add(lid);
        return Optional.of(new Convex(kept));
    }

    private static double above(Point point, Plane plane) {
        return plane.normal().dot(point) - plane.height();
    }

    /** The corners of a convex polygon in order, each once. */
    private static List<Point> around(List<Point> corners, Point normal) {
        List<Point> once = new ArrayList<>();
        for (Point corner : corners) {
            if (once.stream().noneMatch(known -> known.minus(corner).length() <= 2 * IN_PLANE)) {
                once.add(corner);
            }
        }
        if (once.size() < 3) {
            return once;
        }
        Point middle = once.stream().reduce(Point::plus).orElseThrow().times(1.0 / once.size());
        Point x = once.get(0).minus(middle);
        Point y = normal.cross(x);
        once.sort(Comparator.comparingDouble(point ->
                Math.atan2(point.minus(middle).dot(y), point.minus(middle).dot(x))));
        return once;
    }

    /** Its faces, each a closed polygon against the clock seen from outside. */
    List<List<Point>> polygons() {
        return faces.stream().map(Face::corners).toList();
    }

    private void addFace(List<Point> corners) {
        Point middle = points.stream().reduce(Point::plus).orElseThrow().times(1.0 / points.size());
        Point twiceArea = twiceArea(corners);
        if (twiceArea.length() == 0) {
            return;
        }
        Point normal = twiceArea.times(1 / twiceArea.length());
        boolean inward = normal.dot(middle.minus(corners.get(0))) > 0;
        List<Point> ordered = new ArrayList<>(corners);
        if (inward) {
            Collections.reverse(ordered);
        }
        faces.add(new Face(List.copyOf(ordered), inward ? normal.times(-1) : normal));
        addDirection(normals, normal);
        for (int i = 0; i < corners.size(); i++) {
            addDirection(edges, corners.get((i + 1) % corners.size()).minus(corners.get(i)));
        }
    }

    private static void addDirection(List<Point> directions, Point direction) {
        double length = direction.length();
        if (length == 0) {
            return;
        }
        Point unit = direction.times(1 / length);
        if (directions.stream().noneMatch(known -> known.cross(unit).length() < SAME_DIRECTION)) {
            directions.add(unit);
        }
    }

    private static Point twiceArea(List<Point> corners) {
        Point sum = new Point(0, 0, 0);
        for (int i = 1; i + 1 < corners.size(); i++) {
            Point first = corners.get(i).minus(corners.get(0));
            sum = sum.plus(first.cross(corners.get(i + 1).minus(corners.get(0))));
        }
        return sum;
    }

    Extent extent() {
        return extent;
    }

    /** By the divergence theorem: a third of every face's area times its height over the corner measured from. */
    double volume() {
        return faces.stream()
                .mapToDouble(face -> twiceArea(face.corners()).length() / 2 * face.height() / 3)
                .sum();
    }

    /** The least distance the two must move apart to part; negative when they are apart by at least so much. */
    double depth(Convex other) {
        double least = Double.POSITIVE_INFINITY;
        for (Point axis : axes(other)) {
            double[] mine = range(axis);
            double[] its = other.range(axis);
            least = Math.min(least, Math.min(mine[1] - its[0], its[1] - mine[0]));
        }
        return least;
    }

    private List<Point> axes(Convex other) {
        List<Point> axes = new ArrayList<>(normals);
        axes.addAll(other.normals);
        for (Point mine : edges) {
            for (Point its : other.edges) {
                Point normal = mine.cross(its);
                if (normal.length() >= SAME_DIRECTION) {
                    axes.add(normal.times(1 / normal.length()));
                }
            }
        }
        return axes;
    }

    private double[] range(Point axis) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            double at = axis.dot(point);
            low = Math.min(low, at);
            high = Math.max(high, at);
        }
        return new double[] {low, high};
    }

    /** Corners of the space both hold: the faces of each, cut off at the faces of the other. */
    List<Point> shared(Convex other) {
        List<Point> corners = new ArrayList<>();
        faces.forEach(face -> corners.addAll(other.cut(face.corners())));
        other.faces.forEach(face -> corners.addAll(cut(face.corners())));
        return corners;
    }

    private List<Point> cut(List<Point> polygon) {
        List<Point> left = polygon;
        for (Face face : faces) {
            left = cutBehind(left, face.normal(), face.height());
        }
        return left;
    }

    /** The part of a polygon behind a face, by Sutherland and Hodgman 1974. */
    private static List<Point> cutBehind(List<Point> polygon, Point normal, double height) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < polygon.size(); i++) {
            Point from = polygon.get(i);
            Point to = polygon.get((i + 1) % polygon.size());
            double a = normal.dot(from) - height;
            double b = normal.dot(to) - height;
            if (a <= 0) {
                kept.add(from);
            }
            if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
                kept.add(from.plus(to.minus(from).times(a / (a - b))));
            }
        }
        return kept;
    }
}
