package scantling.feature;

import scantling.measure.Dim;

/**
 * How a tool that leans goes in: where its middle enters, which way it goes and how far along that way. The ranges of a
 * feature with an aim are only the box around it.
 *
 * @param along of the middle of its mouth, from the near end
 * @param across of the same, from the face edge
 * @param through of the same, from the face side
 * @param way that the tool goes
 * @param side the way along the longer side of what it makes, square to the first
 * @param depth along the tool, from the middle of the mouth
 * @param length of the longer side; the diameter of a hole
 * @param width of the shorter side; the diameter of a hole
 */
public record Aim(Dim along, Dim across, Dim through, Way way, Way side, Dim depth, Dim length, Dim width) {
    /** A direction of length one, each share growing away from the mark that it is measured from. */
    public record Way(double along, double across, double through) {
        /** So many times as far. */
        public Way times(double factor) {
            return new Way(along * factor, across * factor, through * factor);
        }

        /** Both, one behind the other. */
        public Way plus(Way other) {
            return new Way(along + other.along, across + other.across, through + other.through);
        }

        /** The scalar product. */
        public double dot(Way other) {
            return along * other.along + across * other.across + through * other.through;
        }

        /** The vector product, in the order along, across, through. */
        public Way cross(Way other) {
            return new Way(
                    across * other.through - through * other.across,
                    through * other.along - along * other.through,
                    along * other.across - across * other.along);
        }

        /** The same direction with length one. */
        public Way unit() {
            return times(1 / Math.sqrt(dot(this)));
        }

        /** Its shares over a surface and into it: along before across before through, inward last. */
        double[] on(Surface surface) {
            double in = surface.isFar() ? -1 : 1;
            return switch (surface) {
                case FACE_SIDE, BACK_SIDE -> new double[] {along, across, in * through};
                case FACE_EDGE, BACK_EDGE -> new double[] {along, through, in * across};
                case NEAR_END, FAR_END -> new double[] {across, through, in * along};
            };
        }
    }

    /** How far the tool leans off square over a surface, in degrees: in its first direction and in its second. */
    public double[] leans(Surface surface) {
        double[] on = way.on(surface);
        return new double[] {Math.toDegrees(Math.atan2(on[0], on[2])), Math.toDegrees(Math.atan2(on[1], on[2]))};
    }

    /** How far the mouth is turned on a surface, in degrees off its first direction, from -90 to 90. */
    public double turned(Surface surface) {
        double[] mouth = mouth(surface);
        double angle = Math.toDegrees(Math.atan2(mouth[1], mouth[0]));
        return angle > 90 ? angle - 180 : angle <= -90 ? angle + 180 : angle;
    }

    /** The longer side of what it makes as the surface cuts it, seen along the tool. */
    private double[] mouth(Surface surface) {
        double[] on = side.on(surface);
        double[] in = way.on(surface);
        double back = on[2] / in[2];
        return new double[] {on[0] - back * in[0], on[1] - back * in[1]};
    }

    /** The corners of its mouth from the middle, in millimetres along, across and through. */
    public Way[] corners() {
        Way other = way.cross(side);
        double half = mm(length) / 2;
        double wide = mm(width) / 2;
        return new Way[] {
            side.times(half).plus(other.times(wide)),
            side.times(half).plus(other.times(-wide)),
            side.times(-half).plus(other.times(-wide)),
            side.times(-half).plus(other.times(wide))
        };
    }

    /** The corners of its mouth where a surface cuts what the tool makes: each from the middle, seen along the tool. */
    public Way[] corners(Surface surface) {
        Way[] corners = corners();
        double[] in = way.on(surface);
        for (int i = 0; i < corners.length; i++) {
            corners[i] = corners[i].plus(way.times(-corners[i].on(surface)[2] / in[2]));
        }
        return corners;
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
