package scantling.construct;

import java.util.Optional;
import scantling.measure.Dim;
import scantling.measure.Length;
import scantling.measure.Making;
import scantling.space.Axis;
import scantling.space.Box;
import scantling.space.EndCut;
import scantling.space.Ends;
import scantling.space.Side;
import scantling.space.Turn;

/**
 * A square-edged leg that leans outward to its foot, its ends cut to lie flat on the floor and under the top. It is
 * turned first in the front view, then in the side view; the trigonometry is in docs/method/splayed-legs.md.
 *
 * @param turned how it is turned
 * @param edge its length along any of its edges, from floor to top
 * @param slant how much longer it is from long point to long point than along an edge
 * @param footAcross how far the slanted cut at its foot reaches from left to right
 * @param footDeep how far that reaches from front to back
 * @param twist how far a leg that leans both ways is out of square to the sides of the piece, from its front to its back
 */
record Splay(Turned turned, Dim edge, Dim slant, Dim footAcross, Dim footDeep, Dim twist) {
    /**
     * A leg and how far it leans.
     *
     * @param height from the floor to what it carries
     * @param width from left to right, before it leans
     * @param thickness from front to back, before it leans
     * @param across how far its foot stands out to the side beyond its top
     * @param deep how far its foot stands out to the front or back beyond its top
     */
    record Turned(Dim height, Dim width, Dim thickness, Dim across, Dim deep) {
        /** The turn in the side view, in radians: deep over height is its tangent. */
        private double side() {
            return Math.atan2(mm(deep), mm(height));
        }

        /** The turn in the front view, in radians, made before the other. */
        private double front() {
            return Math.atan(mm(across) / mm(height) * Math.cos(side()));
        }

        private Dim slant() {
            double overWidth = Math.tan(front());
            double overThickness = Math.tan(side()) / Math.cos(front());
            return worked(
                    mm(width) * overWidth + mm(thickness) * overThickness,
                    "slant of both ends over width and thickness",
                    new Making.Input(overWidth, width),
                    new Making.Input(overThickness, thickness),
                    new Making.Input(mm(width) / mm(height), across),
                    new Making.Input(mm(thickness) / mm(height), deep));
        }

        private Dim footAcross(Dim twist) {
            double times = 1 / Math.cos(front());
            Dim slanted = worked(
                    mm(width) * times,
                    "slanted cut through the width",
                    new Making.Input(times, width),
                    new Making.Input(mm(width) * Math.sin(front()) / mm(height), across));
            return slanted.plus(twist);
        }

        private Dim footDeep() {
            double times = 1 / Math.cos(side());
            return worked(
                    mm(thickness) * times,
                    "slanted cut through the thickness",
                    new Making.Input(times, thickness),
                    new Making.Input(mm(thickness) * Math.sin(side()) / mm(height), deep));
        }

        private Dim twist() {
            double over = Math.tan(front()) * Math.tan(side());
            return worked(
                    mm(thickness) * over,
                    "twist of a leg that leans both ways, over the thickness",
                    new Making.Input(over, thickness),
                    new Making.Input(mm(thickness) * Math.tan(side()) / mm(height), across),
                    new Making.Input(mm(thickness) * Math.tan(front()) / mm(height), deep));
        }
    }

    /** The leg with its numbers under its own name. */
    static Splay of(Turned turned, Site in, String leg) {
        Dim twist = in.name(leg + " / twist", turned.twist());
        return new Splay(
                turned,
                in.name(leg + " / along an edge", Dim.slope(Dim.slope(turned.across, turned.deep), turned.height)),
                in.name(leg + " / slant of its ends", turned.slant()),
                in.name(leg + " / foot from left to right", turned.footAcross(twist)),
                in.name(leg + " / foot from front to back", turned.footDeep()),
                twist);
    }

    /** How far its foot stands out beyond its top in a direction. */
    Dim out(Axis axis) {
        return axis == Axis.ACROSS ? turned.across : turned.deep;
    }

    /** Both ends are cut alike. */
    Ends cuts() {
        EndCut cut = new EndCut(Math.tan(turned.front()), Math.tan(turned.side()) / Math.cos(turned.front()));
        return new Ends(cut, cut);
    }

    /** Where the middle of its foot stands on the floor. */
    private static Dim middle(Box air, Side side, Dim reach) {
        return side.isFar()
                ? air.plane(side).minus(reach.half())
                : air.plane(side).plus(reach.half());
    }

    /** Where it would be, did it stand upright over the middle of its foot. @param air its foot is in the corner of that */
    Box box(Box air, Side sideways, Side deepways) {
        Dim x = middle(air, sideways, footAcross).minus(turned.width.half());
        Dim y = middle(air, deepways, footDeep).minus(turned.thickness.half());
        Dim bottom = air.bottom().minus(slant.half());
        return new Box(
                x,
                x.plus(turned.width),
                y,
                y.plus(turned.thickness),
                bottom,
                bottom.plus(edge).plus(slant));
    }

    /** Around its slanted cut at the top, down to the floor. */
    Box top(Box air, Side sideways, Side deepways) {
        return air.inset(sideways, turned.across)
                .slab(sideways, footAcross)
                .inset(deepways, turned.deep)
                .slab(deepways, footDeep);
    }

    /** How it is turned out of that box, about the middle of its foot. */
    Turn turn(Box air, Side sideways, Side deepways) {
        Dim x = middle(air, sideways, footAcross);
        Dim y = middle(air, deepways, footDeep);
        double first = Math.toDegrees(turned.front()) * (sideways.isFar() ? -1 : 1);
        double second = Math.toDegrees(turned.side()) * (deepways.isFar() ? 1 : -1);
        Turn then = new Turn(Axis.ACROSS, second, y, air.bottom());
        return new Turn(Axis.DEEP, first, air.bottom(), x, Optional.of(then));
    }

    private static Dim worked(double mm, String rule, Making.Input... inputs) {
        return Dim.worked(Length.ofMillimetres(mm), rule, inputs);
    }

    private static double mm(Dim dim) {
        return dim.value().toMillimetres();
    }
}
