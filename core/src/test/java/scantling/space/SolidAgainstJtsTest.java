package scantling.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Span;

/**
 * Flat parts of random outline, lying side by side in one plane, judged by an independent geometry library (the JTS
 * Topology Suite): area, sharing, and where the shared space is.
 */
class SolidAgainstJtsTest {
    private static final int ROUNDS = 400;
    private static final double LENGTH = 200;
    private static final double WIDTH = 120;
    private static final long THICK = 20;
    private static final GeometryFactory JTS = new GeometryFactory();
    /** Grain left to right, face up, face edge in front, near end left: along is ACROSS, across is DEEP. */
    private static final Lie FLAT = Lie.along(Axis.ACROSS, Side.TOP);

    private final Random random = new Random(20_240_117);

    private record Placed(Solid solid, Geometry shape) {}

    @Test
    void agreesOnTheAreaOfRandomOutlines() {
        for (int round = 0; round < ROUNDS; round++) {
            Placed one = randomPart();
            assertEquals(one.shape().getArea() * THICK, one.solid().volume(), 1e-6 * LENGTH * WIDTH * THICK);
        }
    }

    @Test
    void agreesOnWhetherAndWhereTwoRandomPartsShareSpace() {
        int sharing = 0;
        int apart = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Placed one = randomPart();
            Placed two = randomPart();
            Geometry both = one.shape().intersection(two.shape());
            Optional<Extent> shared = one.solid().findShared(two.solid());
            if (both.getArea() > 1) {
                sharing++;
                assertWhere(both.getEnvelopeInternal(), shared.orElseThrow());
            } else if (one.shape().distance(two.shape()) > 2 * Solid.TOLERANCE) {
                apart++;
                assertTrue(shared.isEmpty());
                assertTrue(one.solid().depthIn(two.solid()) < 0);
                assertTrue(-one.solid().depthIn(two.solid()) <= one.shape().distance(two.shape()) + 1e-9);
            }
        }
        assertTrue(sharing > ROUNDS / 10 && apart > ROUNDS / 10, sharing + " share, " + apart + " are apart");
    }

    /** Slivers of triangles that share less than the tolerance may be left out, so a corner may be that much short. */
    private static void assertWhere(Envelope expected, Extent shared) {
        double slack = 1;
        assertEquals(expected.getMinX(), shared.left(), slack);
        assertEquals(expected.getMaxX(), shared.right(), slack);
        assertEquals(expected.getMinY(), shared.front(), slack);
        assertEquals(expected.getMaxY(), shared.back(), slack);
        assertEquals(0, shared.bottom(), 1e-9);
        assertEquals(THICK, shared.top(), 1e-9);
    }

    @Test
    void touchesAPartThatIsPushedAgainstItAndNotOneThatStandsOff() {
        for (int round = 0; round < 200; round++) {
            List<Coordinate> star = star();
            double right = star.stream().mapToDouble(c -> c.x).max().orElseThrow();
            Solid one = solid(star, 0, 0, Optional.empty());
            List<Coordinate> square = List.of(
                    new Coordinate(0, 0),
                    new Coordinate(LENGTH, 0),
                    new Coordinate(LENGTH, WIDTH),
                    new Coordinate(0, WIDTH));
            assertTrue(one.touches(solid(square, right, 0, Optional.empty())));
            assertFalse(one.touches(solid(square, right + 0.02, 0, Optional.empty())));
            assertTrue(one.findShared(solid(square, right, 0, Optional.empty())).isEmpty());
        }
    }

    private Placed randomPart() {
        List<Coordinate> star = star();
        double x = random.nextInt(160) - 80;
        double y = random.nextInt(160) - 80;
        double degrees = random.nextInt(360);
        Turn turn = new Turn(Axis.UP, degrees, dim(50), dim(80));
        Geometry shape = JTS.createPolygon(closed(star));
        shape = AffineTransformation.translationInstance(x, y).transform(shape);
        shape = AffineTransformation.rotationInstance(Math.toRadians(degrees), 50, 80)
                .transform(shape);
        return new Placed(solid(star, x, y, Optional.of(turn)), shape);
    }

    /** A simple polygon, mostly not convex: corners at growing angles around the middle. */
    private List<Coordinate> star() {
        int corners = 3 + random.nextInt(10);
        List<Coordinate> star = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double reach = 0.15 + 0.85 * random.nextDouble();
            star.add(new Coordinate(
                    rounded(LENGTH / 2 * (1 + reach * Math.cos(angle))),
                    rounded(WIDTH / 2 * (1 + reach * Math.sin(angle)))));
        }
        return random.nextBoolean() ? star : reversed(star);
    }

    private static List<Coordinate> reversed(List<Coordinate> list) {
        List<Coordinate> reversed = new ArrayList<>(list);
        Collections.reverse(reversed);
        return reversed;
    }

    private static double rounded(double mm) {
        return Math.round(mm * 1000) / 1000.0;
    }

    private static Coordinate[] closed(List<Coordinate> ring) {
        List<Coordinate> closed = new ArrayList<>(ring);
        closed.add(ring.get(0));
        return closed.toArray(Coordinate[]::new);
    }

    private static Solid solid(List<Coordinate> ring, double x, double y, Optional<Turn> turn) {
        Outline outline = new Outline(
                ring.stream().map(c -> new Outline.Corner(dim(c.x), dim(c.y))).toList());
        Box box = new Box(dim(x), dim(x + LENGTH), dim(y), dim(y + WIDTH), dim(0), dim(THICK));
        return Solid.of(box, FLAT, Optional.of(outline), turn);
    }

    private static Dim dim(double mm) {
        return Dim.given(Length.ofMillimetres(mm), "drawn", mm + " mm", new Span(1, 1, 0, 1));
    }
}
