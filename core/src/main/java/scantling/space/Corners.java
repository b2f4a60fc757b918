package scantling.space;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Corners of a polygon in the plane, in millimetres, and the cutting of a polygon into triangles. */
final class Corners {
    /** Areas below this many square millimetres are none: a sliver of 0.001 mm over a millimetre. */
    private static final double NO_AREA = 1e-3;

    /** One corner in millimetres. */
    record Corner(double x, double y) {}

    private Corners() {}

    static List<Corner> of(Outline outline) {
        return outline.corners().stream()
                .map(c -> new Corner(
                        c.along().value().toMillimetres(), c.across().value().toMillimetres()))
                .toList();
    }

    /** Area of a polygon, positive when it runs against the clock. */
    static double area(List<Corner> polygon) {
        double twice = 0;
        for (int i = 0; i < polygon.size(); i++) {
            Corner a = polygon.get(i);
            Corner b = polygon.get((i + 1) % polygon.size());
            twice += a.x * b.y - b.x * a.y;
        }
        return twice / 2;
    }

    /** Whether no two sides of a polygon meet but neighbours in their corner. */
    static boolean isSimple(List<Corner> polygon) {
        int n = polygon.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                boolean neighbours = j == i + 1 || (i == 0 && j == n - 1);
                if (!neighbours
                        && cross(polygon.get(i), polygon.get(i + 1), polygon.get(j), polygon.get((j + 1) % n))) {
                    return false;
                }
            }
        }
        return Math.abs(area(polygon)) > NO_AREA;
    }

    private static boolean cross(Corner a, Corner b, Corner c, Corner d) {
        return Math.signum(turn(a, b, c)) * Math.signum(turn(a, b, d)) <= 0
                && Math.signum(turn(c, d, a)) * Math.signum(turn(c, d, b)) <= 0
                && rangesMeet(a.x, b.x, c.x, d.x)
                && rangesMeet(a.y, b.y, c.y, d.y);
    }

    private static boolean rangesMeet(double a, double b, double c, double d) {
        return Math.max(a, b) >= Math.min(c, d) && Math.max(c, d) >= Math.min(a, b);
    }

    /** Twice the area of the triangle, positive when it runs against the clock. */
    private static double turn(Corner a, Corner b, Corner c) {
        return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    }

    /** A simple polygon as pieces without inward corners: itself when it has none, else triangles. */
    static List<List<Corner>> convexPieces(List<Corner> polygon) {
        double way = Math.signum(area(polygon));
        for (int i = 0; i < polygon.size(); i++) {
            List<Corner> corner = around(polygon, i);
            if (turn(corner.get(0), corner.get(1), corner.get(2)) * way < 0) {
                return triangles(polygon);
            }
        }
        return List.of(polygon);
    }

    /**
     * Cuts a simple polygon into triangles that fill it and do not overlap, by cutting off one ear after another
     * (the two-ears theorem, Meisters 1975).
     */
    static List<List<Corner>> triangles(List<Corner> polygon) {
        List<Corner> left = new ArrayList<>(polygon);
        if (area(left) < 0) {
            Collections.reverse(left);
        }
        List<List<Corner>> triangles = new ArrayList<>();
        while (left.size() >= 3) {
            int ear = findEar(left);
            List<Corner> triangle = around(left, ear);
            if (area(triangle) > 0) {
                triangles.add(triangle);
            }
            left.remove(ear);
        }
        return triangles;
    }

    /** A corner that can be cut off; the bluntest useless one when rounding leaves none. */
    private static int findEar(List<Corner> polygon) {
        for (int i = 0; i < polygon.size(); i++) {
            List<Corner> ear = around(polygon, i);
            double twice = turn(ear.get(0), ear.get(1), ear.get(2));
            if (twice == 0 || (twice > 0 && polygon.stream().noneMatch(corner -> isInside(corner, ear)))) {
                return i;
            }
        }
        return flattest(polygon);
    }

    private static int flattest(List<Corner> polygon) {
        int flattest = 0;
        for (int i = 1; i < polygon.size(); i++) {
            if (Math.abs(area(around(polygon, i))) < Math.abs(area(around(polygon, flattest)))) {
                flattest = i;
            }
        }
        return flattest;
    }

    private static List<Corner> around(List<Corner> polygon, int i) {
        int n = polygon.size();
        return List.of(polygon.get((i + n - 1) % n), polygon.get(i), polygon.get((i + 1) % n));
    }

    private static boolean isInside(Corner corner, List<Corner> ear) {
        return !ear.contains(corner)
                && turn(ear.get(0), ear.get(1), corner) >= 0
                && turn(ear.get(1), ear.get(2), corner) >= 0
                && turn(ear.get(2), ear.get(0), corner) >= 0;
    }
}
