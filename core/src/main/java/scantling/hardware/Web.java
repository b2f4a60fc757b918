package scantling.hardware;

import scantling.feature.Feature;
import scantling.feature.Range;
import scantling.feature.Surface;
import scantling.stock.HardwareProfiles;

/** How much wood stays between two cuts in one part: worked in millimetres from its marks. */
final class Web {
    private static final double NOTHING = 1e-6;

    private final double[][] ranges;
    private final int depth;
    private final double radius;

    private Web(Feature feature) {
        ranges = new double[][] {mm(feature.along()), mm(feature.across()), mm(feature.through())};
        depth = depth(feature.surface());
        radius = feature.kind() == Feature.Kind.HOLE
                ? feature.radius().map(r -> r.value().toMillimetres()).orElse(0.0)
                : 0;
    }

    /** The wood between two features of one part; negative where they run into each other. */
    static double between(Feature a, Feature b) {
        return new Web(a).to(new Web(b));
    }

    /** Whether two features come too near: holes to each other by the least wood, others by running into each other. */
    static boolean isTooThin(Feature a, Feature b, HardwareProfiles profiles) {
        boolean holes = a.kind() == Feature.Kind.HOLE && b.kind() == Feature.Kind.HOLE;
        double least = holes ? profiles.of("hole", "least wood").value().toMillimetres() : 0;
        return between(a, b) < least - NOTHING;
    }

    private double to(Web other) {
        if (depth != other.depth || radius == 0 || other.radius == 0) {
            return Math.max(Math.max(gap(other, 0), gap(other, 1)), gap(other, 2));
        }
        int first = depth == 0 ? 1 : 0;
        int second = depth == 2 ? 1 : 2;
        double planar = Math.hypot(middle(first) - other.middle(first), middle(second) - other.middle(second))
                - radius
                - other.radius;
        return Math.max(planar, gap(other, depth));
    }

    private double gap(Web other, int axis) {
        return Math.max(ranges[axis][0] - other.ranges[axis][1], other.ranges[axis][0] - ranges[axis][1]);
    }

    private double middle(int axis) {
        return (ranges[axis][0] + ranges[axis][1]) / 2;
    }

    private static double[] mm(Range range) {
        return new double[] {
            range.from().value().toMillimetres(), range.to().value().toMillimetres()
        };
    }

    private static int depth(Surface surface) {
        return switch (surface) {
            case NEAR_END, FAR_END -> 0;
            case FACE_EDGE, BACK_EDGE -> 1;
            case FACE_SIDE, BACK_SIDE -> 2;
        };
    }
}
