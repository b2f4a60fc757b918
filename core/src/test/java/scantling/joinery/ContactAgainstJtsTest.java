package scantling.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import scantling.construct.Joint;
import scantling.space.Axis;

/** The rectangle where two placed parts touch, judged by an independent geometry library (the JTS Topology Suite). */
class ContactAgainstJtsTest {
    private static final GeometryFactory JTS = new GeometryFactory();

    @Test
    void agreesOnWhereRandomPartsTouch() {
        Random random = new Random(3);
        for (int round = 0; round < 1000; round++) {
            Placed placed = Placed.any(random, Joint.Kind.DOWEL, false);
            Meeting at = meeting(placed).orElseThrow();
            List<Axis> plane = Arrays.stream(Axis.values())
                    .filter(axis -> axis != at.side().axis())
                    .toList();
            Geometry both = seen(placed.entering(), plane).intersection(seen(placed.receiving(), plane));
            Space shared = Space.of(at.shared());
            Envelope expected = both.getEnvelopeInternal();
            int x = plane.get(0).ordinal();
            int y = plane.get(1).ordinal();
            assertEquals(expected.getMinX(), shared.low()[x], 1e-9);
            assertEquals(expected.getMaxX(), shared.high()[x], 1e-9);
            assertEquals(expected.getMinY(), shared.low()[y], 1e-9);
            assertEquals(expected.getMaxY(), shared.high()[y], 1e-9);
            assertEquals(both.getArea(), shared.size(x) * shared.size(y), 1e-6);
            assertEquals(0, shared.size(at.side().axis().ordinal()), 1e-9);
        }
    }

    @Test
    void partsThatTheLibraryFindsApartDoNotMeet() {
        Random random = new Random(5);
        int apart = 0;
        for (int round = 0; round < 1000; round++) {
            Placed one = Placed.any(random, Joint.Kind.DOWEL, false);
            Placed other = Placed.any(random, Joint.Kind.DOWEL, false);
            boolean far = Arrays.stream(Axis.values())
                    .anyMatch(axis -> seen(one.entering(), List.of(axis, axis.third(next(axis))))
                                    .distance(seen(other.receiving(), List.of(axis, axis.third(next(axis)))))
                            > 2);
            if (far) {
                apart++;
                assertTrue(Meeting.find(
                                one.joint(),
                                one.entering(),
                                other.receiving(),
                                JointRules.standard().length("near enough"))
                        .isEmpty());
            }
        }
        assertTrue(apart > 100, apart + " pairs were apart");
    }

    private static Axis next(Axis axis) {
        return Axis.values()[(axis.ordinal() + 1) % 3];
    }

    private static Optional<Meeting> meeting(Placed placed) {
        return Meeting.find(
                placed.joint(),
                placed.entering(),
                placed.receiving(),
                JointRules.standard().length("near enough"));
    }

    private static Geometry seen(scantling.construct.Part part, List<Axis> plane) {
        Space space = Space.of(part.box());
        int x = plane.get(0).ordinal();
        int y = plane.get(1).ordinal();
        return JTS.createPolygon(new Coordinate[] {
            new Coordinate(space.low()[x], space.low()[y]),
            new Coordinate(space.high()[x], space.low()[y]),
            new Coordinate(space.high()[x], space.high()[y]),
            new Coordinate(space.low()[x], space.high()[y]),
            new Coordinate(space.low()[x], space.low()[y])
        });
    }
}
